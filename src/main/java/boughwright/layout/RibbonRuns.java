package boughwright.layout;

import boughwright.catalogue.Product;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Cuts the body ribbons into runs and lays them.
 *
 * <p>As many plain runs as the rolls of both give, roll by roll; what is left of a roll goes into variations, a small loop or a two-loop
 * bow at the end, chosen by seed. The first run begins with a two-loop bow just under the topper. Runs start in rows down the
 * tree, more where it is wide, each to one side of those above. A run that would cross a cluster starts a little aside or turns to its
 * other side, as long as that keeps it clear of the starts about it. Which run is cut from which roll is a {@link CuttingStock}.
 */
final class RibbonRuns {

    /**
     * Metres down the slant, and sideways, between the pinches of a large loop; a small one takes half of each (common practice, no
     * published source). A run that only fell would show its loops edge-on at the tree's sides.
     */
    private static final double LOOP_SPAN = 0.22;
    private static final double LOOP_SWAY = 0.30;
    static final String RUN = "run-";
    private static final double ROW = 0.55;
    private static final int MOST_ROWS = 14;
    /** A run needs so much surface, m², or the runs hide the tree; what a small tree leaves on its roll is for parcels. */
    private static final double LEAST_AREA = 0.06;
    /** Least sideways distance of a start from the starts just above it, metres. */
    private static final double STAGGER = 0.10;

    record Laid(List<RibbonRun> runs, List<RollCuts> cuts) {
    }

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

    /** One run to be, with its variations. */
    private record Plan(boolean startBow, boolean smallLoop, boolean endBow, double length) {
    }

    /** Where a run goes: its first pinch, and the span and sway of its large loops. */
    private record Way(Patterns.Wished start, double span, double sway, int side) {
    }

    /** Rolls of one ribbon with what is left of each while runs are planned. */
    private static final class Stock {

        final Product ribbon;
        final double[] left;
        int roll;

        Stock(Product ribbon, int rolls) {
            this.ribbon = ribbon;
            this.left = new double[rolls];
            java.util.Arrays.fill(left, ribbon.length().metres() - trim());
        }

        /** Lost at the roll's square end by a cut at 45°. */
        double trim() {
            return ribbon.width().metres();
        }

        /** Whether another length can be cut, from this roll or one that has not been begun. */
        boolean gives(double length) {
            while (roll < left.length && left[roll] < length - 1e-9) {
                roll++;
            }
            return roll < left.length;
        }
    }

    private final Surface surface;
    private final RibbonMeasures measures;
    private final SplittableRandom random;
    private final List<Hung> clusters;
    private final Map<String, Spot> moved;

    /**
     * @param clusters that the runs go round where they can
     * @param moved where hands have put the first pinch of a run, by its id
     */
    RibbonRuns(Surface surface, RibbonMeasures measures, long seed, List<Hung> clusters, Map<String, Spot> moved) {
        this.surface = surface;
        this.measures = measures;
        this.random = new SplittableRandom(seed);
        this.clusters = clusters;
        this.moved = moved;
    }

    /**
     * @param base empty when the kit has no base ribbon, as for {@code overlay}
     * @param baseRolls may differ from {@code overlayRolls}, and the two rolls in length; what one has more stays on its rolls
     */
    Laid lay(Optional<Product> base, int baseRolls, Optional<Product> overlay, int overlayRolls) {
        List<Product> ribbons = new ArrayList<>();
        base.filter(p -> baseRolls > 0).ifPresent(ribbons::add);
        overlay.filter(p -> overlayRolls > 0).ifPresent(ribbons::add);
        if (ribbons.isEmpty()) {
            return new Laid(List.of(), List.of());
        }
        List<Stock> stocks = ribbons.stream().map(p -> new Stock(p, base.filter(p::equals).isPresent() ? baseRolls : overlayRolls)).toList();
        List<Plan> plans = plan(stocks);
        List<RibbonRun> runs = draw(plans, base.filter(ribbons::contains), overlay.filter(ribbons::contains));
        List<RollCuts> cuts = new ArrayList<>();
        stocks.forEach(s -> cuts.addAll(cuts(s, plans)));
        return new Laid(runs, cuts);
    }

