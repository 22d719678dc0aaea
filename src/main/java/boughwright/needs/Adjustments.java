package boughwright.needs;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a customer or associate has changed by hand since the brief.
 *
 * @param quantities by need id; replaces what the rulebook gives
 * @param products sku by slot; the product that must fill it
 */
public record Adjustments(SortedMap<String, Integer> quantities, SortedMap<String, String> products) {

    public static final Adjustments NONE = new Adjustments(new TreeMap<>(), new TreeMap<>());

    /** The most of anything that a hand may ask for. */
    public static final int MOST = 5_000;

    public Adjustments {
        for (Map.Entry<String, Integer> entry : quantities.entrySet()) {
            if (entry.getValue() < 0 || entry.getValue() > MOST) {
                throw new IllegalArgumentException("a quantity runs from 0 to " + MOST + ": " + entry);
            }
        }
        quantities = Collections.unmodifiableSortedMap(new TreeMap<>(quantities));
        products = Collections.unmodifiableSortedMap(new TreeMap<>(products));
    }

    public Optional<Integer> quantity(String needId) {
        return Optional.ofNullable(quantities.get(needId));
    }

    public Adjustments withQuantity(String needId, int quantity) {
        SortedMap<String, Integer> more = new TreeMap<>(quantities);
        more.put(needId, quantity);
        return new Adjustments(more, products);
    }

    public Adjustments withoutQuantity(String needId) {
        SortedMap<String, Integer> fewer = new TreeMap<>(quantities);
        fewer.remove(needId);
        return new Adjustments(fewer, products);
    }

    public Adjustments withProduct(String slot, String sku) {
        SortedMap<String, String> more = new TreeMap<>(products);
        more.put(slot, sku);
        return new Adjustments(quantities, more);
    }

    public Adjustments withoutProduct(String slot) {
        SortedMap<String, String> fewer = new TreeMap<>(products);
        fewer.remove(slot);
        return new Adjustments(quantities, fewer);
    }

    public boolean none() {
        return quantities.isEmpty() && products.isEmpty();
    }
}
