package boughwright.colour;

/**
 * Oklab, whose polar form (OKLCH) orders products by lightness, chroma and hue.
 *
 * <p>B. Ottosson, "A perceptual color space for image processing", 23 December 2020; the matrices are that page's.
 *
 * @param l lightness, 0..1
 * @param a green (−) to red (+)
 * @param b blue (−) to yellow (+)
 */
public record Oklab(double l, double a, double b) {

    public static Oklab of(Srgb colour) {
        double r = Srgb.linear(colour.red());
        double g = Srgb.linear(colour.green());
        double bl = Srgb.linear(colour.blue());
        return ofCones(
                0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * bl,
                0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * bl,
                0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * bl);
    }

    /** From CIE XYZ under D65 with the white's Y = 1. */
    public static Oklab ofXyz(double x, double y, double z) {
        return ofCones(
                0.8189330101 * x + 0.3618667424 * y - 0.1288597137 * z,
                0.0329845436 * x + 0.9293118715 * y + 0.0361456387 * z,
                0.0482003018 * x + 0.2643662691 * y + 0.6338517070 * z);
    }

    private static Oklab ofCones(double l, double m, double s) {
        double lr = Math.cbrt(l);
        double mr = Math.cbrt(m);
        double sr = Math.cbrt(s);
        return new Oklab(
                0.2104542553 * lr + 0.7936177850 * mr - 0.0040720468 * sr,
                1.9779984951 * lr - 2.4285922050 * mr + 0.4505937099 * sr,
                0.0259040371 * lr + 0.7827717662 * mr - 0.8086757660 * sr);
    }

    public double chroma() {
        return Math.hypot(a, b);
    }

    /** Hue angle in degrees, [0, 360); 0 for a neutral. */
    public double hue() {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