    /** First as many plain runs as both ribbons give, roll by roll; then variations where the rolls they come from have enough left. */
    private List<Plan> plan(List<Stock> stocks) {
        double plain = measures.plainRun();
        double bow = 2 * measures.bowLoop();
        List<List<Integer>> rolls = new ArrayList<>();
        int most = Math.max(2, (int) Math.ceil(surface.area() / LEAST_AREA));
        while (rolls.size() < most && stocks.stream().allMatch(s -> s.gives(rolls.isEmpty() ? plain + bow : plain))) {
            double length = rolls.isEmpty() ? plain + bow : plain;
            stocks.forEach(s -> s.left[s.roll] -= length);
            rolls.add(stocks.stream().map(s -> s.roll + 1).toList());
        }
        List<Plan> plans = new ArrayList<>();
        for (List<Integer> from : rolls) {
            boolean startBow = plans.isEmpty();
            int wish = random.nextInt(3);
            boolean endBow = wish == 2 && !startBow && take(stocks, from, bow);
            boolean smallLoop = !endBow && wish >= 1 && take(stocks, from, measures.smallLoop());
            plans.add(new Plan(startBow, smallLoop, endBow,
                    plain + (startBow || endBow ? bow : 0) + (smallLoop ? measures.smallLoop() : 0)));
        }
        return plans;
    }

    private static boolean take(List<Stock> stocks, List<Integer> rolls, double extra) {
        for (int i = 0; i < stocks.size(); i++) {
            if (stocks.get(i).left[rolls.get(i) - 1] < extra - 1e-9) {
                return false;
            }
        }
        for (int i = 0; i < stocks.size(); i++) {
            stocks.get(i).left[rolls.get(i) - 1] -= extra;
        }
        return true;
    }

    /** The rolls of one ribbon in the order in which they are cut; the one with the longest rest last, then those that stay whole. */
    private static List<RollCuts> cuts(Stock stock, List<Plan> plans) {
        double whole = stock.ribbon.length().metres();
        double[] lengths = plans.stream().mapToDouble(Plan::length).toArray();
        List<List<Integer>> cutting = CuttingStock.solve(lengths, whole - stock.trim()).rolls();
        List<RollCuts> list = new ArrayList<>();
        for (int roll = 1; roll <= stock.left.length; roll++) {
            List<RollCuts.Cut> cuts = roll > cutting.size() ? List.of()
                    : cutting.get(roll - 1).stream().map(i -> new RollCuts.Cut(lengths[i], RUN + (i + 1))).toList();
            double lost = cuts.isEmpty() ? 0 : stock.trim();
            double left = whole - lost - cuts.stream().mapToDouble(RollCuts.Cut::length).sum();
            list.add(new RollCuts(stock.ribbon.sku(), roll, whole, cuts, lost, Math.max(0, left)));
        }
        return list;
    }

