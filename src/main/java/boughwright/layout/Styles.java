package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import java.util.ArrayList;
import java.util.List;

/**
 * Which style goes to which of the places that are already evenly spread: swaps styles between places until as few pieces as can be
 * have their own style as nearest neighbour, then lets those that still have it lean a little toward another. A swap is made only
 * between places of about the same height, and only where the larger piece finds room, so that sizes keep their part of the
 * tree. Deterministic.
 */
final class Styles {

    /** A place and what hangs there now. @param style equal for pieces that look alike */
    record Spot(Wished place, double depth, double radius, Object style) {
    }

    /** @param holds for each place the index of the spot whose piece hangs there; {@code places} where each has come to lie */
    record Apart(int[] holds, List<Wished> places) {
    }

    /** Swaps reach so far up or down, as a share of the height that the places span. */
    private static final double REACH = 0.2;
    /** A larger piece is swapped upward by no more than this share of it. */
    private static final double UP = 0.6;
    private static final int PASSES = 4;
    private static final int NEAR = 8;

    /** A piece leans toward a neighbour of another style that is at most so much farther than the nearest. */
    private static final double FARTHER = 1.4;
    /** It leans by at most this share of the distance to the nearest, and so much farther than to where both are as near, metres. */
    private static final double MOST_LEAN = 0.2;
    private static final double PAST = 0.002;

    private final Surface surface;
    private final List<Spot> spots;
    private final int[] holds;
    private final int[][] near;
    private final List<Wished> places;
    private final List<Point> points;

