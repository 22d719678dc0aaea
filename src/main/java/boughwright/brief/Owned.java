package boughwright.brief;

/**
 * Pieces that the customer has already.
 *
 * @param quantity in pieces (rolls of ribbon, strings of lights), at least 1
 */
public record Owned(String sku, int quantity) {
}
