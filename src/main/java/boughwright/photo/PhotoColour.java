package boughwright.photo;

import boughwright.colour.Srgb;

/**
 * One colour of a picture.
 *
 * @param share of what is not set aside, above 0 and at most 1
 */
public record PhotoColour(Srgb colour, double share) {
}
