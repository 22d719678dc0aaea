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
 * <p>As many plain runs as a roll gives, roll by roll; what is left of a roll goes into variations, a small loop or a two-loop
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
    private static final double SMALL_SPAN = LOOP_SPAN / 2;
    private static final double ROW = 0.55;
    /** Least sideways distance of a start from the starts just above it, metres. */
    private static final double STAGGER = 0.10;

    record Laid(List<RibbonRun> runs, List<RollCuts> cuts) {
    }

    private record Plan(boolean startBow, boolean smallLoop, boolean endBow, int roll, double length) {
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
     * @param rolls of both that run together; rolls of either beyond these stay whole
     */
    Laid lay(Optional<Product> base, int baseRolls, Optional<Product> overlay, int overlayRolls) {
        List<Product> ribbons = new ArrayList<>();
        base.filter(p -> baseRolls > 0).ifPresent(ribbons::add);
        overlay.filter(p -> overlayRolls > 0).ifPresent(ribbons::add);
        if (ribbons.isEmpty()) {
            return new Laid(List.of(), List.of());
        }
        double rollLength = ribbons.stream().mapToDouble(p -> p.length().metres()).min().orElseThrow();
        int rolls = ribbons.size() == 2 ? Math.min(baseRolls, overlayRolls) : Math.max(baseRolls, overlayRolls);
        List<Plan> plans = plan(rollLength, rolls);
        List<RibbonRun> runs = draw(plans, base.filter(ribbons::contains), overlay.filter(ribbons::contains));
        List<RollCuts> cuts = new ArrayList<>();
        base.filter(ribbons::contains).ifPresent(p -> cuts.addAll(cuts(p, baseRolls, plans)));
        overlay.filter(ribbons::contains).ifPresent(p -> cuts.addAll(cuts(p, overlayRolls, plans)));
        return new Laid(runs, cuts);
    }

    private List<Plan> plan(double rollLength, int rolls) {
        List<Plan> plans = new ArrayList<>();
        double plain = measures.plainRun();
        double bow = 2 * measures.bowLoop();
        for (int roll = 1; roll <= rolls; roll++) {
            double left = rollLength;
            boolean first = roll == 1;
            int runs = (int) Math.floor((left - (first ? bow : 0)) / plain + 1e-9);
            left -= runs * plain + (first ? bow : 0);
            for (int i = 0; i < runs; i++) {
                boolean startBow = first && i == 0;
                int wish = random.nextInt(3);
                boolean endBow = wish == 2 && !startBow && left >= bow;
                boolean smallLoop = !endBow && wish >= 1 && left >= measures.smallLoop();
                double extra = (endBow ? bow : 0) + (smallLoop ? measures.smallLoop() : 0);
                left -= extra;
                plans.add(new Plan(startBow, smallLoop, endBow, roll, plain + extra + (startBow ? bow : 0)));
            }
        }
        return plans;
    }

    private List<RollCuts> cuts(Product ribbon, int rolls, List<Plan> plans) {
        List<RollCuts> list = new ArrayList<>();
        for (int roll = 1; roll <= rolls; roll++) {
            List<RollCuts.Cut> cuts = new ArrayList<>();
            double left = ribbon.length().metres();
            for (int i = 0; i < plans.size(); i++) {
                if (plans.get(i).roll() == roll) {
                    cuts.add(new RollCuts.Cut(plans.get(i).length(), "run-" + (i + 1)));
                    left -= plans.get(i).length();
                }
            }
            list.add(new RollCuts(ribbon.sku(), roll, ribbon.length().metres(), cuts, Math.max(0, left)));
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
            double wanted = 2 * LOOP_SPAN + (plan.smallLoop() ? SMALL_SPAN : 0) + 0.12;
            double squeeze = Math.min(1, Math.max(0.25, room / wanted));
            double sway = side * Math.min(LOOP_SWAY, 0.9 * surface.radius(start.slant() + LOOP_SPAN * squeeze));
            curve.firstTail(measures.tail(), -side);
            if (plan.startBow()) {
                curve.bow(measures.bowLoop());
            }
            curve.loop(measures.loop(), LOOP_SPAN * squeeze, sway);
            if (plan.smallLoop()) {
                curve.loop(measures.smallLoop(), SMALL_SPAN * squeeze, -sway / 2);
            }
            curve.loop(measures.loop(), LOOP_SPAN * squeeze, plan.smallLoop() ? sway : -sway);
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

    /** First pinches of the runs, from the top down; the first is in the middle, just under the topper. */
    private List<Patterns.Wished> starts(int count) {
        double first = surface.top();
        double last = Math.max(first, surface.bottom() - 2 * LOOP_SPAN - 0.1);
        int rows = Math.max(1, Math.min(count, 1 + (int) Math.round((last - first) / ROW)));
        double[] widths = new double[rows];
        double whole = 0;
        for (int row = 0; row < rows; row++) {
            widths[row] = Math.max(0.1, surface.radius(slantOfRow(row, rows, first, last) + LOOP_SPAN));
            whole += widths[row];
        }
        List<Patterns.Wished> starts = new ArrayList<>();
        List<Patterns.Wished> above = List.of();
        double owed = 0;
        for (int row = 0; row < rows && starts.size() < count; row++) {
            owed += count * widths[row] / whole;
            int here = row == rows - 1 ? count - starts.size() : Math.max(1, (int) Math.round(owed));
            here = Math.min(here, count - starts.size());
            owed -= here;
            double slant = slantOfRow(row, rows, first, last);
            List<Patterns.Wished> line = new ArrayList<>();
            for (int i = 0; i < here; i++) {
                double share = here == 1 ? 0.5 : (i + 0.5 + (row % 2 == 0 ? 0.12 : -0.12)) / here;
                // Neighbours in a row start at slightly different heights; a line of starts would show as a line.
                double step = here == 1 ? 0 : (i % 2 == 0 ? -0.05 : 0.05);
                line.add(aside(new Patterns.Wished(Math.max(first, slant + step), surface.angleAt(share)), above));
            }
            starts.addAll(line);
            above = line;
        }
        return starts;
    }

    private static double slantOfRow(int row, int rows, double first, double last) {
        return rows == 1 ? first : first + (last - first) * row / (rows - 1);
    }

    /** The start itself, or moved sideways so that it is not straight under one of those above. */
    private Patterns.Wished aside(Patterns.Wished start, List<Patterns.Wished> above) {
        double radius = Math.max(0.1, surface.radius(start.slant()));
        for (int i = 0; i < 24; i++) {
            double shift = (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 0.05 / radius;
            double angle = start.angle() + shift;
            boolean clear = above.stream().allMatch(a -> Math.abs(Math.IEEEremainder(a.angle() - angle, 2 * Math.PI)) * radius >= STAGGER);
            if (clear && surface.holds(Math.max(surface.top(), start.slant()), angle, 0)) {
                return new Patterns.Wished(start.slant(), angle);
            }
        }
        return start;
    }
}
