package boughwright.colour;

/**
 * CIE 1976 L*a*b* under D65, in which colour differences are judged.
 *
 * @param l lightness, 0 black .. 100 white
 * @param a green (−) to red (+)
 * @param b blue (−) to yellow (+)
 */
public record Lab(double l, double a, double b) {

    /** D65 white of the sRGB standard (IEC 61966-2-1), Y = 1. */
    private static final double WHITE_X = 0.95047;
    private static final double WHITE_Z = 1.08883;

    /** Converts through linear light and XYZ with the sRGB primaries. */
    public static Lab of(Srgb colour) {
        double r = Srgb.linear(colour.red());
        double g = Srgb.linear(colour.green());
        double b = Srgb.linear(colour.blue());
        double x = 0.4124564 * r + 0.3575761 * g + 0.1804375 * b;
        double y = 0.2126729 * r + 0.7151522 * g + 0.0721750 * b;
        double z = 0.0193339 * r + 0.1191920 * g + 0.9503041 * b;
        double fx = compress(x / WHITE_X);
        double fy = compress(y);
        double fz = compress(z / WHITE_Z);
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /** The CIE cube-root law with its linear foot (CIE 15: ε = 216/24389, κ = 24389/27). */
    private static double compress(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    public double chroma() {
        return Math.hypot(a, b);
    }

    /** CIEDE2000 difference to another colour: 0 the same, about 1 just visible, symmetric. */
    public double difference(Lab other) {
        return Ciede2000.difference(this, other);
    }
}
