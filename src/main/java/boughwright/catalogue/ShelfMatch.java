package boughwright.catalogue;

import boughwright.brief.Word;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.needs.Role;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How near something on hand comes to a colour.
 *
 * @param difference CIEDE2000 between the colour and the product's main colour
 */
public record ShelfMatch(Product product, double difference) {

    /** Beyond this two colours that are meant to match look like a mistake, and beyond the other like two colours (common practice, no published source). */
    private static final double SAME = 3;
    private static final double NEAR = 8;

    /** A difference in words. */
    public enum Nearness implements Word {
        SAME, NEAR, FAR
    }

    /** What a tree wears in a colour. */
    private enum Kind {
        RIBBON, FLORAL, ORNAMENT;

        static Kind of(Set<Role> roles) {
            return roles.stream().anyMatch(Role::ribbon) ? RIBBON : roles.stream().anyMatch(Role::stem) ? FLORAL : ORNAMENT;
        }
    }

    public Nearness nearness() {
        return difference <= SAME ? Nearness.SAME : difference <= NEAR ? Nearness.NEAR : Nearness.FAR;
    }

    /**
     * The nearest ribbon, the nearest flower or spray and the nearest ornament of those in stock, the nearest of all first; lights are left out. Of
     * equals the one with the lesser SKU. Fewer where the shop has none of a kind.
     */
    public static List<ShelfMatch> nearest(Catalogue catalogue, Srgb colour) {
        Lab wanted = Lab.of(colour);
        Map<Kind, ShelfMatch> best = new EnumMap<>(Kind.class);
        for (Product product : catalogue.products()) {
            if (product.stock() > 0 && !product.roles().contains(Role.LIGHT_STRING)) {
                best.merge(Kind.of(product.roles()), new ShelfMatch(product, wanted.difference(product.lab())),
                        (one, other) -> other.difference < one.difference ? other : one);
            }
        }
        return best.values().stream().sorted(Comparator.comparingDouble(ShelfMatch::difference)).toList();
    }
}
