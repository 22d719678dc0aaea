package boughwright.kit;

import boughwright.measure.Money;
import java.util.List;
import java.util.Optional;

/**
 * Why no kit fits, and the ways out.
 *
 * @param wishes that cannot all hold, and of which none can be spared for the clash, the most important first. Empty when not even
 *     a kit without wishes can be made, which {@code shortages} then explains
 * @param shortages what the shelf lacks for the house's rules, one sentence each
 * @param waysOut at least one for each wish of the conflict, in the order of the wishes
 */
public record Conflict(List<Wished> wishes, List<String> shortages, List<WayOut> waysOut) {

    public Conflict {
        wishes = List.copyOf(wishes);
        shortages = List.copyOf(shortages);
        waysOut = List.copyOf(waysOut);
    }

    /** A wish in the conflict, as a sentence. */
    public record Wished(String id, String text) {
    }

    /**
     * What letting go of a wish would do.
     *
     * @param steps what is let go of: one wish of the conflict and, where others clash beside it, as little else as will do
     * @param total what the kit would then cost at the least
     */
    public record WayOut(List<Step> steps, String text, Money total) {

        public WayOut {
            steps = List.copyOf(steps);
        }
    }

    /**
     * @param wish its id
     * @param instead what it becomes: an amount for the budget or a cap, a number for a quantity, a SKU for a product; empty when it
     *     is dropped altogether
     */
    public record Step(String wish, Optional<String> instead) {
    }
}
