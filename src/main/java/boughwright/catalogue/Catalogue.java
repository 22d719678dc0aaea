package boughwright.catalogue;

import boughwright.brief.OwnPieces;
import boughwright.brief.Owned;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The shop's products, in the order of their SKUs whatever the order of the file.
 *
 * <p>A product that has left the range stays known, so that those who own it can build on it and old plans can be read.
 */
public final class Catalogue {

    private final Map<String, Product> bySku;
    private final Map<Role, List<Product>> byRole = new EnumMap<>(Role.class);
    private final Set<String> gone;

    /** @throws IllegalArgumentException when two products share a SKU */
    public Catalogue(List<Product> products) {
        this(products, Set.of());
    }

    /**
     * @param gone SKUs of those among the products that have left the range; nothing of them is in stock
     * @throws IllegalArgumentException when two products share a SKU, or a product that is gone is in stock
     */
    public Catalogue(List<Product> products, Set<String> gone) {
        this.gone = Set.copyOf(gone);
        products.stream().filter(p -> this.gone.contains(p.sku()) && p.stock() > 0).findFirst().ifPresent(p -> {
            throw new IllegalArgumentException(p.sku() + " is gone and in stock");
        });
        this.bySku = products.stream().sorted(Comparator.comparing(Product::sku)).collect(Collectors.toMap(
                Product::sku, p -> p, (a, b) -> {
                    throw new IllegalArgumentException("two products share the SKU " + a.sku());
                }, LinkedHashMap::new));
        for (Role role : Role.values()) {
            byRole.put(role, bySku.values().stream().filter(p -> p.roles().contains(role)).toList());
        }
    }

    public List<Product> products() {
        return List.copyOf(bySku.values());
    }

    /** Whether the shop still sells it, in stock or not. */
    public boolean sells(Product product) {
        return !gone.contains(product.sku());
    }

    public Optional<Product> product(String sku) {
        return Optional.ofNullable(bySku.get(sku));
    }

    public List<Product> inRole(Role role) {
        return byRole.get(role);
    }

    /** With what the customer describes as their own; quantities of a tree's worth must be known by now. */
    public Catalogue with(List<Owned> owned, Currency currency) {
        List<Product> all = new ArrayList<>(bySku.values());
        owned.stream().filter(o -> o.described().isPresent()).map(o -> OwnGoods.of(o, currency)).forEach(all::add);
        return all.size() == bySku.size() ? this : new Catalogue(all, gone);
    }

    /** How many pieces a customer has of what they describe; bulbs are counted by the string. */
    public static int pieces(OwnPieces own) {
        return OwnGoods.quantity(own);
    }
}
