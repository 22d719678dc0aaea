package boughwright.layout;

import java.util.List;

/**
 * How one roll is cut. Lengths are measured between the points of the tails.
 *
 * <p>Body ribbons are cut on the slant, 45°, so that one cut serves both pieces that it parts and only the roll's own square end is lost
 * as far as the ribbon is wide. Accent tails are cut as a fishtail, out of the piece itself, which costs no length (common
 * practice, no published source).
 *
 * @param roll number of the roll among those of its SKU, from 1
 * @param rollLength metres
 * @param cuts in the order in which they are cut
 * @param lost trimmed off the roll's end before the first piece, metres; 0 when nothing is cut from it
 * @param leftover metres
 */
public record RollCuts(String sku, int roll, double rollLength, List<Cut> cuts, double lost, double leftover) {

    public RollCuts {
        cuts = List.copyOf(cuts);
    }

    /** @param purpose the run or the accent that it is for, as {@code run-4} or {@code accent-2} */
    public record Cut(double length, String purpose) {
    }
}
