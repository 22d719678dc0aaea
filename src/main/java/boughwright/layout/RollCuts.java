package boughwright.layout;

import java.util.List;

/**
 * How one roll is cut.
 *
 * @param roll number of the roll among those of its SKU, from 1
 * @param rollLength metres
 * @param cuts in the order in which they are cut
 * @param leftover metres
 */
public record RollCuts(String sku, int roll, double rollLength, List<Cut> cuts, double leftover) {

    public RollCuts {
        cuts = List.copyOf(cuts);
    }

    /** @param purpose the run or the accent that it is for, as {@code run-4} or {@code accent-2} */
    public record Cut(double length, String purpose) {
    }
}
