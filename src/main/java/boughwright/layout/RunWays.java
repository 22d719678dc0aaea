package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import boughwright.layout.RibbonRuns.Plan;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The way that each run of ribbon takes. One that would cross a cluster starts a little aside or turns to its other side, as long as that
 * keeps it clear of the starts about it.
 */
final class RunWays {

    /**
     * Metres down the slant, and sideways, between the pinches of a large loop; a small one takes half of each (common practice, no
     * published source). A run that only fell would show its loops edge-on at the tree's sides.
     */
    private static final double LOOP_SPAN = 0.22;
    private static final double LOOP_SWAY = 0.30;
    /** Where else a run may start that would cross a cluster: so many steps of {@link #STEP} aside, or down. */
    private static final int[][] ELSEWHERE = {{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {2, 0}, {-2, 0}, {1, 1}, {-1, 1}, {2, 1}, {-2, 1}, {3, 0}, {-3, 0},
            {3, 1}, {-3, 1}, {4, 0}, {-4, 0}, {5, 0}, {-5, 0}, {4, 1}, {-4, 1}, {5, 1}, {-5, 1}, {6, 0}, {-6, 0}};
    private static final double STEP = 0.06;
    /** Ways that are drawn out in full at most, to see whether they cross. */
    private static final int MOST_DRAWN = 24;
    /** How wide a run that goes round a cluster may sway, over the usual; + to its usual side. */
    private static final double[] SWAYS = {1, -1, 0.7, -0.7, 1.25, -1.25, 0.45, -0.45};
    /** A run crosses a cluster when its middle comes nearer to the cluster's than this share of the cluster's radius. */
    private static final double ACROSS = 0.8;

    /** Where a run goes: its first pinch, and the span and sway of its large loops. */
    record Way(Wished start, double span, double sway, int side) {
    }

    /** A run as it is drawn: the ribbon's middle line. */
    record Drawn(Way way, List<Point> points) {
    }

    /** One loop: metres of ribbon that it takes, and down the slant and sideways to its next pinch. */
    private record Loop(double ribbon, double span, double sway) {
    }

    private final Surface surface;
    private final RibbonMeasures measures;
    private final List<Hung> clusters;
    private final RunStarts about;
    private final double span;

    /** @param clusters that the runs go round where they can */
    RunWays(Surface surface, RibbonMeasures measures, List<Hung> clusters) {
        this.surface = surface;
        this.measures = measures;
        this.clusters = clusters;
        // Less than usual where the house's loops are smaller.
        this.span = LOOP_SPAN * Math.min(1, measures.loop() / 0.6096);
        this.about = new RunStarts(surface, span, measures.tail());
    }

    /** First pinches of so many runs, before any of them goes round a cluster. */
    List<Wished> starts(int count) {
        return about.of(count);
    }

    /**
     * The first way of a run that, drawn out in full, crosses no cluster; the first of all when each does.
     *
     * @param starts of all runs, as far as they are settled
     */
    Drawn draw(Plan plan, List<Wished> starts, int run) {
        Drawn first = null;
        for (Way way : ways(plan, starts, run)) {
            Drawn drawn = new Drawn(way, points(plan, way));
            if (clusters.stream().noneMatch(c -> crosses(surface, drawn.points(), c))) {
                return drawn;
            }
            first = first == null ? drawn : first;
        }
        return first;
    }

    /** The loops of a run from its first pinch on, to one side and the other by turns. */
    private List<Loop> loops(Plan plan, Way way) {
        Loop first = new Loop(measures.loop(), way.span(), way.sway());
        return plan.smallLoop() ? List.of(first, new Loop(measures.smallLoop(), way.span() / 2, -way.sway() / 2), first)
                : List.of(first, new Loop(measures.loop(), way.span(), -way.sway()));
    }

    private List<Point> points(Plan plan, Way way) {
        RibbonCurve curve = new RibbonCurve(surface, way.start().slant(), way.start().angle());
        curve.firstTail(measures.tail(), -way.side());
        if (plan.startBow()) {
            curve.bow(measures.bowLoop());
        }
        loops(plan, way).forEach(l -> curve.loop(l.ribbon(), l.span(), l.sway()));
        if (plan.endBow()) {
            curve.bow(measures.bowLoop());
        }
        curve.lastTail(measures.tail(), way.side());
        return curve.points();
    }

    /** The same way from where a hand has put its start. */
    Drawn put(Plan plan, Way usual, Spot spot) {
        double slant = surface.slantAtHeight(spot.height());
        Way way = new Way(new Wished(slant, surface.within(slant, Surface.angle(spot.clock()), 0)), usual.span(), usual.sway(), usual.side());
        return new Drawn(way, points(plan, way));
    }

    /** Ways that are worth drawing: by how much they cross, then by how far they are from the wished one. */
    private List<Way> ways(Plan plan, List<Wished> starts, int run) {
        Wished wished = starts.get(run);
        record Weighed(Way way, double crossed) {
        }
        List<Weighed> ways = new ArrayList<>();
        double radius = Math.max(0.05, surface.radius(wished.slant()));
        int clear = 0;
        for (int[] aside : ELSEWHERE) {
            Wished start = new Wished(wished.slant() + aside[1] * STEP, wished.angle() + aside[0] * STEP / radius);
            boolean stays = aside[0] == 0 && aside[1] == 0;
            if (clear >= MOST_DRAWN
                    || !stays && (run == 0 || !surface.holds(start.slant(), start.angle(), 0) || !about.clear(start, starts, run))) {
                continue;
            }
            for (double sway : SWAYS) {
                Way way = way(plan, start, (int) Math.signum(sway) * side(start, run), Math.abs(sway));
                double crossed = crossed(way, plan);
                ways.add(new Weighed(way, crossed));
                clear += crossed == 0 ? 1 : 0;
            }
        }
        ways.sort(Comparator.comparingDouble(Weighed::crossed));
        return ways.stream().limit(MOST_DRAWN).map(Weighed::way).toList();
    }

    /** A run near an edge of the seen sector first turns inward. */
    private int side(Wished start, int run) {
        return Math.abs(start.angle()) > 0.22 * surface.sector() && !surface.round() ? (start.angle() > 0 ? -1 : 1) : run % 2 == 0 ? 1 : -1;
    }

    private Way way(Plan plan, Wished start, int side, double wide) {
        double wanted = (plan.smallLoop() ? 2.5 : 2) * span + 0.12;
        double squeeze = Math.min(1, Math.max(0.25, (surface.bottom() - start.slant()) / wanted));
        double down = span * squeeze;
        double sway = side * Math.min(wide * LOOP_SWAY * span / LOOP_SPAN, 0.9 * surface.radius(start.slant() + down));
        return new Way(start, down, sway, side);
    }

    /** How deep the run's middle line cuts into clusters, metres, summed over them; 0 when it crosses none. */
    private double crossed(Way way, Plan plan) {
        if (clusters.isEmpty()) {
            return 0;
        }
        List<Wished> line = line(way, plan);
        double sum = 0;
        for (Hung cluster : clusters) {
            if (cluster.slant() < way.start().slant() - 0.4 || cluster.slant() > way.start().slant() + 3 * way.span() + 0.5) {
                continue;
            }
            double least = Double.MAX_VALUE;
            for (Wished at : line) {
                double aside = Math.IEEEremainder(at.angle() - cluster.angle(), 2 * Math.PI) * surface.radius(cluster.slant());
                least = Math.min(least, Math.hypot(aside, at.slant() - cluster.slant()));
            }
            sum += Math.max(0, ACROSS * cluster.radius() - least);
        }
        return sum;
    }

    /** The run's middle line on the surface, near enough to tell what it crosses: loops taken to stand out by a quarter of their ribbon. */
    private List<Wished> line(Way way, Plan plan) {
        List<Wished> line = new ArrayList<>();
        double slant = way.start().slant();
        double angle = way.start().angle();
        step(line, slant - 0.2 * measures.tail(), angle, 0, -0.9 * way.side() * measures.tail(), 0);
        for (Loop loop : loops(plan, way)) {
            step(line, slant, angle, loop.span(), loop.sway(), loop.ribbon() / 12);
            angle += loop.sway() / Math.max(0.04, surface.radius(slant + loop.span()));
            slant += loop.span();
        }
        step(line, slant, angle, 0.9 * measures.tail(), way.side() * 0.3 * measures.tail(), 0);
        if (plan.startBow() || plan.endBow()) {
            // A bow's loops lie to either side of its pinch, each about two fifths of its ribbon wide.
            Wished at = plan.startBow() ? way.start() : new Wished(slant, angle);
            step(line, at.slant(), at.angle() - 0.4 * measures.bowLoop() / Math.max(0.04, surface.radius(at.slant())), 0, 0.8 * measures.bowLoop(), 0);
        }
        return line;
    }

    private void step(List<Wished> line, double slant, double angle, double down, double aside, double sag) {
        for (int i = 0; i <= 8; i++) {
            double share = i / 8.0;
            double there = slant + down * share + sag * Math.sin(Math.PI * share);
            line.add(new Wished(there, angle + aside * share / Math.max(0.04, surface.radius(there))));
        }
    }

    /** Whether a drawn line comes so near to a cluster's middle that it crosses it. */
    static boolean crosses(Surface surface, List<Point> line, Hung cluster) {
        Point middle = surface.point(cluster.slant(), cluster.angle(), 1);
        double near = ACROSS * cluster.radius();
        for (Point p : line) {
            if (Math.abs(p.y() - middle.y()) < near) {
                double radius = Math.max(1e-6, Math.hypot(p.x(), p.z()));
                double out = surface.radius(surface.slantAtHeight(p.y()));
                if (new Point(p.x() / radius * out, p.y(), p.z() / radius * out).distance(middle) < near) {
                    return true;
                }
            }
        }
        return false;
    }
}
