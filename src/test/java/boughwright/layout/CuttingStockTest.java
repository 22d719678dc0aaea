package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Fewest rolls, then the longest rest, against published instances, constructed ones and plain enumeration. */
class CuttingStockTest {

    /** Falkenauer's triplet class, OR-Library binpack5, t60_00: 60 items in tenths, capacity 1000, best known 20; each roll takes three exactly. */
    private static final int[] T60_00 = {366, 268, 366, 430, 263, 307, 414, 287, 299, 495, 251, 254, 474, 252, 274, 370, 269, 361, 473, 252, 275, 472, 259, 269,
        444, 258, 298, 439, 273, 288, 445, 272, 283, 419, 261, 320, 363, 271, 366, 355, 273, 372, 466, 262, 272, 357, 292, 351, 395, 255, 350, 350, 303, 347,
        450, 252, 298, 410, 275, 315};
    /** OR-Library binpack1, u120_00 (Falkenauer 1996): capacity 150, best known 48; size and count by turns. */
    private static final int[] U120_00 = {98, 3, 96, 2, 94, 1, 93, 2, 92, 1, 91, 2, 90, 1, 87, 1, 86, 1, 85, 2, 84, 5, 83, 2, 82, 2, 81, 1, 80, 3, 79, 2, 78, 4,
        76, 1, 74, 2, 73, 4, 72, 1, 71, 1, 70, 3, 69, 3, 67, 1, 66, 1, 64, 1, 62, 2, 60, 2, 59, 1, 58, 3, 57, 4, 55, 3, 50, 1, 49, 3, 47, 1, 46, 2, 45, 2, 44, 2,
        43, 4, 42, 5, 41, 3, 39, 2, 38, 3, 37, 1, 36, 3, 35, 1, 33, 3, 32, 2, 30, 3, 29, 1, 28, 1, 27, 2, 26, 1, 25, 2, 24, 1, 23, 2, 20, 1};
    /**
     * Scholl, Klein and Jürgens, "BISON", Computers &amp; Operations Research 24 (1997), N1C1W1: capacity 100, 50 items. A is
     * published with 25; that C takes 20 follows from its sum, which is just within 20 rolls, and a way to cut it.
     */
    private static final int[] N1C1W1_A = {99, 99, 96, 96, 92, 92, 91, 88, 87, 86, 85, 76, 74, 72, 69, 67, 67, 62, 61, 56, 52, 51, 49, 46, 44, 42, 40, 40, 33, 33,
        30, 30, 29, 28, 28, 27, 25, 24, 23, 22, 21, 20, 17, 14, 13, 11, 10, 7, 7, 3};
    private static final int[] N1C1W1_C = {92, 89, 87, 84, 82, 82, 81, 75, 73, 71, 67, 67, 63, 59, 57, 56, 52, 49, 48, 47, 46, 41, 39, 38, 36, 35, 34, 34, 30, 29,
        26, 21, 20, 19, 18, 15, 15, 13, 11, 10, 10, 10, 9, 8, 8, 7, 6, 6, 6, 3};

    /** A tenth of a millimetre for each unit, so that sums are exact. */
    private static double[] metres(int[] units) {
        return Arrays.stream(units).mapToDouble(u -> u / 10_000.0).toArray();
    }

    private static int[] shuffled(int[] units, long seed) {
        List<Integer> list = new ArrayList<>(Arrays.stream(units).boxed().toList());
        Collections.shuffle(list, new Random(seed));
        return list.stream().mapToInt(i -> i).toArray();
    }

    private static CuttingStock.Cutting solve(int[] units, int roll) {
        CuttingStock.Cutting cutting = CuttingStock.solve(metres(units), roll / 10_000.0);
        List<Integer> cut = cutting.rolls().stream().flatMap(List::stream).sorted().toList();
        assertThat(cut).as("every piece is cut once").isEqualTo(IntStream.range(0, units.length).boxed().toList());
        assertThat(cutting.rolls()).allSatisfy(r -> assertThat(r.stream().mapToInt(i -> units[i]).sum()).isLessThanOrEqualTo(roll));
        return cutting;
    }

    @Test
    void published_instances_are_cut_from_their_best_known_number_of_rolls() {
        for (long seed = 1; seed <= 3; seed++) {
            CuttingStock.Cutting triplets = solve(shuffled(T60_00, seed), 1000);
            assertThat(triplets.rolls()).hasSize(20);
            assertThat(triplets.fewestProved()).isTrue();
            assertThat(solve(shuffled(N1C1W1_A, seed), 100).rolls()).hasSize(25);
            assertThat(solve(shuffled(N1C1W1_C, seed), 100).rolls()).hasSize(20);
        }
    }