    private List<RibbonRun> draw(List<Plan> plans, Optional<Product> base, Optional<Product> overlay) {
        List<Patterns.Wished> starts = new ArrayList<>(starts(plans.size()));
        List<RibbonRun> runs = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            String id = RUN + (i + 1);
            Drawn drawn = draw(plan, ways(plan, starts, i));
            starts.set(i, drawn.way().start());
            if (moved.containsKey(id)) {
                drawn = put(plan, drawn.way(), moved.get(id));
            }
            runs.add(new RibbonRun(id, base.map(Product::sku).orElse(""), overlay.map(Product::sku).orElse(""),
                    surface.height(drawn.way().start().slant()), Surface.clock(drawn.way().start().angle()), drawn.points(), 2, plan.smallLoop() ? 1 : 0,
                    plan.startBow() ? "start" : plan.endBow() ? "end" : "none", plan.length()));
        }
        return runs;
    }

    private record Drawn(Way way, List<Point> points) {
    }

    /** The first of some ways that, drawn out in full, crosses no cluster; the first of all when each does. */
    private Drawn draw(Plan plan, List<Way> ways) {
        Drawn first = null;
        for (Way way : ways) {
            Drawn drawn = new Drawn(way, points(plan, way));
            if (clusters.stream().noneMatch(c -> crosses(surface, drawn.points(), c))) {
                return drawn;
            }
            first = first == null ? drawn : first;
        }
        return first;
    }

    private List<Point> points(Plan plan, Way way) {
        RibbonCurve curve = new RibbonCurve(surface, way.start().slant(), way.start().angle());
        curve.firstTail(measures.tail(), -way.side());
        if (plan.startBow()) {
            curve.bow(measures.bowLoop());
        }
        curve.loop(measures.loop(), way.span(), way.sway());
        if (plan.smallLoop()) {
            curve.loop(measures.smallLoop(), way.span() / 2, -way.sway() / 2);
        }
        curve.loop(measures.loop(), way.span(), plan.smallLoop() ? way.sway() : -way.sway());
        if (plan.endBow()) {
            curve.bow(measures.bowLoop());
        }
        curve.lastTail(measures.tail(), way.side());
        return curve.points();
    }

    /** The same way from where a hand has put its start; the other runs stay as they were. */
    private Drawn put(Plan plan, Way usual, Spot spot) {
        Patterns.Wished start = new Patterns.Wished(surface.slantAtHeight(spot.height()), inSector(Surface.angle(spot.clock())));
        Way way = new Way(start, usual.span(), usual.sway(), usual.side());
        return new Drawn(way, points(plan, way));
    }

    /** Ways that are worth drawing: by how much they cross, then by how far they are from the wished one. */
    private List<Way> ways(Plan plan, List<Patterns.Wished> starts, int run) {
        Patterns.Wished wished = starts.get(run);
        record Weighed(Way way, double crossed) {
        }
        List<Weighed> ways = new ArrayList<>();
        double radius = Math.max(0.05, surface.radius(wished.slant()));
        int clear = 0;
        for (int[] aside : ELSEWHERE) {
            Patterns.Wished start = new Patterns.Wished(wished.slant() + aside[1] * STEP, wished.angle() + aside[0] * STEP / radius);
            boolean stays = aside[0] == 0 && aside[1] == 0;
            if (clear >= MOST_DRAWN
                    || !stays && (run == 0 || !surface.holds(start.slant(), start.angle(), 0) || !clearOfStarts(start, starts, run))) {
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

    private double inSector(double angle) {
        return surface.round() ? angle : Math.max(-surface.sector() / 2, Math.min(surface.sector() / 2, angle));
    }

    /** A run near an edge of the seen sector first turns inward. */
    private int side(Patterns.Wished start, int run) {
        return Math.abs(start.angle()) > 0.22 * surface.sector() && !surface.round() ? (start.angle() > 0 ? -1 : 1) : run % 2 == 0 ? 1 : -1;
    }

    private Way way(Plan plan, Patterns.Wished start, int side, double wide) {
        double span = span();
        double wanted = (plan.smallLoop() ? 2.5 : 2) * span + 0.12;
        double squeeze = Math.min(1, Math.max(0.25, (surface.bottom() - start.slant()) / wanted));
        double down = span * squeeze;
        double sway = side * Math.min(wide * LOOP_SWAY * span / LOOP_SPAN, 0.9 * surface.radius(start.slant() + down));
        return new Way(start, down, sway, side);
    }

    /** Whether a start keeps its distance from the others: from those near its height sideways, from all along the surface. */
    private boolean clearOfStarts(Patterns.Wished start, List<Patterns.Wished> starts, int run) {
        double radius = Math.max(0.02, surface.radius(start.slant()));
        for (int i = 0; i < starts.size(); i++) {
            double down = Math.abs(starts.get(i).slant() - start.slant());
            if (i != run && down < 1.7 * ROW) {
                double aside = Math.abs(Math.IEEEremainder(starts.get(i).angle() - start.angle(), 2 * Math.PI)) * radius;
                if (aside < STAGGER) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How deep the run's middle line cuts into clusters, metres, summed over them; 0 when it crosses none. */
    private double crossed(Way way, Plan plan) {
        if (clusters.isEmpty()) {
            return 0;
        }
        List<Patterns.Wished> line = line(way, plan);
        double sum = 0;
        for (Hung cluster : clusters) {
            if (cluster.slant() < way.start().slant() - 0.4 || cluster.slant() > way.start().slant() + 3 * way.span() + 0.5) {
                continue;
            }
            double least = Double.MAX_VALUE;
            for (Patterns.Wished at : line) {
                double aside = Math.IEEEremainder(at.angle() - cluster.angle(), 2 * Math.PI) * surface.radius(cluster.slant());
                least = Math.min(least, Math.hypot(aside, at.slant() - cluster.slant()));
            }
            sum += Math.max(0, ACROSS * cluster.radius() - least);
        }
        return sum;
    }

    /** The run's middle line on the surface, near enough to tell what it crosses: loops taken to stand out by a quarter of their ribbon. */
    private List<Patterns.Wished> line(Way way, Plan plan) {
        List<Patterns.Wished> line = new ArrayList<>();
        double slant = way.start().slant();
        double angle = way.start().angle();
        step(line, slant - 0.2 * measures.tail(), angle, 0, -0.9 * way.side() * measures.tail(), 0);
        double[][] loops = plan.smallLoop()
                ? new double[][] {{way.span(), way.sway(), measures.loop()}, {way.span() / 2, -way.sway() / 2, measures.smallLoop()},
                    {way.span(), way.sway(), measures.loop()}}
                : new double[][] {{way.span(), way.sway(), measures.loop()}, {way.span(), -way.sway(), measures.loop()}};
        for (double[] loop : loops) {
            step(line, slant, angle, loop[0], loop[1], loop[2] / 12);
            angle += loop[1] / Math.max(0.04, surface.radius(slant + loop[0]));
            slant += loop[0];
        }
        step(line, slant, angle, 0.9 * measures.tail(), way.side() * 0.3 * measures.tail(), 0);
        if (plan.startBow() || plan.endBow()) {
            // A bow's loops lie to either side of its pinch, each about two fifths of its ribbon wide.
            Patterns.Wished at = plan.startBow() ? way.start() : new Patterns.Wished(slant, angle);
            step(line, at.slant(), at.angle() - 0.4 * measures.bowLoop() / Math.max(0.04, surface.radius(at.slant())), 0, 0.8 * measures.bowLoop(), 0);
        }
        return line;
    }

    private void step(List<Patterns.Wished> line, double slant, double angle, double down, double aside, double sag) {
        for (int i = 0; i <= 8; i++) {
            double share = i / 8.0;
            double there = slant + down * share + sag * Math.sin(Math.PI * share);
            line.add(new Patterns.Wished(there, angle + aside * share / Math.max(0.04, surface.radius(there))));
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

    /** {@link #LOOP_SPAN}, less where the house's loops are smaller. */
    private double span() {
        return LOOP_SPAN * Math.min(1, measures.loop() / 0.6096);
    }

    /** First pinches of the runs, from the top down; the first is in the middle, just under the topper. */
    private List<Patterns.Wished> starts(int count) {
        double first = surface.top();
        double last = Math.max(first + 0.05, surface.bottom() - 2 * span() - Math.max(0.08, measures.tail() + 0.04 - surface.height(surface.bottom())));
        int rows = Math.max(1, Math.min(count, 1 + (int) Math.round((last - first) / ROW)));
        while (rows < Math.min(count, MOST_ROWS) && room(rows, first, last) < count) {
            rows++;
        }
        double[] widths = new double[rows];
        double whole = 0;
        for (int row = 1; row < rows; row++) {
            widths[row] = surface.radius(slantOfRow(row, rows, first, last) + span());
            whole += widths[row];
        }
        List<Patterns.Wished> starts = new ArrayList<>();
        starts.add(new Patterns.Wished(first, 0));
        List<Patterns.Wished> above = List.copyOf(starts);
        double owed = 0;
        for (int row = 1; row < rows && starts.size() < count; row++) {
            owed += (count - 1) * widths[row] / whole;
            int left = count - starts.size();
            double slant = slantOfRow(row, rows, first, last);
            int later = 0;
            for (int below = row + 1; below < rows; below++) {
                later += room(slantOfRow(below, rows, first, last));
            }
            int here = Math.min(room(slant), Math.max(1, (int) Math.round(owed)));
            here = Math.min(left, Math.max(here, left - later));
            owed -= here;
            List<Patterns.Wished> line = new ArrayList<>();
            for (int i = 0; i < here; i++) {
                double share = here == 1 ? (row % 2 == 0 ? 0.62 : 0.38) : (i + 0.5 + (row % 2 == 0 ? 0.12 : -0.12)) / here;
                // Neighbours in a row start at slightly different heights; a line of starts would show as a line.
                double step = here == 1 ? 0 : (i % 2 == 0 ? -1 : 1) * Math.min(0.05, 0.14 * (last - first) / rows);
                line.add(aside(new Patterns.Wished(Math.max(first, slant + step), surface.angleAt(share)), above, line));
            }
            starts.addAll(line);
            above = line;
        }
        return starts;
    }

    /** Starts that a row has room for, so that those of the next row find a place between them. */
    private int room(double slant) {
        return Math.max(1, (int) (surface.sector() * surface.radius(slant) / (2.2 * STAGGER)));
    }

    private int room(int rows, double first, double last) {
        int room = 1;
        for (int row = 1; row < rows; row++) {
            room += room(slantOfRow(row, rows, first, last));
        }
        return room;
    }

    private static double slantOfRow(int row, int rows, double first, double last) {
        return rows == 1 ? first : first + (last - first) * row / (rows - 1);
    }

    /**
     * The start itself, or moved sideways as little as it takes not to be straight under one of those above nor on one of its own
     * row; where the tree is too narrow for that, the place that is farthest from them.
     */
    private Patterns.Wished aside(Patterns.Wished start, List<Patterns.Wished> above, List<Patterns.Wished> beside) {
        double radius = Math.max(0.02, surface.radius(start.slant()));
        double best = -1;
        double bestAngle = start.angle();
        for (int i = 0; i < 160; i++) {
            double angle = start.angle() + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * surface.sector() / 160;
            if (!surface.holds(Math.max(surface.top(), start.slant()), angle, 0)) {
                continue;
            }
            double clear = Math.min(clearance(angle, above), clearance(angle, beside)) * radius;
            if (clear >= STAGGER) {
                return new Patterns.Wished(start.slant(), angle);
            }
            if (clear > best) {
                best = clear;
                bestAngle = angle;
            }
        }
        return new Patterns.Wished(start.slant(), bestAngle);
    }

    /** Least difference of angle to any of some starts, radians. */
    private static double clearance(double angle, List<Patterns.Wished> others) {
        return others.stream().mapToDouble(o -> Math.abs(Math.IEEEremainder(o.angle() - angle, 2 * Math.PI))).min().orElse(Math.PI);
    }
}
