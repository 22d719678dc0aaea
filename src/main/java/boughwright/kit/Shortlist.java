package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.needs.Demand;
import boughwright.needs.Dimension;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which products may fill a slot: those in its role, of its size, on the shelf in sufficient number, that no demand of the house
 * on a single product rules out.
 */
final class Shortlist {

    /** A ball's diameter may be off by so much and still be that ball; makers' inches and millimetres round differently. */
    private static final double DIAMETER_SLACK = 0.002;
    /** A feature's drop may be off its nominal size by this share. */
    private static final double DROP_SLACK = 0.28;

    private final KitRequest request;
    private final Map<String, Integer> owned;

    Shortlist(KitRequest request) {
        this.request = request;
        this.owned = request.brief().owned().stream().collect(Collectors.toMap(o -> o.sku(), o -> o.quantity(), Integer::sum));
    }

    /** In the order of SKUs; empty when nothing on the shelf will do. */
    List<Candidate> candidates(Slot slot) {
        String wished = request.products().get(slot.id());
        return request.catalogue().inRole(slot.role()).stream()
                .filter(p -> wished == null || p.sku().equals(wished))
                .filter(p -> rightSize(slot.first(), p))
                .filter(p -> allowed(slot.role(), p, request.needs()))
                .map(p -> Candidate.of(slot, p, owned.getOrDefault(p.sku(), 0)))
                .filter(c -> c.packs() <= c.product().stock())
                .toList();
    }

    static boolean rightSize(Need need, Product product) {
        if (need.diameter().isEmpty()) {
            return true;
        }
        double wanted = need.diameter().get().metres();
        return need.role() == Role.FEATURE_ORNAMENT
                ? Math.abs(product.length().metres() - wanted) <= DROP_SLACK * wanted
                : Math.abs(product.width().metres() - wanted) <= DIAMETER_SLACK;
    }

    static boolean allowed(Role role, Product product, Needs needs) {
        return needs.demands(Demand.Only.class).stream().filter(d -> d.role() == role)
                        .allMatch(d -> product.values(d.trait()).stream().anyMatch(d.values()::contains))
                && needs.demands(Demand.Never.class).stream().filter(d -> d.roles().isEmpty() || d.roles().contains(role))
                        .noneMatch(d -> product.values(d.trait()).stream().anyMatch(d.values()::contains))
                && needs.demands(Demand.Within.class).stream().filter(d -> d.role() == role)
                        .allMatch(d -> measure(d.dimension(), product) >= d.least() - 1e-9 && measure(d.dimension(), product) <= d.most() + 1e-9);
    }

    private static double measure(Dimension dimension, Product product) {
        return switch (dimension) {
            case WIDTH -> product.width().metres();
            case LENGTH -> product.length().metres();
            case LIGHTNESS -> product.lab().l();
        };
    }
}
