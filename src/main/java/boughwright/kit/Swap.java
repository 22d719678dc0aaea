package boughwright.kit;

import boughwright.catalogue.Product;
import java.util.List;
import java.util.Optional;

/**
 * What it would mean to put another product into a slot.
 *
 * @param coins by which the whole kit gets dearer, in the currency's smallest coin; negative when cheaper
 * @param points by which the score changes
 * @param terms where the score would change, in the order of {@link Term}; the points are differences
 * @param alsoChanged ids of other slots whose product would have to change with it
 * @param possible false when the wishes and the house's rules leave no kit with it
 * @param missing packs that the shelf lacks; 0 when there are enough
 * @param nearest when packs are missing: what is nearest to it by colour, size and price, and there in sufficient number
 */
public record Swap(
        Product product, long coins, double points, List<TermScore> terms, List<String> alsoChanged, boolean possible, int missing,
        Optional<Product> nearest) {

    public Swap {
        terms = List.copyOf(terms);
        alsoChanged = List.copyOf(alsoChanged);
    }
}
