package boughwright.colour;

/**
 * CIE 1976 L*a*b* under D65, in which colour differences are judged.
 *
 * <p>Its matrix and white are the sRGB standard's, rounded to seven and five digits, and it converts by way of {@link LinearRgb}: so
 * neutrals stay neutral beside {@link Xyz}, whose white is the same D65 with more digits. CSS writes {@code lab()} under D50, which is
 * not this.
 *
 * @param l lightness, 0 black .. 100 white
 * @param a green (−) to red (+)
 * @param b blue (−) to yellow (+)
 */
public record Lab(double l, double a, double b) {

    /** D65 white of the sRGB standard (IEC 61966-2-1), Y = 1. */
    private static final double WHITE_X = 0.95047;
    private static final double WHITE_Z = 1.08883;

    /** CIE 15: where the cube-root law gives way to its linear foot, and that foot's slope. */
    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    public static Lab of(Srgb colour) {
        return ofLinear(Srgb.linear(colour.red()), Srgb.linear(colour.green()), Srgb.linear(colour.blue()));
    }

    public static Lab of(LinearRgb colour) {
        return ofLinear(colour.r(), colour.g(), colour.b());
    }

    private static Lab ofLinear(double r, double g, double b) {
        double x = 0.4124564 * r + 0.3575761 * g + 0.1804375 * b;
        double y = 0.2126729 * r + 0.7151522 * g + 0.0721750 * b;
        double z = 0.0193339 * r + 0.1191920 * g + 0.9503041 * b;
        double fx = compress(x / WHITE_X);
        double fy = compress(y);
        double fz = compress(z / WHITE_Z);
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /** The way back; the matrix is the inverse of the one above. */
    public LinearRgb toLinear() {
        double fy = (l + 16) / 116;
        double x = WHITE_X * expand(fy + a / 500);
        double y = expand(fy);
        double z = WHITE_Z * expand(fy - b / 200);
        return new LinearRgb(
                3.2404548360214087 * x - 1.5371388501025751 * y - 0.4985315468684810 * z,
                -0.9692663898756538 * x + 1.8760109288424910 * y + 0.0415560823466735 * z,
                0.0556434196042137 * x - 0.2040258542676982 * y + 1.0572251624579290 * z);
    }

    private static double compress(double t) {
        return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double expand(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }

    public double chroma() {
        return Math.hypot(a, b);
    }

    /** CIEDE2000 difference to another colour: 0 the same, about 1 just visible, symmetric. */
    public double difference(Lab other) {
        return Ciede2000.difference(this, other);
    }
}
