package boughwright.colour;

/**
 * Oklab, whose polar form {@link Oklch} orders products by lightness, chroma and hue.
 *
 * <p>B. Ottosson, "A perceptual color space for image processing", 23 December 2020, with the matrices of the CSS Color Module Level 4
 * (sample code for color conversions), which are that page's worked out again for one white and with more digits: neutrals are neutral to
 * 1e-15 there and to 1e-7 with the page's own.
 *
 * @param l lightness, 0..1
 * @param a green (−) to red (+)
 * @param b blue (−) to yellow (+)
 */
public record Oklab(double l, double a, double b) {

    /** Chroma below which there is no hue. Rounding leaves greys with 1e-15; the least colourful other 8-bit colour has 1e-3. */
    private static final double NEUTRAL = 4e-6;

    public static Oklab of(Srgb colour) {
        return of(Xyz.of(colour));
    }

    public static Oklab of(LinearRgb colour) {
        return of(Xyz.of(colour));
    }

    public static Oklab of(Xyz colour) {
        double x = colour.x();
        double y = colour.y();
        double z = colour.z();
        double l = Math.cbrt(0.8190224379967030 * x + 0.3619062600528904 * y - 0.1288737815209879 * z);
        double m = Math.cbrt(0.0329836539323885 * x + 0.9292868615863434 * y + 0.0361446663506424 * z);
        double s = Math.cbrt(0.0481771893596242 * x + 0.2642395317527308 * y + 0.6335478284694309 * z);
        return new Oklab(
                0.2104542683093140 * l + 0.7936177747023054 * m - 0.0040720430116193 * s,
                1.9779985324311684 * l - 2.4285922420485799 * m + 0.4505937096174110 * s,
                0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s);
    }

    public Xyz toXyz() {
        double cl = cube(l + 0.3963377773761749 * a + 0.2158037573099136 * b);
        double cm = cube(l - 0.1055613458156586 * a - 0.0638541728258133 * b);
        double cs = cube(l - 0.0894841775298119 * a - 1.2914855480194092 * b);
        return new Xyz(
                1.2268798758459243 * cl - 0.5578149944602171 * cm + 0.2813910456659647 * cs,
                -0.0405757452148008 * cl + 1.1122868032803170 * cm - 0.0717110580655164 * cs,
                -0.0763729366746601 * cl - 0.4214933324022432 * cm + 1.5869240198367816 * cs);
    }

    public LinearRgb toLinear() {
        return toXyz().toLinear();
    }

    private static double cube(double value) {
        return value * value * value;
    }

    public double chroma() {
        return Math.sqrt(a * a + b * b);
    }

    /** Hue angle in degrees, [0, 360); 0 for a neutral. */
    public double hue() {
        return chroma() < NEUTRAL ? 0 : Hue.degrees(a, b);
    }

    /** Distance to another colour (ΔE<sub>OK</sub> of CSS Color 4): 0 the same, 0.02 just noticeable there, 1 from black to white. */
    public double difference(Oklab other) {
        double dl = l - other.l;
        double da = a - other.a;
        double db = b - other.b;
        return Math.sqrt(dl * dl + da * da + db * db);
    }
}
