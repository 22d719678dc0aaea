package boughwright.kit;

/**
 * Something the customer asked for that can be let go of.
 *
 * @param id {@code budget}, {@code abundance:…}, {@code quantity:…}, {@code product:…}, {@code cap:…} or {@code taste:…}
 * @param text the wish in a few words, as in "a budget of $180.00"
 */
public record Wish(String id, String text) {

    public static final String BUDGET = "budget";
    /** Followed by the abundance that is to be reached at least. */
    public static final String ABUNDANCE = "abundance:";
    /** Followed by the need's id; only a quantity above the rulebook's can stand in the way. */
    public static final String QUANTITY = "quantity:";
    /** Followed by the slot. */
    public static final String PRODUCT = "product:";
    /** Followed by the layer. */
    public static final String CAP = "cap:";
    /** What a taste's own id begins with. */
    public static final String TASTE = "taste:";
}
