package boughwright.shelf;

import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import boughwright.intake.Kind;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Whether rows may stand on the shelf, each by itself and all beside each other. */
final class RowCheck {

    /** A SKU is a key of the database and part of addresses. */
    static final int LONGEST_SKU = 60;

    private final Supplier<Set<String>> looks;
    private final Currency currency;

    RowCheck(Supplier<Set<String>> looks, Currency currency) {
        this.looks = looks;
        this.currency = currency;
    }

    /**
     * What came of a check.
     *
     * @param rows those that are sound, in their order
     * @param faults with the place in the list as line, from 1
     */
    record Checked(List<Product> rows, List<CatalogueFault> faults) {
    }

    /** @param rows cells by column */
    Checked rows(List<Map<String, String>> rows) {
        CatalogueRows reader = new CatalogueRows(looks.get(), currency);
        List<Product> products = new ArrayList<>();
        List<CatalogueFault> faults = new ArrayList<>();
        Set<String> skus = new HashSet<>();
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> row = rows.get(i);
            int line = i + 1;
            reader.product(line, CatalogueRows.COLUMNS, texts(row, CatalogueRows.COLUMNS), faults).filter(p -> fits(line, p, skus, faults)).ifPresent(products::add);
        }
        return new Checked(products, faults);
    }

    private static boolean fits(int line, Product product, Set<String> skus, List<CatalogueFault> faults) {
        if (product.sku().length() > LONGEST_SKU) {
            faults.add(new CatalogueFault(line, Shelf.SKU, product.sku(), Text.of("shelf.long-sku", LONGEST_SKU)));
            return false;
        }
        if (!skus.add(product.sku())) {
            faults.add(new CatalogueFault(line, Shelf.SKU, product.sku(), Text.of("shelf.sku-taken")));
            return false;
        }
        return true;
    }

    /** What a till says of one product: its sku or gtin, and stock or price or both. */
    void till(int line, Map<String, String> cells, List<CatalogueFault> faults) {
        CatalogueRows reader = new CatalogueRows(Set.of(), currency);
        if (!cells.containsKey(Shelf.STOCK) && !cells.containsKey(Shelf.PRICE)) {
            faults.add(new CatalogueFault(line, "", "", Text.of("shelf.till.says-nothing")));
        }
        if (cells.containsKey(Shelf.STOCK)) {
            reader.stock(line, Kind.STOCK.columns(), texts(cells, Kind.STOCK.columns()), faults);
        }
        if (cells.containsKey(Shelf.PRICE)) {
            Map<String, String> priced = new HashMap<>(cells);
            priced.putIfAbsent("currency", currency.getCurrencyCode());
            reader.price(line, Kind.PRICE.columns(), texts(priced, Kind.PRICE.columns()), faults);
        }
    }

    private static String[] texts(Map<String, String> cells, List<String> columns) {
        return columns.stream().map(c -> cells.getOrDefault(c, "")).toArray(String[]::new);
    }

    /** The file that the kiosk is started with. */
    Checked text(String csv) {
        CatalogueReading reading = new CatalogueReader(looks.get(), currency).read(csv);
        return reading instanceof CatalogueReading.Read read ? new Checked(read.catalogue().products(), List.of())
                : new Checked(List.of(), ((CatalogueReading.Faulty) reading).faults());
    }

    /** The cells of a product by column; empty ones are left out. */
    static Map<String, String> cells(Product product) {
        List<String> texts = CatalogueRows.cells(product);
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < texts.size(); i++) {
            if (!texts.get(i).isEmpty()) {
                cells.put(CatalogueRows.COLUMNS.get(i), texts.get(i));
            }
        }
        return cells;
    }
}
