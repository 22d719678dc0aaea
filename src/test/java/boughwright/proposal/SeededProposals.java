package boughwright.proposal;

import boughwright.needs.Adjustments;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A hundred proposals over the season's catalogue for briefs drawn by seed: trees of 3 to 20 ft, every fullness, side, abundance,
 * look and palette, some slim and some broad, some lit, some households with children or animals, some with owned pieces or a
 * budget. Made once and shared.
 */
public final class SeededProposals {

    private static final int COUNT = 100;

    private SeededProposals() {
    }

    private static final class Made {
        static final List<Proposal> ALL = make();
    }

    public static List<Proposal> all() {
        return Made.ALL;
    }

    /** A few words by which a failing proposal is found again. */
    public static String of(Proposal proposal) {
        return proposal.brief().asGiven();
    }

    private static List<Proposal> make() {
        List<Proposal> proposals = new ArrayList<>();
        for (int seed = 1; proposals.size() < COUNT; seed++) {
            String brief = brief(seed);
            // A budget drawn blindly may be too small; any other brief must be served.
            var outcome = ProposalFixture.season().propose(brief, Adjustments.NONE, seed);
            if (outcome instanceof Outcome.Made made) {
                proposals.add(made.proposal());
            } else if (!brief.contains("\"budget\"")) {
                throw new AssertionError("no proposal for seed " + seed + ": " + brief + ": " + outcome);
            }
        }
        return List.copyOf(proposals);
    }

    public static String brief(int seed) {
        var random = new SplittableRandom(seed);
        double share = random.nextDouble();
        // Half of the trees are below 7 ft, as most rooms want.
        double feet = Math.round(10 * (3 + 17 * share * share)) / 10.0;
        String tree = String.format(Locale.ROOT, "\"height\":\"%.1f ft\",\"fullness\":\"%s\",\"seenFrom\":\"%s\",\"lit\":%b,\"real\":%b", feet,
                pick(random, "sparse", "medium", "full"), pick(random, "corner", "wall", "bay", "round"), random.nextInt(5) == 0,
                random.nextBoolean());
        if (random.nextInt(4) == 0) {
            tree += String.format(Locale.ROOT, ",\"widestDiameter\":\"%.0f in\"", 12 * feet * (0.25 + 0.7 * random.nextDouble()));
        }
        String brief = "{\"tree\":{" + tree + "},\"household\":{\"toddlers\":" + (random.nextInt(6) == 0) + ",\"pets\":" + (random.nextInt(6) == 0)
                + "},\"look\":\"" + pick(random, ids(true)) + "\",\"palette\":\"" + pick(random, ids(false)) + "\",\"abundance\":\""
                + pick(random, "restrained", "generous", "lavish") + "\"";
        if (random.nextInt(3) == 0) {
            brief += ",\"owned\":[" + owned(random) + "]";
        }
        if (random.nextInt(4) == 0) {
            brief += String.format(Locale.ROOT, ",\"budget\":\"%.2f\"", feet * (50 + 80 * random.nextDouble()));
        }
        return brief + "}";
    }

    private static String owned(SplittableRandom random) {
        var products = ProposalFixture.season().catalogue().products();
        return IntStream.range(0, 1 + random.nextInt(12)).mapToObj(i -> products.get(random.nextInt(products.size())).sku()).distinct()
                .map(sku -> "{\"sku\":\"" + sku + "\",\"quantity\":" + (1 + random.nextInt(20)) + "}").collect(Collectors.joining(","));
    }

    private static String[] ids(boolean looks) {
        var choices = ProposalFixture.rulebook().choices();
        return looks ? choices.looks().stream().map(l -> l.id()).toArray(String[]::new)
                : choices.palettes().stream().map(p -> p.id()).toArray(String[]::new);
    }

    private static String pick(SplittableRandom random, String... words) {
        return words[random.nextInt(words.length)];
    }
}
