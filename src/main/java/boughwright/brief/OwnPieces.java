package boughwright.brief;

import boughwright.colour.Srgb;
import boughwright.measure.Length;
import java.util.Optional;

/**
 * Pieces as a customer describes them, when nobody knows where they were bought: 24 matte red 80 mm balls.
 *
 * @param text in the customer's words
 * @param count pieces, or bulbs when lights were counted by the bulb; 0 when it is a tree's worth
 * @param treesWorth height of the tree for which there are enough
 * @param family word of the colour family
 * @param finish word of the finish; empty when it was not said
 * @param size diameter of a ball or a flower, drop of an ornament; empty when it was not said
 */
public record OwnPieces(
        String text, Kind kind, int count, Optional<Length> treesWorth, Srgb colour, String family, Optional<String> finish, Optional<Length> size) {

    /** What a customer calls them. */
    public enum Kind implements Word {
        BALL, ORNAMENT, FLOWER, SPRAY, RIBBON, LIGHTS, LIGHT_STRING
    }
}
