package boughwright.intake;

import boughwright.catalogue.Product;
import boughwright.measure.Money;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The shelf as it would be with the good rows of a file.
 *
 * @param after its products by SKU: those of a {@link Kind#WHOLE} file, or those before with the stock or the prices of the others
 * @param unknown rows of stock or prices that name no product of the shelf, or two
 */
public record ShelfUpdate(List<Product> after, List<IntakeFault> unknown) {

    /**
     * @param mapping that the file was read with
     * @param before the shelf as it is; SKUs and GTINs each once
     */
    public static ShelfUpdate of(IntakeFile file, Mapping mapping, Delivery.Read read, Collection<Product> before) {
        if (read.kind() == Kind.WHOLE) {
            return new ShelfUpdate(List.copyOf(bySku(read.products()).values()), List.of());
        }
        Map<String, Product> shelf = bySku(before);
        Map<String, Product> byGtin = before.stream().collect(Collectors.toMap(Product::gtin, Function.identity(), (a, b) -> a));
        List<IntakeFault> unknown = new ArrayList<>();
        for (GoodRow row : read.rows()) {
            String sku = row.cells().get(0);
            String gtin = row.cells().get(1);
            Product bySku = shelf.get(sku);
            Product found = sku.isEmpty() ? byGtin.get(gtin) : bySku;
            if (found == null) {
                unknown.add(fault(file, mapping, row, sku.isEmpty() ? "gtin" : "sku", Text.of("intake.unknown")));
            } else if (!gtin.isEmpty() && !found.gtin().equals(gtin)) {
                unknown.add(fault(file, mapping, row, "gtin", Text.of("intake.other-gtin", found.sku(), found.gtin())));
            } else {
                shelf.put(found.sku(), updated(shelf.get(found.sku()), row));
            }
        }
        return new ShelfUpdate(List.copyOf(shelf.values()), List.copyOf(unknown));
    }

    private static Map<String, Product> bySku(Collection<Product> products) {
        return products.stream().collect(Collectors.toMap(Product::sku, Function.identity(), (a, b) -> a, TreeMap::new));
    }

    private static IntakeFault fault(IntakeFile file, Mapping mapping, GoodRow row, String column, String mend) {
        String value = row.cells().get(column.equals("sku") ? 0 : 1);
        return new IntakeFault(row.line(), file.place(row.line()), column, mapping.heading(column).orElse(""), value, mend);
    }

    private static Product updated(Product p, GoodRow row) {
        int stock = row instanceof GoodRow.Stock s ? s.stock() : p.stock();
        Money price = row instanceof GoodRow.Price s ? s.price() : p.price();
        return new Product(p.sku(), p.gtin(), p.name(), p.brand(), p.roles(), p.family(), p.colour(), p.secondColour(), p.texture(), p.finish(),
                p.material(), p.shape(), p.pattern(), p.weave(), p.width(), p.length(), p.lights(), p.pack(), price, p.level(), stock,
                p.shelf(), p.looks(),
                p.safety(), p.lab());
    }
}
