package boughwright.intake;

import boughwright.brief.Word;
import boughwright.catalogue.CatalogueRows;
import java.util.List;

/** What a file says of each product. */
public enum Kind implements Word {
    /** Everything: the file is the shelf. */
    WHOLE(CatalogueRows.COLUMNS, List.of("sku", "gtin", "name", "roles", "family", "colour", "texture", "finish", "material", "shape", "width_mm",
            "pack", "price", "level", "stock", "shelf")),
    /** Packs on hand, by sku or gtin. */
    STOCK(List.of("sku", "gtin", "stock"), List.of("stock")),
    /** The price of a pack, by sku or gtin. */
    PRICE(List.of("sku", "gtin", "price", "currency"), List.of("price"));

    private final List<String> columns;
    private final List<String> needed;

    Kind(List<String> columns, List<String> needed) {
        this.columns = columns;
        this.needed = needed;
    }

    /** The canonical columns of its rows, in order. */
    public List<String> columns() {
        return columns;
    }

    /** Those for which a mapping must name a heading or a constant; {@link #STOCK} and {@link #PRICE} need sku or gtin beside them. */
    public List<String> needed() {
        return needed;
    }
}
