package boughwright.kit;

import boughwright.measure.Money;
import java.util.List;
import java.util.Optional;

/**
 * Why no kit fits, and the ways out.
 *
 * @param wishes that cannot all hold: letting go of any one of them frees the rest. Empty when not even a kit without wishes can
 *     be made, which {@code shortages} then explains
 * @param shortages what the shelf lacks for the house's rules, one sentence each
 * @param waysOut one for each wish that would do, in the order of the wishes
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
     * What letting go of one wish would do.
     *
     * @param wish its id
     * @param total what the kit would then cost at the least
     */
    public record WayOut(String wish, String text, Optional<Money> total) {
    }
}
