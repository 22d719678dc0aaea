package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.brief.Owned;
import boughwright.catalogue.Catalogue;
import boughwright.needs.Adjustments;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.proposal.KitQuestions;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Prints how long kits take over the season's 600 products and over larger catalogues made from them, how far they are proven, and what a
 * greedy chooser would have got; run it on demand and copy what it prints, with the machine and its load, to docs/performance.md.
 */
public final class KitMeasurements {

    private static final int BRIEFS = 200;

    private KitMeasurements() {
    }

    public static void main(String[] args) {
        System.out.println("processors " + Runtime.getRuntime().availableProcessors() + ", java " + System.getProperty("java.version"));
        for (int size : args.length > 0 ? new int[] {Integer.parseInt(args[0])} : new int[] {600, 3_000, 10_000}) {
            kits(size);
        }
    }

    private static void kits(int size) {
        Catalogue season = ProposalFixture.season().catalogue();
        Catalogue shelf = size == season.products().size() ? season : RandomShelf.of(size, 7);
        KitSolver solver = ProposalFixture.solver();
        List<KitRequest> requests = new ArrayList<>();
        for (int seed = 1; seed <= BRIEFS; seed++) {
            Brief brief = ProposalFixture.brief(SeededProposals.brief(seed));
            requests.add(KitQuestions.request(brief.withOwned(List.<Owned>of()), shelf, Adjustments.NONE));
        }
        requests.stream().limit(size > 5_000 ? 10 : 40).forEach(r -> solver.best(r, Patience.usual()));
        List<Double> times = new ArrayList<>();
        List<Double> bends = new ArrayList<>();
        int proven = 0;
        int none = 0;
        int greedyFits = 0;
        double greedyLoss = 0;
        double mostGap = 0;
        for (KitRequest request : requests) {
            long start = System.nanoTime();
            Optional<Kit> kit = solver.best(request, Patience.usual());
            times.add((System.nanoTime() - start) / 1e6);
            if (kit.isEmpty()) {
                none++;
                continue;
            }
            proven += kit.get().gap() == 0 ? 1 : 0;
            mostGap = Math.max(mostGap, kit.get().gap());
            Optional<Double> greedy = Greedy.score(request);
            greedyFits += greedy.isPresent() ? 1 : 0;
            greedyLoss += greedy.map(g -> kit.get().score() - g).orElse(0.0);
            bends.add(bend(solver, request, kit.get()));
        }
        System.out.printf(Locale.ROOT, "%d products, %d briefs: best kit %s; gap proven 0 for %d of %d, most %.4f %%; no kit %d%n", size, BRIEFS, spread(times),
                proven, BRIEFS - none, 100 * mostGap, none);
        System.out.printf(Locale.ROOT, "%d products: bend (no glitter, one line pinned) %s%n", size, spread(bends));
        System.out.printf(Locale.ROOT, "%d products: greedy fits %d of %d, and where it does scores %.2f points less on the average%n", size, greedyFits,
                BRIEFS - none, greedyLoss / Math.max(1, greedyFits));
        if (size <= 600) {
            pruning(solver, requests);
            conflicts(solver, shelf);
        }
    }

    /** Clashes of up to eight wishes, each explained with its ways out. */
    private static void conflicts(KitSolver solver, Catalogue shelf) {
        List<Taste> tastes = List.of(Taste.no(Trait.FINISH, "glitter"), Taste.no(Trait.MATERIAL, "plastic"), Taste.no(Trait.FAMILY, "green"),
                Taste.no(Trait.TEXTURE, "leafy"), Taste.only(Trait.FAMILY, "gold", Role.FEATURE_ORNAMENT), Taste.no(Trait.MATERIAL, "fabric"));
        List<Double> explained = new ArrayList<>();
        int overBound = 0;
        for (int seed = 1; explained.size() < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Adjustments hand = Adjustments.NONE;
            for (Taste taste : tastes) {
                hand = random.nextBoolean() ? hand.withTaste(taste) : hand;
            }
            hand = random.nextBoolean() ? hand.withQuantity("florals/spray/1", 80) : hand;
            Brief brief = ProposalFixture.brief("{\"tree\":{\"height\":\"9 ft\"},\"abundance\":\"lavish\",\"budget\":\"" + (200 + random.nextInt(400)) + ".00\"}");
            Wishes wishes = KitQuestions.wishes(brief, shelf, hand);
            long start = System.nanoTime();
            KitOutcome outcome = solver.solve(wishes, Patience.usual());
            double millis = (System.nanoTime() - start) / 1e6;
            if (outcome instanceof KitOutcome.NoKitFits none && !none.conflict().wishes().isEmpty()) {
                explained.add(millis);
                QuickXplain<Wish> search = new QuickXplain<>(held -> solver.possible(wishes.holding(new LinkedHashSet<>(held)), Patience.usual()));
                int k = search.explain(wishes.inOrder()).size();
                double bound = 2.0 * k * Math.log((double) wishes.inOrder().size() / k) / Math.log(2) + 2 * k;
                overBound += search.checks() > bound ? 1 : 0;
            }
        }
        System.out.printf(Locale.ROOT, "conflicts explained with their ways out: %s; checks over the published bound in %d of %d%n", spread(explained), overBound,
                explained.size());
    }

    private static double bend(KitSolver solver, KitRequest request, Kit kit) {
        Map<String, String> kept = new TreeMap<>();
        kit.lines().forEach(l -> kept.put(l.slot(), l.sku()));
        Adjustments hand = Adjustments.NONE.keeping(kept).withTaste(Taste.no(Trait.FINISH, "glitter"))
                .withProduct(kit.lines().get(0).slot(), kit.lines().get(0).sku());
        KitRequest bent = new KitRequest(request.brief(), request.needs(), request.catalogue(), request.budget(), hand, Map.of());
        long start = System.nanoTime();
        solver.best(bent, Patience.usual());
        return (System.nanoTime() - start) / 1e6;
    }

    private static void pruning(KitSolver solver, List<KitRequest> requests) {
        double lost = 0;
        List<Double> times = new ArrayList<>();
        for (KitRequest request : requests) {
            long start = System.nanoTime();
            Optional<Kit> whole = solver.best(request, Patience.usual(), false);
            times.add((System.nanoTime() - start) / 1e6);
            Optional<Kit> pruned = solver.best(request, Patience.usual(), true);
            if (whole.isPresent()) {
                lost = Math.max(lost, Math.abs(whole.get().score() - pruned.orElseThrow().score()));
            }
        }
        System.out.printf(Locale.ROOT, "without pruning: %s; score lost to pruning at most %.7f points%n", spread(times), lost);
    }

    private static String spread(List<Double> times) {
        double[] sorted = times.stream().mapToDouble(d -> d).toArray();
        Arrays.sort(sorted);
        return String.format(Locale.ROOT, "p50 %.0f ms, p95 %.0f ms, most %.0f ms", sorted[sorted.length / 2], sorted[(int) Math.ceil(0.95 * sorted.length) - 1],
                sorted[sorted.length - 1]);
    }
}
