package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Needs;
import java.util.Map;
import java.util.Optional;

/**
 * All that a kit depends on.
 *
 * @param budget the most the kit may cost; empty for no limit. It is taken from here and not from the brief, so that a wish can
 *     be let go of without changing what the customer said
 * @param hand the pinned products, tastes, caps, price levels and kept products that hold; quantities and dropped layers are in
 *     the needs already
 * @param own sku by slot: slots that are filled with what the customer has
 */
public record KitRequest(Brief brief, Needs needs, Catalogue catalogue, Optional<Money> budget, Adjustments hand, Map<String, String> own) {

    public KitRequest {
        own = Map.copyOf(own);
    }
}
