package boughwright.catalogue;

import boughwright.brief.Word;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Texture;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What somebody looks for on the shelf. Every part that is empty lets everything through.
 *
 * @param text parts of a name, a SKU, a GTIN or a shelf, all of which must occur, in any case
 * @param near a colour by which what is found is sorted: the nearest first, by CIEDE2000 to either colour of the product
 */
public record ProductSearch(
        String text, Optional<Role> role, String look, Optional<Family> family, Optional<Texture> texture, Optional<Finish> finish, Optional<Level> level,
        Stock stock, Optional<Srgb> near, Order order) {

    public static final ProductSearch ALL = new ProductSearch("", Optional.empty(), "", Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Stock.ANY, Optional.empty(), Order.SKU);

    /** So few packs are low (common practice, no published source). */
    public static final int LOW = 5;

    /** How much there must be: anything, at least one pack, some but no more than {@link #LOW}, none. */
    public enum Stock implements Word { ANY, IN_STOCK, LOW, NONE }

    /** In which order; the SKU decides between equals. */
    public enum Order implements Word {

        SKU(Comparator.comparing(Product::sku)),
        NAME(Comparator.comparing(Product::name, String.CASE_INSENSITIVE_ORDER)),
        CHEAPEST(Comparator.comparing((Product p) -> p.price().amount())),
        DEAREST(Comparator.comparing((Product p) -> p.price().amount()).reversed()),
        LEAST_STOCK(Comparator.comparingInt(Product::stock)),
        SHELF(Comparator.comparing(Product::shelf));

        private final Comparator<Product> by;

        Order(Comparator<Product> by) {
            this.by = by;
        }
    }

    /**
     * One that was found.
     *
     * @param distance CIEDE2000 to the colour that was asked for; 0 when none was
     */
    public record Found(Product product, double distance) {
    }

    /** @param products in any order */
    public List<Found> in(List<Product> products) {
        Optional<Lab> wanted = near.map(Lab::of);
        String[] parts = text.strip().isEmpty() ? new String[0] : text.strip().toLowerCase(Locale.ROOT).split("\\s+");
        List<Found> found = new ArrayList<>();
        for (Product product : products) {
            if (fits(product) && speaksOf(product, parts)) {
                found.add(new Found(product, wanted.map(w -> distance(product, w)).orElse(0.0)));
            }
        }
        Comparator<Found> by = Comparator.comparing(Found::product, order.by.thenComparing(Product::sku));
        found.sort(wanted.isPresent() ? Comparator.comparingDouble(Found::distance).thenComparing(by) : by);
        return found;
    }

    private static double distance(Product product, Lab wanted) {
        double first = product.lab().difference(wanted);
        return product.secondColour().map(Lab::of).map(second -> Math.min(first, second.difference(wanted))).orElse(first);
    }

    private boolean fits(Product product) {
        return role.map(product.roles()::contains).orElse(true) && (look.isEmpty() || product.looks().contains(look))
                && is(family, product.family()) && is(texture, product.texture()) && is(finish, product.finish()) && is(level, product.level())
                && switch (stock) {
                    case ANY -> true;
                    case IN_STOCK -> product.stock() > 0;
                    case LOW -> product.stock() > 0 && product.stock() <= LOW;
                    case NONE -> product.stock() == 0;
                };
    }

    private static <T> boolean is(Optional<T> wanted, T value) {
        return wanted.isEmpty() || wanted.get() == value;
    }

    private static boolean speaksOf(Product product, String[] parts) {
        if (parts.length == 0) {
            return true;
        }
        String all = (product.name() + ' ' + product.sku() + ' ' + product.gtin() + ' ' + product.shelf()).toLowerCase(Locale.ROOT);
        for (String part : parts) {
            if (!all.contains(part)) {
                return false;
            }
        }
        return true;
    }

    public ProductSearch withText(String other) {
        return new ProductSearch(other, role, look, family, texture, finish, level, stock, near, order);
    }

    public ProductSearch withRole(Optional<Role> other) {
        return new ProductSearch(text, other, look, family, texture, finish, level, stock, near, order);
    }

    public ProductSearch withLook(String other) {
        return new ProductSearch(text, role, other, family, texture, finish, level, stock, near, order);
    }

    public ProductSearch withFamily(Optional<Family> other) {
        return new ProductSearch(text, role, look, other, texture, finish, level, stock, near, order);
    }

    public ProductSearch withTexture(Optional<Texture> other) {
        return new ProductSearch(text, role, look, family, other, finish, level, stock, near, order);
    }

    public ProductSearch withFinish(Optional<Finish> other) {
        return new ProductSearch(text, role, look, family, texture, other, level, stock, near, order);
    }

    public ProductSearch withLevel(Optional<Level> other) {
        return new ProductSearch(text, role, look, family, texture, finish, other, stock, near, order);
    }

    public ProductSearch withStock(Stock other) {
        return new ProductSearch(text, role, look, family, texture, finish, level, other, near, order);
    }

    public ProductSearch withNear(Optional<Srgb> other) {
        return new ProductSearch(text, role, look, family, texture, finish, level, stock, other, order);
    }

    public ProductSearch withOrder(Order other) {
        return new ProductSearch(text, role, look, family, texture, finish, level, stock, near, other);
    }
}
