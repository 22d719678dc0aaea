package boughwright.intake;

import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import boughwright.measure.Money;
import java.util.List;

/** A row of a file without a fault. */
public sealed interface GoodRow {

    /** As in {@link IntakeFault}. */
    int line();

    /** Its canonical cells, under {@link Kind#columns()} of its kind. */
    List<String> cells();

    record Whole(int line, Product product) implements GoodRow {

        @Override
        public List<String> cells() {
            return CatalogueRows.cells(product);
        }
    }

    /**
     * @param sku empty when the row names its product by gtin alone
     * @param gtin 13 digits, or empty when the row names its product by sku alone
     * @param stock packs on hand
     */
    record Stock(int line, String sku, String gtin, int stock) implements GoodRow {

        @Override
        public List<String> cells() {
            return List.of(sku, gtin, String.valueOf(stock));
        }
    }

    /**
     * @param sku empty when the row names its product by gtin alone
     * @param gtin 13 digits, or empty when the row names its product by sku alone
     * @param price of a pack
     */
    record Price(int line, String sku, String gtin, Money price) implements GoodRow {

        @Override
        public List<String> cells() {
            return List.of(sku, gtin, price.decimal(), price.currency().getCurrencyCode());
        }
    }
}
