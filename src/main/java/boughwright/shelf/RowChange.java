package boughwright.shelf;

import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What happened to one product.
 *
 * @param before its cells by column; empty when it was not sold
 * @param after its cells by column; empty when it is not sold any more
 */
public record RowChange(String sku, Map<String, String> before, Map<String, String> after) {

    public RowChange {
        before = Map.copyOf(before);
        after = Map.copyOf(after);
    }

    public boolean comes() {
        return before.isEmpty();
    }

    public boolean goes() {
        return after.isEmpty();
    }

    /** The columns whose texts differ, in the order of the alphabet; of a product that comes or goes, all. */
    public SortedSet<String> columns() {
        SortedSet<String> columns = new TreeSet<>(before.keySet());
        columns.addAll(after.keySet());
        columns.removeIf(c -> before.getOrDefault(c, "").equals(after.getOrDefault(c, "")));
        return columns;
    }
}