    @Test
    void what_is_not_proved_within_the_search_is_said_to_be_unproved_and_is_no_worse_than_the_rule_of_thumb() {
        int[] uniform = IntStream.range(0, U120_00.length / 2).boxed()
                .flatMap(i -> Collections.nCopies(U120_00[2 * i + 1], U120_00[2 * i]).stream()).mapToInt(i -> i).toArray();
        assertThat(uniform).hasSize(120);
        CuttingStock.Cutting cutting = solve(uniform, 150);
        assertThat(cutting.rolls().size()).isBetween(48, 49);
        assertThat(cutting.fewestProved()).isEqualTo(cutting.rolls().size() == 48);
    }

    @Test
    void the_rule_of_thumb_needs_more_rolls_for_two_of_them_which_is_why_it_is_not_used() {
        assertThat(CuttingStock.firstFitDecreasing(metres(T60_00), 0.1)).isEqualTo(23);
        assertThat(CuttingStock.firstFitDecreasing(metres(N1C1W1_C), 0.01)).isEqualTo(21);
    }

    @Test
    void five_hundred_constructed_instances_reach_their_known_optimum_and_never_exceed_the_rule_of_thumb() {
        SplittableRandom random = new SplittableRandom(7);
        for (int instance = 0; instance < 500; instance++) {
            int rolls = 4 + random.nextInt(13);
            int[] units = new int[3 * rolls];
            for (int i = 0; i < rolls; i++) {
                // Triplets that fill the roll: between a quarter and a half each, so that no roll takes four nor wastes nothing by two.
                int first = 2_600 + random.nextInt(1_400);
                int second = 2_600 + random.nextInt(1_400);
                units[3 * i] = first;
                units[3 * i + 1] = second;
                units[3 * i + 2] = 10_000 - first - second;
            }
            int[] mixed = shuffled(units, instance);
            CuttingStock.Cutting cutting = solve(mixed, 10_000);
            assertThat(cutting.rolls()).as("instance %s", instance).hasSize(rolls);
            assertThat(cutting.fewestProved()).isTrue();
            assertThat(rolls).isLessThanOrEqualTo(CuttingStock.firstFitDecreasing(metres(mixed), 1));
        }
    }

    @Test
    void small_instances_have_the_fewest_rolls_and_then_the_longest_rest_that_enumeration_finds() {
        SplittableRandom random = new SplittableRandom(3);
        for (int instance = 0; instance < 300; instance++) {
            int count = 1 + random.nextInt(7);
            int[] units = IntStream.range(0, count).map(i -> 10 + random.nextInt(80)).toArray();
            int[] best = {Integer.MAX_VALUE, 0};
            enumerate(units, 0, new ArrayList<>(), best);
            CuttingStock.Cutting cutting = solve(units, 100);
            assertThat(cutting.rolls().size()).as("%s", Arrays.toString(units)).isEqualTo(best[0]);
            int longest = cutting.rolls().stream().mapToInt(r -> 100 - r.stream().mapToInt(i -> units[i]).sum()).max().orElseThrow();
            assertThat(longest).as("%s", Arrays.toString(units)).isEqualTo(best[1]);
            assertThat(cutting.restProved()).isTrue();
            List<Integer> last = cutting.rolls().get(cutting.rolls().size() - 1);
            assertThat(100 - last.stream().mapToInt(i -> units[i]).sum()).as("the roll with the longest rest comes last").isEqualTo(longest);
        }
    }

    /** Every way to share pieces out among rolls. @param best fewest rolls, and the longest rest among ways with as few */
    private static void enumerate(int[] units, int piece, List<Integer> loads, int[] best) {
        if (piece == units.length) {
            int rest = 100 - loads.stream().mapToInt(l -> l).min().orElseThrow();
            if (loads.size() < best[0] || loads.size() == best[0] && rest > best[1]) {
                best[0] = loads.size();
                best[1] = rest;
            }
            return;
        }
        for (int roll = 0; roll < loads.size(); roll++) {
            if (loads.get(roll) + units[piece] <= 100) {
                loads.set(roll, loads.get(roll) + units[piece]);
                enumerate(units, piece + 1, loads, best);
                loads.set(roll, loads.get(roll) - units[piece]);
            }
        }
        loads.add(units[piece]);
        enumerate(units, piece + 1, loads, best);
        loads.remove(loads.size() - 1);
    }

    @Test
    void a_piece_longer_than_the_roll_is_refused() {
        assertThatThrownBy(() -> CuttingStock.solve(new double[] {1, 9.5}, 9.144)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("9.144");
    }
}
