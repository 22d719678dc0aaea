package boughwright.shelf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * A price that moves so far that somebody should look at it: a slip of a decimal point is dear at a counter.
 *
 * @param percent of the price before, to a whole number; negative when it falls
 */
public record PriceMove(String sku, String name, String before, String after, int percent) {

    /** Moves beyond this are told. */
    public static final int TOLD_FROM = 20;

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Those of more than {@link #TOLD_FROM} percent, in the order of the changes. */
    public static List<PriceMove> in(List<RowChange> changes) {
        return changes.stream().map(PriceMove::of).flatMap(Optional::stream).toList();
    }

    private static Optional<PriceMove> of(RowChange change) {
        if (change.comes() || change.goes()) {
            return Optional.empty();
        }
        String before = change.before().get(Shelf.PRICE);
        String after = change.after().get(Shelf.PRICE);
        BigDecimal was = new BigDecimal(before);
        BigDecimal percent = new BigDecimal(after).subtract(was).multiply(HUNDRED).divide(was, 6, RoundingMode.HALF_EVEN);
        return percent.abs().compareTo(BigDecimal.valueOf(TOLD_FROM)) <= 0 ? Optional.empty()
                : Optional.of(new PriceMove(change.sku(), change.after().get("name"), before, after, percent.setScale(0, RoundingMode.HALF_EVEN).intValue()));
    }
}
