package boughwright.counter;

import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import java.util.List;

/**
 * What is to be held of one product.
 *
 * @param packs at least 1
 */
public record Pack(String sku, String name, String shelf, int packs) {

    /** Everything that a proposal has to buy, in the order of the shelves. */
    public static List<Pack> of(Proposal proposal) {
        return PickList.rows(proposal).stream().map(r -> new Pack(r.sku(), r.name(), r.shelf(), r.packs())).toList();
    }
}
