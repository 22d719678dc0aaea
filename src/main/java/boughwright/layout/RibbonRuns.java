package boughwright.layout;

import boughwright.catalogue.Product;
import boughwright.needs.RibbonMeasures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Cuts the body ribbons into runs and lays them.
 *
 * <p>As many plain runs as the rolls of both give, roll by roll; what is left of a roll goes into variations, a small loop or a two-loop
 * bow at the end, chosen by seed. The first run begins with a two-loop bow just under the topper. Runs start in rows down the
 * tree, more where it is wide, each to one side of those above.
 */
final class RibbonRuns {

    /**
     * Metres down the slant, and sideways, between the pinches of a large loop; a small one takes half of each (common practice, no
     * published source). A run that only fell would show its loops edge-on at the tree's sides.
     */
    private static final double LOOP_SPAN = 0.22;
    private static final double LOOP_SWAY = 0.30;
    private static final double ROW = 0.55;
    private static final int MOST_ROWS = 14;
    /** A run needs so much surface, m², or the runs hide the tree; what a small tree leaves on its roll is for parcels. */
    private static final double LEAST_AREA = 0.06;
    /** Least sideways distance of a start from the starts just above it, metres. */
    private static final double STAGGER = 0.10;

    record Laid(List<RibbonRun> runs, List<RollCuts> cuts) {
    }

    /** One run to be: its variations, and the roll of each ribbon that it is cut from, from 1. */
    private record Plan(boolean startBow, boolean smallLoop, boolean endBow, List<Integer> rolls, double length) {
    }

    /** Rolls of one ribbon with what is left of each while runs are planned. */
    private static final class Stock {

        final Product ribbon;
        final double[] left;
        int roll;

        Stock(Product ribbon, int rolls) {
            this.ribbon = ribbon;
            this.left = new double[rolls];
            java.util.Arrays.fill(left, ribbon.length().metres());
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

    RibbonRuns(Surface surface, RibbonMeasures measures, long seed) {
        this.surface = surface;
        this.measures = measures;
        this.random = new SplittableRandom(seed);
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
        for (int i = 0; i < stocks.size(); i++) {
            cuts.addAll(cuts(stocks.get(i), i, plans));
        }
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
            plans.add(new Plan(startBow, smallLoop, endBow, from,
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

    private static List<RollCuts> cuts(Stock stock, int ribbon, List<Plan> plans) {
        List<RollCuts> list = new ArrayList<>();
        for (int roll = 1; roll <= stock.left.length; roll++) {
            List<RollCuts.Cut> cuts = new ArrayList<>();
            for (int i = 0; i < plans.size(); i++) {
                if (plans.get(i).rolls().get(ribbon) == roll) {
                    cuts.add(new RollCuts.Cut(plans.get(i).length(), "run-" + (i + 1)));
                }
            }
            list.add(new RollCuts(stock.ribbon.sku(), roll, stock.ribbon.length().metres(), cuts, Math.max(0, stock.left[roll - 1])));
        }
        return list;
    }

    private List<RibbonRun> draw(List<Plan> plans, Optional<Product> base, Optional<Product> overlay) {
        List<Patterns.Wished> starts = starts(plans.size());
        List<RibbonRun> runs = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            Patterns.Wished start = starts.get(i);
            RibbonCurve curve = new RibbonCurve(surface, start.slant(), start.angle());
            // A run near an edge of the seen sector first turns inward.
            int side = Math.abs(start.angle()) > 0.22 * surface.sector() && !surface.round() ? (start.angle() > 0 ? -1 : 1) : i % 2 == 0 ? 1 : -1;
            double room = surface.bottom() - start.slant();
            double span = span();
            double wanted = (plan.smallLoop() ? 2.5 : 2) * span + 0.12;
            double squeeze = Math.min(1, Math.max(0.25, room / wanted));
            double down = span * squeeze;
            double sway = side * Math.min(LOOP_SWAY * span / LOOP_SPAN, 0.9 * surface.radius(start.slant() + down));
            curve.firstTail(measures.tail(), -side);
            if (plan.startBow()) {
                curve.bow(measures.bowLoop());
            }
            curve.loop(measures.loop(), down, sway);
            if (plan.smallLoop()) {
                curve.loop(measures.smallLoop(), down / 2, -sway / 2);
            }
            curve.loop(measures.loop(), down, plan.smallLoop() ? sway : -sway);
            if (plan.endBow()) {
                curve.bow(measures.bowLoop());
            }
            curve.lastTail(measures.tail(), side);
            runs.add(new RibbonRun("run-" + (i + 1), base.map(Product::sku).orElse(""), overlay.map(Product::sku).orElse(""),
                    surface.height(start.slant()), Surface.clock(start.angle()), curve.points(), 2, plan.smallLoop() ? 1 : 0,
                    plan.startBow() ? "start" : plan.endBow() ? "end" : "none", plan.length()));
        }
        return runs;
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
