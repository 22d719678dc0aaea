package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.needs.Demand;
import boughwright.needs.Dimension;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which products may fill a slot: those in its role, of its size, on the shelf in sufficient number, that no demand of the house
 * on a single product rules out, and that every wish about products allows.
 */
final class Shortlist {

    /** A ball's diameter may be off by so much and still be that ball; makers' inches and millimetres round differently. */
    private static final double DIAMETER_SLACK = 0.002;
    /** A feature's drop may be off its nominal size by this share. */
    private static final double DROP_SLACK = 0.28;

    private final KitRequest request;
    private final Map<String, Integer> owned;
    private final Map<Role, Map<Product, Boolean>> allowed = new EnumMap<>(Role.class);

    Shortlist(KitRequest request) {
        this.request = request;
        this.owned = request.brief().owned().stream().collect(Collectors.toMap(o -> o.sku(), o -> o.quantity(), Integer::sum));
    }

    /** In the order of SKUs; empty when nothing on the shelf will do. */
    List<Candidate> candidates(Slot slot) {
        return candidates(slot, Set.of());
    }

    /** @param soft ids of wishes that may be broken; what breaks them is listed too, and says so */
    List<Candidate> candidates(Slot slot, Set<String> soft) {
        List<Candidate> candidates = new ArrayList<>();
        for (Product product : request.catalogue().inRole(slot.role())) {
            if (fits(slot, product)) {
                Set<String> breaks = breaks(slot, product);
                Candidate candidate = soft.containsAll(breaks) ? candidate(slot, product, breaks) : null;
                if (candidate != null && candidate.packs() <= product.stock()) {
                    candidates.add(candidate);
                }
            }
        }
        return candidates;
    }

    /** Of the right kind and size, and nothing that the house rules out, whether or not there is enough of it. */
    boolean fits(Slot slot, Product product) {
        String own = request.own().get(slot.id());
        return (own == null || own.equals(product.sku())) && product.roles().contains(slot.role()) && rightSize(slot.first(), product)
                && allowed.computeIfAbsent(slot.role(), r -> new IdentityHashMap<>())
                        .computeIfAbsent(product, p -> allowed(slot.role(), p, request.needs()));
    }

    Candidate candidate(Slot slot, Product product, Set<String> breaks) {
        return Candidate.of(slot, product, owned.getOrDefault(product.sku(), 0), breaks);
    }

    /** Ids of the wishes about products that this one would break in the slot. */
    private Set<String> breaks(Slot slot, Product product) {
        String pinned = request.hand().products().get(slot.id());
        if (request.own().containsKey(slot.id()) || pinned == null && request.hand().tastes().isEmpty()) {
            return Set.of();
        }
        Set<String> breaks = new TreeSet<>();
        if (pinned != null && !pinned.equals(product.sku())) {
            breaks.add(Wish.PRODUCT + slot.id());
        }
        for (Taste taste : request.hand().tastes()) {
            if (taste.speaksOf(slot.role()) && !product.meets(taste)) {
                breaks.add(taste.id());
            }
        }
        return breaks;
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
