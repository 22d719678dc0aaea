package boughwright.intake;

import boughwright.catalogue.Product;
import boughwright.measure.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * A product that stands on two shelves under the same SKU and differs.
 *
 * @param cells those that differ, in the order of {@code CatalogueRows.COLUMNS}; never empty
 */
public record ShelfChange(Product before, Product after, List<Cell> cells) {

    /** A price move above this many percent, up or down, is worth a look. */
    public static final BigDecimal WORTH_A_LOOK = new BigDecimal(20);

    /**
     * @param column canonical
     * @param before its cell, empty for none
     * @param after its cell, empty for none
     */
    public record Cell(String column, String before, String after) {
    }

    /**
     * @param percent of the price before, rounded to a tenth; negative when it falls
     */
    public record PriceMove(String sku, String name, Money before, Money after, BigDecimal percent) {
    }

    public String sku() {
        return after.sku();
    }

    /** The move of the price when it is more than {@link #WORTH_A_LOOK} percent, in the same currency. */
    public Optional<PriceMove> priceMove() {
        Money was = before.price();
        Money is = after.price();
        if (!was.currency().equals(is.currency()) || was.amount().signum() <= 0) {
            return Optional.empty();
        }
        BigDecimal hundredfold = is.minus(was).amount().movePointRight(2);
        return hundredfold.abs().compareTo(was.amount().multiply(WORTH_A_LOOK)) > 0
                ? Optional.of(new PriceMove(sku(), after.name(), was, is, hundredfold.divide(was.amount(), 1, RoundingMode.HALF_UP)))
                : Optional.empty();
    }
}
