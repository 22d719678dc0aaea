package boughwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The one-dimensional cutting-stock problem: which pieces are cut from which roll, so that fewest rolls are begun, and of those ways the
 * one that leaves the longest single rest.
 *
 * <p>Lengths are whole tenths of a millimetre inside, so that sums are exact. The number of rolls is searched upward from the
 * bound ⌈total ÷ roll⌉ and the count of pieces longer than half a roll (Martello and Toth's L1), downward from first fit
 * decreasing. A roll is always filled with the longest piece left and a set of others such that what is wasted so far does not
 * exceed what the number of rolls allows; sets that waste less come first, and states met before are not searched again. The
 * search is exact; beyond {@link #MOST_STATES} states it gives the best way found and says that it is not proved.
 */
final class CuttingStock {

    /** @param rolls the indices of the pieces cut from each, none empty; the roll with the longest rest is the last */
    record Cutting(List<List<Integer>> rolls, boolean fewestProved, boolean restProved) {
    }

    private static final int MOST_STATES = 400_000;
    private static final int MOST_FILLINGS = 20_000;
    private static final double UNIT = 1e-4;

    private final int roll;
    private final int[] length;
    private final int[] size;
    private final int[] amount;
    private int states;

    private CuttingStock(double[] lengths, double rollLength) {
        this.roll = (int) Math.floor(rollLength / UNIT + 1e-6);
        this.length = Arrays.stream(lengths).mapToInt(l -> (int) Math.ceil(l / UNIT - 1e-6)).toArray();
        this.size = Arrays.stream(length).distinct().sorted().toArray();
        reverse(size);
        this.amount = new int[size.length];
        for (int l : length) {
            amount[kind(l)]++;
        }
    }

    /**
     * @param lengths of the pieces, metres, each above 0 and at most {@code rollLength}
     * @throws IllegalArgumentException for a piece that no roll gives
     */
    static Cutting solve(double[] lengths, double rollLength) {
        CuttingStock stock = new CuttingStock(lengths, rollLength);
        for (int l : stock.length) {
            if (l <= 0 || l > stock.roll) {
                throw new IllegalArgumentException("a roll of " + rollLength + " m gives no piece of " + l * UNIT + " m");
            }
        }
        return lengths.length == 0 ? new Cutting(List.of(), true, true) : stock.cut();
    }

    /** First fit decreasing, the usual rule of thumb: how many rolls it begins. */
    static int firstFitDecreasing(double[] lengths, double rollLength) {
        return new CuttingStock(lengths, rollLength).firstFit().size();
    }

    private static void reverse(int[] values) {
        for (int i = 0, j = values.length - 1; i < j; i++, j--) {
            int value = values[i];
            values[i] = values[j];
            values[j] = value;
        }
    }

    private int kind(int l) {
        int i = 0;
        while (size[i] != l) {
            i++;
        }
        return i;
    }

    private Cutting cut() {
        List<int[]> best = firstFit();
        boolean fewest = true;
        for (int rolls = leastRolls(); rolls < best.size(); rolls++) {
            states = 0;
            List<int[]> found = pack(amount.clone(), rolls);
            if (found != null) {
                best = found;
                break;
            }
            fewest &= states < MOST_STATES;
        }
        Rest rest = longestRest(best);
        return new Cutting(assign(rest.rolls), fewest, rest.proved);
    }

    private int leastRolls() {
        long total = 0;
        int large = 0;
        for (int i = 0; i < size.length; i++) {
            total += (long) size[i] * amount[i];
            large += 2L * size[i] > roll ? amount[i] : 0;
        }
        return (int) Math.max(large, (total + roll - 1) / roll);
    }

    /** Each roll as a count by size. */
    private List<int[]> firstFit() {
        List<int[]> rolls = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int kind = 0; kind < size.length; kind++) {
            for (int n = amount[kind]; n > 0; n--) {
                int at = 0;
                while (at < left.size() && left.get(at) < size[kind]) {
                    at++;
                }
                if (at == left.size()) {
                    rolls.add(new int[size.length]);
                    left.add(roll);
                }
                rolls.get(at)[kind]++;
                left.set(at, left.get(at) - size[kind]);
            }
        }
        return rolls;
    }

    /** A way to cut what is there from so many rolls; null when there is none or the search grew too large. */
    private List<int[]> pack(int[] there, int rolls) {
        long total = 0;
        for (int i = 0; i < size.length; i++) {
            total += (long) size[i] * there[i];
        }
        long spare = (long) rolls * roll - total;
        List<int[]> cut = new ArrayList<>();
        return spare >= 0 && search(there, rolls, spare, cut, new HashSet<>()) ? cut : null;
    }

    private boolean search(int[] there, int rolls, long spare, List<int[]> cut, Set<String> failed) {
        int first = 0;
        while (first < there.length && there[first] == 0) {
            first++;
        }
        if (first == there.length) {
            return true;
        }
        if (rolls == 0 || ++states >= MOST_STATES) {
            return false;
        }
        String state = Arrays.toString(there);
        if (failed.contains(state)) {
            return false;
        }
        int[] one = new int[size.length];
        one[first] = 1;
        there[first]--;
        List<int[]> fillings = new ArrayList<>();
        fill(there, first, roll - size[first], spare, one, fillings);
        fillings.sort((a, b) -> Integer.compare(rest(a), rest(b)));
        for (int[] filling : fillings) {
            take(there, filling, first, -1);
            cut.add(filling);
            if (search(there, rolls - 1, spare - rest(filling), cut, failed)) {
                take(there, filling, first, 1);
                there[first]++;
                return true;
            }
            cut.remove(cut.size() - 1);
            take(there, filling, first, 1);
        }
        there[first]++;
        failed.add(state);
        return false;
    }

    private static void take(int[] there, int[] filling, int first, int sign) {
        for (int i = 0; i < there.length; i++) {
            there[i] += sign * (filling[i] - (i == first ? 1 : 0));
        }
    }

    private int rest(int[] filling) {
        int rest = roll;
        for (int i = 0; i < filling.length; i++) {
            rest -= filling[i] * size[i];
        }
        return rest;
    }

    /** Every set that fills the rest of a roll to within the spare and to which no piece that is there could be added. */
    private void fill(int[] there, int from, int left, long spare, int[] one, List<int[]> fillings) {
        int next = from;
        while (next < size.length && (there[next] == 0 || size[next] > left)) {
            next++;
        }
        if (next == size.length) {
            if (left <= spare && maximal(there, left)) {
                fillings.add(one.clone());
            }
            return;
        }
        int most = Math.min(there[next], left / size[next]);
        for (int n = most; n >= 0; n--) {
            one[next] += n;
            there[next] -= n;
            fill(there, next + 1, left - n * size[next], spare, one, fillings);
            there[next] += n;
            one[next] -= n;
            if (fillings.size() > MOST_FILLINGS) {
                states = MOST_STATES;
                return;
            }
        }
    }

    private boolean maximal(int[] there, int left) {
        for (int i = 0; i < size.length; i++) {
            if (there[i] > 0 && size[i] <= left) {
                return false;
            }
        }
        return true;
    }

    private record Rest(List<int[]> rolls, boolean proved) {
    }

    /** Of the ways with as many rolls, the one whose last roll has least cut from it. */
    private Rest longestRest(List<int[]> found) {
        int rolls = found.size();
        List<int[]> best = lastWithLongestRest(found);
        long total = 0;
        for (int i = 0; i < size.length; i++) {
            total += (long) size[i] * amount[i];
        }
        long least = Math.max(size[size.length - 1], total - (rolls - 1L) * roll);
        boolean proved = true;
        // Sets for the last roll by their length, from the least that could be left over for it.
        List<int[]> sets = new ArrayList<>();
        boolean all = sets(0, new int[size.length], 0, least, roll - rest(best.get(rolls - 1)) - 1, sets);
        sets.sort((a, b) -> Integer.compare(rest(b), rest(a)));
        for (int[] set : sets) {
            int[] there = amount.clone();
            for (int i = 0; i < there.length; i++) {
                there[i] -= set[i];
            }
            states = 0;
            List<int[]> others = pack(there, rolls - 1);
            if (others != null) {
                others.add(set);
                return new Rest(others, proved && all);
            }
            proved &= states < MOST_STATES;
            if (!proved) {
                break;
            }
        }
        return new Rest(best, proved && all);
    }

    private List<int[]> lastWithLongestRest(List<int[]> rolls) {
        int longest = 0;
        for (int i = 1; i < rolls.size(); i++) {
            longest = rest(rolls.get(i)) >= rest(rolls.get(longest)) ? i : longest;
        }
        List<int[]> sorted = new ArrayList<>(rolls);
        sorted.add(sorted.remove(longest));
        return sorted;
    }

    /** Sets of pieces whose length lies between two bounds; false when there are too many to list. */
    private boolean sets(int kind, int[] set, long sum, long least, long most, List<int[]> sets) {
        if (sets.size() > 5_000) {
            return false;
        }
        if (kind == size.length) {
            if (sum >= least && sum <= most) {
                sets.add(set.clone());
            }
            return true;
        }
        boolean all = true;
        for (int n = 0; n <= amount[kind] && sum + (long) n * size[kind] <= most; n++) {
            set[kind] = n;
            all &= sets(kind + 1, set, sum + (long) n * size[kind], least, most, sets);
        }
        set[kind] = 0;
        return all;
    }

    /** Pieces by index for counts by size; like pieces in the order in which they were given. */
    private List<List<Integer>> assign(List<int[]> rolls) {
        List<List<Integer>> bySize = new ArrayList<>();
        for (int i = 0; i < size.length; i++) {
            bySize.add(new ArrayList<>());
        }
        for (int i = 0; i < length.length; i++) {
            bySize.get(kind(length[i])).add(i);
        }
        int[] next = new int[size.length];
        List<List<Integer>> assigned = new ArrayList<>();
        for (int[] counts : rolls) {
            List<Integer> pieces = new ArrayList<>();
            for (int kind = 0; kind < counts.length; kind++) {
                for (int n = 0; n < counts[kind]; n++) {
                    pieces.add(bySize.get(kind).get(next[kind]++));
                }
            }
            pieces.sort(null);
            assigned.add(pieces);
        }
        return assigned;
    }
}
