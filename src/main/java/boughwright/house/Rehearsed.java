package boughwright.house;

import boughwright.measure.Money;
import boughwright.needs.Layer;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What a draft would do to one consultation.
 *
 * @param subject which
 * @param change whether anything of it changes, and in what way
 * @param quantities pieces more or fewer in each layer; layers without a change are left out
 * @param prices money more or less in each layer; empty unless a kit fits either way
 * @param before what the kit costs under the edition that is live; empty when none fits or none was asked for
 * @param after what it would cost
 * @param budget of the customer, if there is one
 */
public record Rehearsed(
        Subject subject, Kind change, SortedMap<Layer, Integer> quantities, SortedMap<Layer, Money> prices, Optional<Money> before, Optional<Money> after, Optional<Money> budget) {

    /** What kind of change. */
    public enum Kind {
        /** Nothing at all. */
        SAME,
        /** Quantities, products or price change. */
        CHANGED,
        /** A kit fits now, and would not. */
        NEW_CONFLICT,
        /** No kit fits now, and one would. */
        CONFLICT_GONE,
        /** No kit fits either way. */
        STILL_CONFLICT,
        /** The brief asks for what the draft no longer offers, such as a look that is gone. */
        UNREADABLE
    }

    /** A consultation or a reference brief to be rehearsed. @param name the spoken code, or the title of a reference brief */
    public record Subject(String name, String brief, boughwright.needs.Adjustments hand, long seed) {
    }

    /** The change of price; empty when either side has no kit. */
    public Optional<Money> difference() {
        return before.flatMap(b -> after.map(a -> a.minus(b)));
    }

    /** How large the change is, for an order: conflicts first, then by money, then by pieces. */
    double size() {
        double pieces = quantities.values().stream().mapToInt(Math::abs).sum();
        double money = difference().map(d -> Math.abs(d.amount().doubleValue())).orElse(0.0);
        return switch (change) {
            case NEW_CONFLICT, UNREADABLE -> 1e9 + pieces;
            case CONFLICT_GONE -> 1e8 + pieces;
            default -> money * 1e3 + pieces;
        };
    }
}
