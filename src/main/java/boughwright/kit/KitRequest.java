package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.measure.Money;
import boughwright.needs.Needs;
import java.util.Map;
import java.util.Optional;

/**
 * All that a kit depends on.
 *
 * @param budget the most the kit may cost; empty for no limit. It is taken from here and not from the brief, so that a wish can
 *     be let go of without changing what the customer said
 * @param products sku by slot: what must fill a slot
 */
public record KitRequest(Brief brief, Needs needs, Catalogue catalogue, Optional<Money> budget, Map<String, String> products) {
}
