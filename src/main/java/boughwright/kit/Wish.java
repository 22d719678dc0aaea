package boughwright.kit;

/**
 * Something the customer asked for that can be let go of.
 *
 * @param id {@code budget}, {@code abundance}, {@code quantity:…} or {@code product:…}
 * @param text the wish in a few words, as in "a budget of $180.00"
 */
public record Wish(String id, String text) {

    public static final String BUDGET = "budget";
    public static final String ABUNDANCE = "abundance";
    public static final String QUANTITY = "quantity:";
    public static final String PRODUCT = "product:";
}
