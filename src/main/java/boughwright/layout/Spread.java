package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Spreads pieces over the tree until each has its room: discs of their own size that push one another apart along the surface.
 *
 * <p>Each piece lies on the cone of its own depth. Pairs nearer than the room that both are due move apart by half of what is
 * missing each, in rounds; pieces of a pattern are drawn back to where the pattern wants them, less in each round, and never
 * stray farther from it than they may. The room due to a piece is its own radius and a share of the slack, the same for all, such that
 * together they fill {@link #FILL} of the densest packing, π/√12 of the area (Thue; Fejes Tóth). Distances are straight
 * through the air, at most those along the surface. Deterministic; about n·√n pairs a round, found by a sweep down the tree.
 */
final class Spread {

    /**
     * A piece to be spread.
     *
     * @param depth of the cone that it lies on
     * @param radius of its own, metres
     * @param stray metres that it may move from its wish
     * @param fixed stays where it is while others make room
     */
    record Disc(Wished wish, double depth, double radius, double stray, boolean fixed) {

        static Disc free(Wished wish, double depth, double radius) {
            return new Disc(wish, depth, radius, Double.MAX_VALUE, false);
        }
    }

    /** Diameter of the room due over that in the densest packing: a little more than can be had, so that the last ones press. */
    private static final double FILL = 0.93;
    private static final int ROUNDS = 60;
    private static final double PULL = 0.25;
    /** Air left between pieces that make room, metres, so that rounding does not let them overlap. */
    private static final double HAIR = 1e-4;

    private final Surface surface;
    private final List<Disc> discs;
    private final int count;
    private final double[] slant;
    private final double[] angle;
    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final double[] room;
    private final Integer[] order;

    private Spread(Surface surface, List<Disc> discs, double slack) {
        this.surface = surface;
        this.discs = discs;
        this.count = discs.size();
        this.slant = new double[count];
        this.angle = new double[count];
        this.x = new double[count];
        this.y = new double[count];
        this.z = new double[count];
        this.room = new double[count];
        this.order = new Integer[count];
        for (int i = 0; i < count; i++) {
            slant[i] = discs.get(i).wish().slant();
            angle[i] = discs.get(i).wish().angle();
            room[i] = discs.get(i).radius() + slack / 2;
            order[i] = i;
            place(i);
        }
    }

    /** Where each disc comes to lie, in their order. */
    static List<Wished> of(Surface surface, List<Disc> discs) {
        return discs.isEmpty() ? List.of() : new Spread(surface, discs, slack(surface, discs)).spread();
    }

    /** The same, but only what overlaps moves, and no farther than until it touches. */
    static List<Wished> makeRoom(Surface surface, List<Disc> discs) {
        return discs.isEmpty() ? List.of() : new Spread(surface, discs, HAIR).spread();
    }

    /** So much air between neighbours, metres, that all their rooms fill the due share of the densest packing; 0 when it is crowded. */
    private static double slack(Surface surface, List<Disc> discs) {
        double depth = discs.stream().mapToDouble(Disc::depth).average().orElse(1);
        double area = FILL * FILL * surface.areaAt(depth);
        double low = 0;
        double high = 2 * Math.sqrt(area);
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            double due = 0;
            for (Disc disc : discs) {
                double r = disc.radius() + middle / 2;
                due += Math.sqrt(12) * r * r;
            }
            if (due < area) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private List<Wished> spread() {
        for (int round = 0; round < ROUNDS; round++) {
            boolean moved = pushApart();
            double pull = PULL * (1 - (round + 1.0) / ROUNDS);
            for (int i = 0; i < count; i++) {
                backToWish(i, pull);
            }
            if (!moved) {
                break;
            }
        }
        List<Wished> places = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            places.add(new Wished(slant[i], angle[i]));
        }
        return places;
    }

    private boolean pushApart() {
        // Nearly in order after the first round, which this sort is quick at.
        Arrays.sort(order, (a, b) -> y[a] != y[b] ? Double.compare(y[b], y[a]) : Integer.compare(a, b));
        double most = 0;
        for (double r : room) {
            most = Math.max(most, r);
        }
        boolean moved = false;
        for (int at = 0; at < count; at++) {
            int i = order[at];
            double reach = room[i] + most;
            for (int next = at + 1; next < count; next++) {
                int j = order[next];
                double dy = y[i] - y[j];
                if (dy >= reach + 0.02) {
                    break;
                }
                double due = room[i] + room[j];
                double dx = x[i] - x[j];
                double dz = z[i] - z[j];
                double squared = dx * dx + dy * dy + dz * dz;
                if (squared < due * due) {
                    part(i, j, due, Math.sqrt(squared), dx, dy, dz);
                    moved = true;
                }
            }
        }
        return moved;
    }

    private void part(int i, int j, double due, double distance, double dx, double dy, double dz) {
        boolean still = discs.get(i).fixed();
        boolean otherStill = discs.get(j).fixed();
        if (still && otherStill) {
            return;
        }
        double share = still || otherStill ? 1 : 0.5;
        double missing = share * (due - distance);
        double nx;
        double ny;
        double nz;
        if (distance < 1e-9) {
            // Two in one place: sideways, by their order.
            nx = Math.cos(angle[i]);
            ny = 0;
            nz = -Math.sin(angle[i]);
        } else {
            nx = dx / distance;
            ny = dy / distance;
            nz = dz / distance;
        }
        if (!still) {
            move(i, missing * nx, missing * ny, missing * nz);
        }
        if (!otherStill) {
            move(j, -missing * nx, -missing * ny, -missing * nz);
        }
    }

    /** Moves along the surface as far as a push through the air goes in its directions. */
    private void move(int i, double px, double py, double pz) {
        double depth = discs.get(i).depth();
        double out = depth * surface.widening();
        double down = surface.falling();
        double sin = Math.sin(angle[i]);
        double cos = Math.cos(angle[i]);
        double along = (px * sin + pz * cos) * out - py * down;
        double around = px * cos - pz * sin;
        slant[i] += along / (out * out + down * down);
        angle[i] += around / Math.max(0.02, depth * surface.radius(slant[i]));
        place(i);
    }

    private void backToWish(int i, double pull) {
        Disc disc = discs.get(i);
        if (disc.fixed() || disc.stray() == Double.MAX_VALUE) {
            return;
        }
        double radius = Math.max(0.02, disc.depth() * surface.radius(slant[i]));
        double down = slant[i] - disc.wish().slant();
        double aside = Math.IEEEremainder(angle[i] - disc.wish().angle(), 2 * Math.PI) * radius;
        double far = Math.hypot(down, aside);
        double keep = Math.min(1 - pull, far > disc.stray() ? disc.stray() / far : 1);
        slant[i] = disc.wish().slant() + keep * down;
        angle[i] = disc.wish().angle() + keep * aside / radius;
        place(i);
    }

    /** Back within the seen sector, and the point in the room. */
    private void place(int i) {
        Disc disc = discs.get(i);
        double margin = Math.min(disc.radius(), (surface.bottom() - surface.top()) / 4);
        slant[i] = Math.max(surface.top(), Math.min(surface.bottom(), slant[i]));
        angle[i] = surface.within(slant[i], angle[i], margin);
        double out = disc.depth() * surface.radius(slant[i]);
        x[i] = out * Math.sin(angle[i]);
        y[i] = surface.height(slant[i]);
        z[i] = out * Math.cos(angle[i]);
    }
}
