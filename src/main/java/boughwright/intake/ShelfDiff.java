package boughwright.intake;

import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is different between two shelves; products are the same when their SKUs are. Every list is in the order of the SKUs.
 *
 * @param added on the later shelf only
 * @param changed on both, with what differs of each
 * @param gone on the earlier shelf only
 * @param unchanged how many are the same on both
 */
public record ShelfDiff(List<Product> added, List<ShelfChange> changed, List<Product> gone, int unchanged) {

    /** @throws IllegalStateException when a shelf has two products of one SKU */
    public static ShelfDiff between(Collection<Product> before, Collection<Product> after) {
        Map<String, Product> was = bySku(before);
        Map<String, Product> is = bySku(after);
        List<Product> added = new ArrayList<>();
        List<ShelfChange> changed = new ArrayList<>();
        int unchanged = 0;
        for (Product product : is.values()) {
            Product earlier = was.remove(product.sku());
            if (earlier == null) {
                added.add(product);
            } else {
                Optional<ShelfChange> change = change(earlier, product);
                change.ifPresent(changed::add);
                unchanged += change.isEmpty() ? 1 : 0;
            }
        }
        return new ShelfDiff(List.copyOf(added), List.copyOf(changed), List.copyOf(was.values()), unchanged);
    }

    /** Changes of price of more than {@link ShelfChange#WORTH_A_LOOK} percent, in the order of the SKUs. */
    public List<ShelfChange.PriceMove> priceMoves() {
        return changed.stream().map(ShelfChange::priceMove).flatMap(Optional::stream).toList();
    }

    public boolean same() {
        return added.isEmpty() && changed.isEmpty() && gone.isEmpty();
    }

    private static Map<String, Product> bySku(Collection<Product> products) {
        return products.stream().collect(Collectors.toMap(Product::sku, Function.identity(), (a, b) -> {
            throw new IllegalStateException("two products share the SKU " + a.sku());
        }, TreeMap::new));
    }

    private static Optional<ShelfChange> change(Product before, Product after) {
        if (before.equals(after)) {
            return Optional.empty();
        }
        List<String> was = CatalogueRows.cells(before);
        List<String> is = CatalogueRows.cells(after);
        List<ShelfChange.Cell> cells = new ArrayList<>();
        for (int i = 0; i < is.size(); i++) {
            if (!was.get(i).equals(is.get(i))) {
                cells.add(new ShelfChange.Cell(CatalogueRows.COLUMNS.get(i), was.get(i), is.get(i)));
            }
        }
        return cells.isEmpty() ? Optional.empty() : Optional.of(new ShelfChange(before, after, List.copyOf(cells)));
    }
}
