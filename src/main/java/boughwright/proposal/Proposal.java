package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.layout.Layout;
import boughwright.needs.Adjustments;
import boughwright.needs.Needs;
import boughwright.plan.Plan;
import boughwright.rulebook.Edition;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Everything that follows from one brief: each step's own output, unchanged.
 *
 * @param needs with what the customer's own pieces fill as needs of their own
 * @param catalogue the one that the kit was chosen from, with the pieces that the customer described
 */
public record Proposal(
        Edition edition, Brief brief, Adjustments adjustments, Needs needs, Kit kit, Layout layout, Plan plan, long seed, Catalogue catalogue) {

    /** The product of a line. */
    public Product product(KitLine line) {
        return catalogue.product(line.sku()).orElseThrow(() -> new IllegalStateException("not in the catalogue: " + line.sku()));
    }

    /** SKU by slot. */
    public SortedMap<String, String> products() {
        SortedMap<String, String> products = new TreeMap<>();
        kit.lines().forEach(l -> products.put(l.slot(), l.sku()));
        return products;
    }
}
