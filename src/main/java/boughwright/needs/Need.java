package boughwright.needs;

import boughwright.measure.Length;
import java.util.Optional;

/**
 * So many of one thing, and why.
 *
 * @param id stable name within a proposal: {@code florals/spray/2}, {@code ornaments/filler-ball/80mm}
 * @param slot needs of one slot are filled by one product, as the topper's stems are by the clusters' stems
 * @param style number of the style within the role, from 1
 * @param quantity at least 0
 * @param computed what the rulebook made of the brief before anyone changed it; equal to {@code quantity} unless changed
 * @param diameter of an ornament: of the ball, or the drop of a feature; a count of ornaments means nothing without it
 */
public record Need(
        String id, String slot, Layer layer, Role role, int style, int quantity, int computed, Unit unit, Optional<Length> diameter,
        Reason reason) {

    public Need {
        if (quantity < 0) {
            throw new IllegalArgumentException("a need cannot be below 0: " + id + " " + quantity);
        }
    }

    /** Changed by hand away from what the rulebook gave. */
    public boolean changed() {
        return quantity != computed;
    }
}
