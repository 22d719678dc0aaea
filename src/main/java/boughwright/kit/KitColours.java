package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.needs.Adjustments;
import boughwright.needs.Demand;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What of a kit is seen and in which colours, as the design score counts it ({@link Term#PALETTE_SHARES}).
 *
 * @param shown by slot in the order of the kit's lines; light strings show no colour and are left out
 * @param wanted shares that main, second with ground, and spark should take
 */
public record KitColours(List<Shown> shown, Demand.Shares wanted) {

    /**
     * The product of one slot.
     *
     * @param area m² by the usual size of its role, whichever product it is
     * @param share of everything that is seen, 0..1
     * @param part the palette colour it counts for: 0 main, 1 second, 2 spark, 3 ground
     * @param difference CIEDE2000 to that colour
     */
    public record Shown(String slot, Role role, Product product, double area, double share, int part, double difference) {
    }

    public KitColours {
        shown = List.copyOf(shown);
    }

    /** @param catalogue holds every product of the kit */
    public static KitColours of(Brief brief, Needs needs, Catalogue catalogue, Kit kit) {
        List<Slot> slots = Slot.of(needs.bought());
        DesignScore score = new DesignScore(new KitRequest(brief, needs, catalogue, Optional.empty(), Adjustments.NONE, Map.of()), slots);
        Map<String, Product> products = new LinkedHashMap<>();
        kit.lines().forEach(l -> products.put(l.slot(), catalogue.product(l.sku()).orElseThrow(() -> new IllegalArgumentException("not in the catalogue: " + l.sku()))));
        List<Shown> shown = new ArrayList<>();
        for (Slot slot : slots) {
            Product product = products.get(slot.id());
            if (product != null && slot.role() != Role.LIGHT_STRING) {
                int part = score.part(slot.role(), product);
                shown.add(new Shown(slot.id(), slot.role(), product, score.area(slot), score.areaShare(slot), part, score.difference(product, part)));
            }
        }
        double[] wanted = score.targets();
        return new KitColours(shown, new Demand.Shares(wanted[0], wanted[1], wanted[2]));
    }

    /** Shares as they fall: main, second, spark, ground; they add up to 1 when anything is seen. */
    public double[] fallen() {
        double[] fallen = new double[4];
        shown.forEach(s -> fallen[s.part()] += s.share());
        return fallen;
    }
}
