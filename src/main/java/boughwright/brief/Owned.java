package boughwright.brief;

import java.util.Optional;

/**
 * Pieces that the customer has already.
 *
 * @param sku of the product; for pieces that were only described a name of their own, {@code own-1} for the first entry
 * @param quantity in pieces (rolls of ribbon, strings of lights), at least 1; 0 while it is still to be worked out for a tree's worth
 * @param described empty when the shop sells the very product
 */
public record Owned(String sku, int quantity, Optional<OwnPieces> described) {

    public Owned(String sku, int quantity) {
        this(sku, quantity, Optional.empty());
    }
}
