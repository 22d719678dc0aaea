package boughwright.brief;

import boughwright.measure.Length;
import java.util.Optional;

/**
 * Where the tree stands.
 *
 * @param ceiling empty when nobody has measured it
 * @param nearHeat a fireplace, radiator, candle or vent stands near
 */
public record Room(Optional<Length> ceiling, boolean nearHeat) {
}
