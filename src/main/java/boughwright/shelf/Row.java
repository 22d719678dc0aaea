package boughwright.shelf;

import boughwright.catalogue.Product;
import java.util.Map;

/**
 * A product as it is kept.
 *
 * @param gone whether it has left the range; nothing of it is in stock then
 */
record Row(Product product, boolean gone) {

    /** Its texts by column of the catalogue; empty ones are left out. */
    Map<String, String> cells() {
        return RowCheck.cells(product);
    }
}
