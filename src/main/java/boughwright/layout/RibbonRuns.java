package boughwright.layout;

import boughwright.catalogue.Product;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Cuts the body ribbons into runs and lays them.
 *
 * <p>As many plain runs as the rolls of both give, roll by roll; what is left of a roll goes into variations, a small loop or a two-loop
 * bow at the end, chosen by seed. The first run begins with a two-loop bow just under the topper. Where runs start is
 * {@link RunStarts}, how they go {@link RunWays}; which run is cut from which roll is a {@link CuttingStock}.
 */
final class RibbonRuns {

    static final String RUN = "run-";
    /** A run needs so much surface, m², or the runs hide the tree; what a small tree leaves on its roll is for parcels. */
    private static final double LEAST_AREA = 0.06;
    /** The house says of a dozen runs how many are varied. */
    private static final int DOZEN = 12;

    record Laid(List<RibbonRun> runs, List<RollCuts> cuts) {
    }

    /** One run to be, with its variations. */
    record Plan(boolean startBow, boolean smallLoop, boolean endBow, double length) {
    }

    /** Rolls of one ribbon with what is left of each while runs are planned. */
    private static final class Stock {

        final Product ribbon;
        final double[] left;
        int roll;

        Stock(Product ribbon, int rolls) {
            this.ribbon = ribbon;
            this.left = new double[rolls];
            Arrays.fill(left, ribbon.length().metres() - trim());
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
    private final RunWays ways;
    private final Map<String, Spot> moved;

    /**
     * @param clusters that the runs go round where they can
     * @param moved where hands have put the first pinch of a run, by its id
     */
    RibbonRuns(Surface surface, RibbonMeasures measures, long seed, List<Hung> clusters, Map<String, Spot> moved) {
        this.surface = surface;
        this.measures = measures;
        this.random = new SplittableRandom(seed);
        this.ways = new RunWays(surface, measures, clusters);
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
        List<RollCuts.Cut> pieces = runs.stream().map(r -> new RollCuts.Cut(r.length(), r.id())).toList();
        List<RollCuts> cuts = new ArrayList<>();
        stocks.forEach(s -> cuts.addAll(RollCuts.of(s.ribbon, s.left.length, s.trim(), pieces)));
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
            int drawn = random.nextInt(DOZEN);
            // Where a run stands in its dozen: the last ones want a bow, those before them a small loop.
            int place = drawn % 3 * (DOZEN / 3) + drawn / 3;
            boolean wantsBow = place >= DOZEN - measures.endBows();
            boolean endBow = wantsBow && !startBow && take(stocks, from, bow);
            boolean smallLoop = !endBow && (wantsBow || place >= DOZEN - measures.endBows() - measures.smallLoops())
                    && take(stocks, from, measures.smallLoop());
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

    private List<RibbonRun> draw(List<Plan> plans, Optional<Product> base, Optional<Product> overlay) {
        List<Patterns.Wished> starts = new ArrayList<>(ways.starts(plans.size()));
        List<RibbonRun> runs = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Plan plan = plans.get(i);
            String id = RUN + (i + 1);
            RunWays.Drawn drawn = ways.draw(plan, starts, i);
            // The others keep clear of where it would start; a hand that moves one run moves no other.
            starts.set(i, drawn.way().start());
            if (moved.containsKey(id)) {
                drawn = ways.put(plan, drawn.way(), moved.get(id));
            }
            runs.add(new RibbonRun(id, base.map(Product::sku).orElse(""), overlay.map(Product::sku).orElse(""),
                    surface.height(drawn.way().start().slant()), Surface.clock(drawn.way().start().angle()), drawn.points(), 2, plan.smallLoop() ? 1 : 0,
                    plan.startBow() ? "start" : plan.endBow() ? "end" : "none", plan.length()));
        }
        return runs;
    }
}
