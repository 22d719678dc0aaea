package boughwright.colour;

/**
 * A colour and how much of it is seen.
 *
 * @param share at least 0; shares are compared with one another and need not add up to 1
 */
public record ColourShare(Srgb colour, double share) {

    public ColourShare {
        if (!(share >= 0)) {
            throw new IllegalArgumentException("a share is at least 0: " + share);
        }
    }
}
