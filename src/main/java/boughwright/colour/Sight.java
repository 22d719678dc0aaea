package boughwright.colour;

/**
 * A way in which colours are seen other than by most eyes in daylight; linear in light, so that a picture is shown so by one matrix
 * (SVG {@code feColorMatrix} with {@code color-interpolation-filters="linearRGB"}).
 *
 * <p>Immutable. The same colour is always seen the same.
 */
public sealed interface Sight permits Deficiency, WarmLight {

    /** Nine numbers by rows, on linear sRGB light from 0 to 1; what comes of it may leave that range and is then cut off. */
    double[] matrix();

    /** The colour that shows most eyes in daylight what this one looks like; each part rounded to 8 bits. */
    default Srgb seen(Srgb colour) {
        return LightMatrix.of(matrix()).applied(colour);
    }
}
