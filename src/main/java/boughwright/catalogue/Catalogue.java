package boughwright.catalogue;

import boughwright.brief.OwnPieces;
import boughwright.brief.Owned;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The shop's products, in the order of their SKUs whatever the order of the file. */
public final class Catalogue {

    private final Map<String, Product> bySku;

    /** @throws IllegalArgumentException when two products share a SKU */
    public Catalogue(List<Product> products) {
        this.bySku = products.stream().sorted(Comparator.comparing(Product::sku)).collect(Collectors.toMap(
                Product::sku, p -> p, (a, b) -> {
                    throw new IllegalArgumentException("two products share the SKU " + a.sku());
                }, LinkedHashMap::new));
    }

    public List<Product> products() {
        return List.copyOf(bySku.values());
    }

    public Optional<Product> product(String sku) {
        return Optional.ofNullable(bySku.get(sku));
    }

    public List<Product> inRole(Role role) {
        return bySku.values().stream().filter(p -> p.roles().contains(role)).toList();
    }

    /** With what the customer describes as their own; quantities of a tree's worth must be known by now. */
    public Catalogue with(List<Owned> owned, Currency currency) {
        List<Product> all = new ArrayList<>(bySku.values());
        owned.stream().filter(o -> o.described().isPresent()).map(o -> OwnGoods.of(o, currency)).forEach(all::add);
        return all.size() == bySku.size() ? this : new Catalogue(all);
    }

    /** How many pieces a customer has of what they describe; bulbs are counted by the string. */
    public static int pieces(OwnPieces own) {
        return OwnGoods.quantity(own);
    }
}
