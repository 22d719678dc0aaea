package boughwright.layout;

import boughwright.catalogue.Product;
import java.util.ArrayList;
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

    /**
     * Cuts pieces from the rolls of one ribbon as a {@link CuttingStock} says: the roll with the longest rest after the others, then those
     * that stay whole.
     *
     * @param rolls at least as many as the pieces take
     * @param trim lost of each roll that is begun, metres
     */
    static List<RollCuts> of(Product ribbon, int rolls, double trim, List<Cut> pieces) {
        double whole = ribbon.length().metres();
        List<List<Integer>> cutting = CuttingStock.solve(pieces.stream().mapToDouble(Cut::length).toArray(), whole - trim).rolls();
        List<RollCuts> list = new ArrayList<>();
        for (int roll = 1; roll <= rolls; roll++) {
            List<Cut> cuts = roll > cutting.size() ? List.of() : cutting.get(roll - 1).stream().map(pieces::get).toList();
            double lost = cuts.isEmpty() ? 0 : trim;
            double left = whole - lost - cuts.stream().mapToDouble(Cut::length).sum();
            list.add(new RollCuts(ribbon.sku(), roll, whole, cuts, lost, Math.max(0, left)));
        }
        return list;
    }

    /** @param purpose the run or the accent that it is for, as {@code run-4} or {@code accent-2} */
    public record Cut(double length, String purpose) {
    }
}
