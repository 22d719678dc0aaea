package boughwright.colour;

/**
 * {@link Oklab} by lightness, chroma and hue. Colours beyond what a screen shows are kept as they are until they are {@link #mapped}.
 *
 * @param l lightness, 0 black .. 1 white
 * @param c chroma, 0 neutral; sRGB reaches about 0.32
 * @param h hue angle in degrees, [0, 360): about 29 red, 110 yellow, 142 green, 264 blue; 0 for a neutral; any other angle
 *        is understood, turned round
 */
public record Oklch(double l, double c, double h) {

    public static Oklch of(Srgb colour) {
        return of(Oklab.of(colour));
    }

    public static Oklch of(LinearRgb colour) {
        return of(Oklab.of(colour));
    }

    public static Oklch of(Oklab colour) {
        return new Oklch(colour.l(), colour.chroma(), colour.hue());
    }

    public Oklab toOklab() {
        double angle = Math.toRadians(h);
        return new Oklab(l, c * Math.cos(angle), c * Math.sin(angle));
    }

    public LinearRgb toLinear() {
        return toOklab().toLinear();
    }

    /** Whether sRGB can show it; rounding is forgiven as in {@link LinearRgb#inGamut}. */
    public boolean inGamut() {
        return toLinear().inGamut();
    }

    /**
     * The 8-bit colour to show for this one: itself where sRGB can show it, otherwise one of its lightness and hue with as much of its chroma as
     * goes, the difference from that staying below the just noticeable. White for a lightness of 1 or more, black for 0 or less.
     */
    public Srgb mapped() {
        return GamutMapping.of(this).toSrgb();
    }
}
