package boughwright.kit;

/**
 * Why a product is not, or no longer, in its slot.
 *
 * @param words the wish's id or the house rule's sentence; else empty or of no interest to customers
 */
public record Cause(Kind kind, String words) {

    /** The most telling first. */
    public enum Kind {
        /** A wish of the customer's speaks against it. */
        WISH,
        /** There is too little of it. */
        STOCK,
        /** A rule of the house speaks against it. */
        HOUSE,
        /** The whole would cost more than the budget. */
        BUDGET,
        /** Its layer would cost more than was allowed. */
        CAP,
        /** It is of another size. */
        SIZE,
        /** It stands in another slot. */
        TAKEN,
        /** It is no longer sold for this use. */
        GONE,
        /** It could stay; with another the whole is better. */
        BETTER
    }
}