    private Styles(Surface surface, List<Spot> spots) {
        this.surface = surface;
        this.spots = spots;
        this.holds = new int[spots.size()];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = i;
        }
        this.places = new ArrayList<>(spots.stream().map(Spot::place).toList());
        this.points = new ArrayList<>(spots.stream().map(s -> surface.point(s.place().slant(), s.place().angle(), s.depth())).toList());
        this.near = Neighbours.of(points, NEAR);
    }

    static Apart apart(Surface surface, List<Spot> spots) {
        Styles styles = new Styles(surface, spots);
        if (spots.size() > 2) {
            styles.swap();
            for (int place = 0; place < spots.size(); place++) {
                styles.lean(place);
            }
        }
        return new Apart(styles.holds, styles.places);
    }

    private Object style(int place) {
        return spots.get(holds[place]).style();
    }

    private boolean alike(int place) {
        return near[place].length > 0 && style(place).equals(style(near[place][0]));
    }

    private void swap() {
        double low = points.stream().mapToDouble(Point::y).min().orElse(0);
        double high = points.stream().mapToDouble(Point::y).max().orElse(0);
        double reach = REACH * (high - low);
        List<List<Integer>> admirers = new ArrayList<>();
        for (int i = 0; i < holds.length; i++) {
            admirers.add(new ArrayList<>());
        }
        for (int i = 0; i < holds.length; i++) {
            if (near[i].length > 0) {
                admirers.get(near[i][0]).add(i);
            }
        }
        for (int pass = 0; pass < PASSES; pass++) {
            boolean better = false;
            for (int place = 0; place < holds.length; place++) {
                better |= alike(place) && mend(place, reach, admirers);
            }
            if (!better) {
                return;
            }
        }
    }

    /** Swaps what hangs at a place with the first of those about it by which fewer are alike. */
    private boolean mend(int place, double reach, List<List<Integer>> admirers) {
        for (int neighbour : near[place]) {
            if (better(place, neighbour, reach, admirers)) {
                return true;
            }
            for (int next : near[neighbour]) {
                if (next != place && better(place, next, reach, admirers)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean better(int a, int b, double reach, List<List<Integer>> admirers) {
        if (style(a).equals(style(b)) || Math.abs(points.get(a).y() - points.get(b).y()) > reach) {
            return false;
        }
        int larger = spots.get(holds[a]).radius() >= spots.get(holds[b]).radius() ? a : b;
        double up = points.get(larger == a ? b : a).y() - points.get(larger).y();
        if (spots.get(holds[a]).radius() != spots.get(holds[b]).radius() && up > UP * reach) {
            return false;
        }
        int before = cost(a, b, admirers);
        exchange(a, b);
        if (cost(a, b, admirers) < before && fits(a) && fits(b)) {
            return true;
        }
        exchange(a, b);
        return false;
    }

    private void exchange(int a, int b) {
        int held = holds[a];
        holds[a] = holds[b];
        holds[b] = held;
    }

    private int cost(int a, int b, List<List<Integer>> admirers) {
        int cost = (alike(a) ? 1 : 0) + (alike(b) ? 1 : 0);
        for (int i : admirers.get(a)) {
            cost += i != b && alike(i) ? 1 : 0;
        }
        for (int i : admirers.get(b)) {
            cost += i != a && alike(i) ? 1 : 0;
        }
        return cost;
    }

    private boolean fits(int place) {
        double radius = spots.get(holds[place]).radius();
        for (int other : near[place]) {
            if (points.get(place).distance(points.get(other)) < radius + spots.get(holds[other]).radius()) {
                return false;
            }
        }
        return true;
    }

    /** The nearest of a place's neighbours as all lie now. */
    private int nearest(int place) {
        int nearest = near[place][0];
        for (int other : near[place]) {
            nearest = points.get(place).distance(points.get(other)) < points.get(place).distance(points.get(nearest)) ? other : nearest;
        }
        return nearest;
    }

    private int alikeAbout(int place) {
        int alike = style(place).equals(style(nearest(place))) ? 1 : 0;
        for (int other : near[place]) {
            alike += style(other).equals(style(nearest(other))) ? 1 : 0;
        }
        return alike;
    }

    private void lean(int place) {
        int mate = nearest(place);
        if (!style(place).equals(style(mate))) {
            return;
        }
        double distance = points.get(place).distance(points.get(mate));
        int before = alikeAbout(place);
        for (int other : near[place]) {
            double to = points.get(place).distance(points.get(other));
            if (style(other).equals(style(place)) || to > FARTHER * distance) {
                continue;
            }
            Wished was = places.get(place);
            leanFromTo(place, mate, other, distance, to);
            if (fits(place) && alikeAbout(place) < before) {
                return;
            }
            set(place, was);
        }
    }

    /** Along the direction in which the one comes nearer fastest as against the other, just past where both are as near. */
    private void leanFromTo(int place, int mate, int other, double distance, double to) {
        Point from = points.get(place);
        Point a = points.get(mate);
        Point b = points.get(other);
        double ux = (b.x() - from.x()) / to - (a.x() - from.x()) / distance;
        double uy = (b.y() - from.y()) / to - (a.y() - from.y()) / distance;
        double uz = (b.z() - from.z()) / to - (a.z() - from.z()) / distance;
        double size = Math.sqrt(ux * ux + uy * uy + uz * uz);
        double way = Math.min(MOST_LEAN * distance, (to - distance + PAST) / size * 1.05);
        Wished at = places.get(place);
        double depth = spots.get(place).depth();
        double out = depth * surface.widening();
        double sin = Math.sin(at.angle());
        double cos = Math.cos(at.angle());
        double along = (ux * sin + uz * cos) * out - uy * surface.falling();
        double slant = at.slant() + way / size * along / (out * out + surface.falling() * surface.falling());
        double angle = at.angle() + way / size * (ux * cos - uz * sin) / Math.max(0.02, depth * surface.radius(slant));
        if (surface.holds(slant, angle, spots.get(holds[place]).radius())) {
            set(place, new Wished(slant, angle));
        }
    }

    private void set(int place, Wished at) {
        places.set(place, at);
        points.set(place, surface.point(at.slant(), at.angle(), spots.get(place).depth()));
    }
}
