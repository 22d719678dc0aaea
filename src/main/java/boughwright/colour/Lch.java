package boughwright.colour;

/**
 * {@link Lab} by lightness, chroma and hue: the same colours under D65, in polar form.
 *
 * @param l lightness, 0 black .. 100 white
 * @param c chroma, 0 neutral; sRGB reaches about 134
 * @param h hue angle in degrees, [0, 360): about 40 red, 103 yellow, 136 green, 306 blue; 0 for a neutral
 */
public record Lch(double l, double c, double h) {

    /** Chroma below which there is no hue. Rounding leaves greys with 2e-5; the least colourful other 8-bit colour has 0.28. */
    private static final double NEUTRAL = 1e-3;

    public static Lch of(Srgb colour) {
        return of(Lab.of(colour));
    }

    public static Lch of(LinearRgb colour) {
        return of(Lab.of(colour));
    }

    public static Lch of(Lab colour) {
        double c = colour.chroma();
        return new Lch(colour.l(), c, c < NEUTRAL ? 0 : Hue.degrees(colour.a(), colour.b()));
    }

    public Lab toLab() {
        double angle = Math.toRadians(h);
        return new Lab(l, c * Math.cos(angle), c * Math.sin(angle));
    }

    public LinearRgb toLinear() {
        return toLab().toLinear();
    }
}
