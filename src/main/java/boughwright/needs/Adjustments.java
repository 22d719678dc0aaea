package boughwright.needs;

import boughwright.measure.Money;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What hands have changed since the brief. Together with the brief it decides the proposal, whatever came in between.
 *
 * @param quantities by need id; replaces what the rulebook gives
 * @param products sku by slot; the product that must fill it, whether it was swapped in or pinned where it stood
 * @param tastes what the products must be or must not be
 * @param caps the most that a layer may cost
 * @param levels word of the price level that is liked in a layer; it sways the choice and forbids nothing
 * @param dropped layers that are left out
 * @param importance ids of wishes, the most important first; wishes that are not named follow in the house's own order
 * @param kept sku by slot of the kit that was changed; what need not change stays
 * @param moved where a piece, a cluster or a run of ribbon was put by hand, by its id in the layout
 */
public record Adjustments(
        SortedMap<String, Integer> quantities, SortedMap<String, String> products, SortedSet<Taste> tastes, SortedMap<Layer, Money> caps,
        SortedMap<Layer, String> levels, SortedSet<Layer> dropped, List<String> importance, SortedMap<String, String> kept,
        SortedMap<String, Spot> moved) {

    public static final Adjustments NONE = new Adjustments(new TreeMap<>(), new TreeMap<>(), new TreeSet<>(), new TreeMap<>(), new TreeMap<>(),
            new TreeSet<>(), List.of(), new TreeMap<>(), new TreeMap<>());

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
        tastes = Collections.unmodifiableSortedSet(new TreeSet<>(tastes));
        caps = Collections.unmodifiableSortedMap(new TreeMap<>(caps));
        levels = Collections.unmodifiableSortedMap(new TreeMap<>(levels));
        dropped = Collections.unmodifiableSortedSet(new TreeSet<>(dropped));
        importance = List.copyOf(importance);
        kept = Collections.unmodifiableSortedMap(new TreeMap<>(kept));
        moved = Collections.unmodifiableSortedMap(new TreeMap<>(moved));
    }

    public Optional<Integer> quantity(String needId) {
        return Optional.ofNullable(quantities.get(needId));
    }

    public Adjustments withQuantity(String needId, int quantity) {
        return withQuantities(with(quantities, needId, quantity));
    }

    public Adjustments withoutQuantity(String needId) {
        return withQuantities(without(quantities, needId));
    }

    private Adjustments withQuantities(SortedMap<String, Integer> other) {
        return new Adjustments(other, products, tastes, caps, levels, dropped, importance, kept, moved);
    }

    public Adjustments withProduct(String slot, String sku) {
        return withProducts(with(products, slot, sku));
    }

    public Adjustments withoutProduct(String slot) {
        return withProducts(without(products, slot));
    }

    private Adjustments withProducts(SortedMap<String, String> other) {
        return new Adjustments(quantities, other, tastes, caps, levels, dropped, importance, kept, moved);
    }

    public Adjustments withTaste(Taste taste) {
        return withTastes(with(tastes, taste));
    }

    public Adjustments withoutTaste(Taste taste) {
        return withTastes(without(tastes, taste));
    }

    private Adjustments withTastes(SortedSet<Taste> other) {
        return new Adjustments(quantities, products, other, caps, levels, dropped, importance, kept, moved);
    }

    public Adjustments withCap(Layer layer, Money most) {
        return withCaps(with(caps, layer, most));
    }

    public Adjustments withoutCap(Layer layer) {
        return withCaps(without(caps, layer));
    }

    private Adjustments withCaps(SortedMap<Layer, Money> other) {
        return new Adjustments(quantities, products, tastes, other, levels, dropped, importance, kept, moved);
    }

    public Adjustments withLevel(Layer layer, String level) {
        return withLevels(with(levels, layer, level));
    }

    public Adjustments withoutLevel(Layer layer) {
        return withLevels(without(levels, layer));
    }

    private Adjustments withLevels(SortedMap<Layer, String> other) {
        return new Adjustments(quantities, products, tastes, caps, other, dropped, importance, kept, moved);
    }

    public Adjustments withDropped(Layer layer) {
        return withDroppedOnes(with(dropped, layer));
    }

    public Adjustments withoutDropped(Layer layer) {
        return withDroppedOnes(without(dropped, layer));
    }

    private Adjustments withDroppedOnes(SortedSet<Layer> other) {
        return new Adjustments(quantities, products, tastes, caps, levels, other, importance, kept, moved);
    }

    /** @param ids of wishes, the most important first */
    public Adjustments withImportance(List<String> ids) {
        return new Adjustments(quantities, products, tastes, caps, levels, dropped, ids, kept, moved);
    }

    /** Changed from a kit with these products by slot; an empty map lets the kit be chosen anew. */
    public Adjustments keeping(Map<String, String> productsBySlot) {
        return new Adjustments(quantities, products, tastes, caps, levels, dropped, importance, new TreeMap<>(productsBySlot), moved);
    }

    public Adjustments withMoved(String id, Spot spot) {
        return withMoves(with(moved, id, spot));
    }

    public Adjustments withoutMoved(String id) {
        return withMoves(without(moved, id));
    }

    /** Everything back to where the layout would have it. */
    public Adjustments withoutMoves() {
        return withMoves(new TreeMap<>());
    }

    private Adjustments withMoves(SortedMap<String, Spot> other) {
        return new Adjustments(quantities, products, tastes, caps, levels, dropped, importance, kept, other);
    }

    public boolean none() {
        return equals(NONE);
    }

    private static <K, V> SortedMap<K, V> with(SortedMap<K, V> map, K key, V value) {
        SortedMap<K, V> more = new TreeMap<>(map);
        more.put(key, value);
        return more;
    }

    private static <K, V> SortedMap<K, V> without(SortedMap<K, V> map, K key) {
        SortedMap<K, V> fewer = new TreeMap<>(map);
        fewer.remove(key);
        return fewer;
    }

    private static <T> SortedSet<T> with(SortedSet<T> set, T one) {
        SortedSet<T> more = new TreeSet<>(set);
        more.add(one);
        return more;
    }

    private static <T> SortedSet<T> without(SortedSet<T> set, T one) {
        SortedSet<T> fewer = new TreeSet<>(set);
        fewer.remove(one);
        return fewer;
    }

    /** The wishes in the stated order of importance, those that are not named after them as they came. */
    public <W> List<W> inOrder(List<W> wishes, Function<W, String> id) {
        List<W> ordered = new ArrayList<>();
        importance.forEach(i -> wishes.stream().filter(w -> id.apply(w).equals(i)).forEach(ordered::add));
        wishes.stream().filter(w -> !importance.contains(id.apply(w))).forEach(ordered::add);
        return ordered;
    }
}
