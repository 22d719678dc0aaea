package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** U. Junker, "QUICKXPLAIN: Preferred Explanations and Relaxations for Over-Constrained Problems", AAAI 2004, pages 167 to 172. */
class QuickXplainTest {

    private static final int CASES = 10_000;

    /** His page 167: a station wagon with options whose costs must stay below 3000. */
    private static final Map<String, Integer> OPTIONS = new LinkedHashMap<>();

    static {
        OPTIONS.put("roof racks", 500);
        OPTIONS.put("CD player", 500);
        OPTIONS.put("one additional seat", 800);
        OPTIONS.put("metal colour", 500);
        OPTIONS.put("special luxury version", 2600);
    }

    private static boolean affordable(List<String> options) {
        return options.stream().mapToInt(OPTIONS::get).sum() < 3000;
    }

    @Test
    void the_papers_example_in_the_order_of_its_list() {
        List<String> order = List.copyOf(OPTIONS.keySet());
        // The most important that clashes with the luxury version is kept in the explanation.
        assertThat(new QuickXplain<>(QuickXplainTest::affordable).conflict(order)).contains(List.of("roof racks", "special luxury version"));
    }

    @Test
    void the_papers_example_with_the_seat_preferred_and_the_colour_least() {
        List<String> order = List.of("one additional seat", "roof racks", "CD player", "special luxury version", "metal colour");
        // His Table 3.
        assertThat(new QuickXplain<>(QuickXplainTest::affordable).conflict(order)).contains(List.of("one additional seat", "special luxury version"));
    }

    @Test
    void the_papers_example_with_the_colour_preferred() {
        List<String> order = List.of("metal colour", "special luxury version", "roof racks", "CD player", "one additional seat");
        // The pair of his Table 2.
        assertThat(new QuickXplain<>(QuickXplainTest::affordable).conflict(order)).contains(List.of("metal colour", "special luxury version"));
    }

    @Test
    void the_papers_benchmark_finds_its_three_heavy_constraints_within_the_bound() {
        // His Example 2: the sum of k·x stays below 3n; k is n for the ninth, tenth and twelfth, else 1.
        for (int n : new int[] {16, 64, 256, 1024}) {
            int size = n;
            Predicate<List<Integer>> light = c -> c.stream().mapToInt(i -> i == 9 || i == 10 || i == 12 ? size : 1).sum() < 3 * size;
            QuickXplain<Integer> search = new QuickXplain<>(light);
            List<Integer> all = IntStream.rangeClosed(1, n).boxed().toList();
            assertThat(search.explain(all)).containsExactly(9, 10, 12);
            assertThat(search.checks()).as("checks for n = %s", n).isLessThanOrEqualTo((int) bound(3, n));
        }
    }

    /** His Table 4, worst case of the split in halves. */
    private static double bound(int k, int n) {
        return 2.0 * k * Math.log((double) n / k) / Math.log(2) + 2 * k;
    }

    @Test
    void what_can_all_hold_has_no_conflict_and_a_broken_background_an_empty_one() {
        assertThat(new QuickXplain<String>(c -> true).conflict(List.of("a", "b"))).isEmpty();
        assertThat(new QuickXplain<String>(c -> false).conflict(List.of("a", "b", "c"))).contains(List.of());
        assertThat(new QuickXplain<String>(c -> false).conflict(List.of())).contains(List.of());
    }

    /** With bit i for the constraint of rank i, the preferred conflict is the least number among the conflicts (his Definitions 6 and 7). */
    @Test
    void it_finds_the_preferred_conflict_of_all_that_brute_force_finds_in_no_more_checks_than_published() {
        int most = 0;
        for (int seed = 1; seed <= CASES; seed++) {
            var random = new SplittableRandom(seed);
            int n = 1 + random.nextInt(15);
            int[] minimal = IntStream.rangeClosed(0, random.nextInt(4)).map(i -> 1 + random.nextInt((1 << n) - 1)).toArray();
            int preferred = IntStream.range(1, 1 << n).filter(set -> clashes(set, minimal)).findFirst().orElseThrow();

            QuickXplain<Integer> search = new QuickXplain<>(c -> !clashes(bits(c), minimal));
            List<Integer> conflict = search.explain(IntStream.range(0, n).boxed().toList());

            assertThat(bits(conflict)).as("seed %s", seed).isEqualTo(preferred);
            for (Integer each : conflict) {
                assertThat(clashes(preferred & ~(1 << each), minimal)).as("seed %s without %s", seed, each).isFalse();
            }
            assertThat(search.checks()).as("seed %s: checks for %s of %s", seed, conflict.size(), n).isLessThanOrEqualTo((int) bound(conflict.size(), n));
            most = Math.max(most, search.checks());
        }
        assertThat(most).as("that something was tried").isGreaterThan(10);
    }

    private static boolean clashes(int set, int[] minimal) {
        return IntStream.of(minimal).anyMatch(m -> (set & m) == m);
    }

    private static int bits(List<Integer> constraints) {
        int bits = 0;
        for (int c : new ArrayList<>(constraints)) {
            bits |= 1 << c;
        }
        return bits;
    }
}
