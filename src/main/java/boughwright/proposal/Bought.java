package boughwright.proposal;

import boughwright.brief.Owned;
import boughwright.kit.KitLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a customer has once a kit is bought: the basis of next year's brief. */
public final class Bought {

    private Bought() {
    }

    /** The pieces of all packs bought, and what was their own before, used or not. */
    public static List<Owned> by(Proposal proposal) {
        Map<String, Owned> all = new LinkedHashMap<>();
        proposal.brief().owned().forEach(o -> all.put(o.sku(), o));
        for (KitLine line : proposal.kit().lines()) {
            int pieces = line.packs() * line.packSize();
            if (pieces > 0) {
                all.merge(line.sku(), new Owned(line.sku(), pieces), (had, more) -> new Owned(had.sku(), had.quantity() + more.quantity(), had.described()));
            }
        }
        return List.copyOf(all.values());
    }
}
