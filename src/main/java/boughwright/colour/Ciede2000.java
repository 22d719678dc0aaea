package boughwright.colour;

/**
 * The CIEDE2000 colour difference with k<sub>L</sub> = k<sub>C</sub> = k<sub>H</sub> = 1.
 *
 * <p>The equations and names are those of G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 Color-Difference Formula: Implementation
 * Notes, Supplementary Test Data, and Mathematical Observations", Color Research &amp; Application 30(1):21-30, 2005, whose 34 test
 * pairs are its test. To be fast it takes sines and cosines of hues from the coordinates instead of by way of angles:
 * <ul>
 * <li>the mean hue points along the sum of the two unit vectors (a′/C′, b/C′);
 * <li>ΔH′ = 2 √(C′₁C′₂) sin(Δh′/2) is √(C′₁C′₂) times the distance between those vectors, with the sign of a′₁b₂ − a′₂b₁;
 * <li>sines and cosines of multiples of the mean hue follow from the addition theorems.
 * </ul>
 * The angle itself is needed for the rotation term alone, and only where that is not lost in rounding. Near hues that are 180° apart,
 * where the sum of the vectors has no direction, angles are taken as printed. It differs from the equations as printed by less than 1e-9,
 * except at their two jumps: hues that are 180° apart but for rounding count as just that, and a mean hue that is 0° but for rounding as 0°,
 * whereas on paper the last bit would decide. Symmetric to the last bit.
 */
final class Ciede2000 {

    private static final double POW_25_7 = 6_103_515_625.0;
    private static final double COS_30 = Math.cos(Math.toRadians(30));
    private static final double SIN_30 = 0.5;
    private static final double COS_6 = Math.cos(Math.toRadians(6));
    private static final double SIN_6 = Math.sin(Math.toRadians(6));
    private static final double COS_63 = Math.cos(Math.toRadians(63));
    private static final double SIN_63 = Math.sin(Math.toRadians(63));

    /** Sum of the unit vectors, over its most, below which two hues count as opposite. */
    private static final double OPPOSITE = 1e-4;
    /** Degrees or radians that may be rounding. */
    private static final double ROUNDING = 1e-12;

    private Ciede2000() {
    }

    static double difference(Lab one, Lab two) {
        double b1 = one.b();
        double b2 = two.b();
        double meanChroma = (length(one.a(), b1) + length(two.a(), b2)) / 2;
        double stretch = 1.5 - 0.5 * Math.sqrt(seventh(meanChroma));
        double a1 = stretch * one.a();
        double a2 = stretch * two.a();
        double c1 = length(a1, b1);
        double c2 = length(a2, b2);
        double product = c1 * c2;

        double meanL = (one.l() + two.l()) / 2;
        double meanC = (c1 + c2) / 2;
        double lift = (meanL - 50) * (meanL - 50);
        double l = (two.l() - one.l()) / (1 + 0.015 * lift / Math.sqrt(20 + lift));
        double c = (c2 - c1) / (1 + 0.045 * meanC);
        if (product == 0) {
            return Math.sqrt(l * l + c * c);
        }

        double x = a1 * c2 + a2 * c1;
        double y = b1 * c2 + b2 * c1;
        double sum = length(x, y);
        if (sum < OPPOSITE * 2 * product) {
            return nearlyOpposite(a1, b1, a2, b2, product, meanC, l, c);
        }
        double dx = a1 * c2 - a2 * c1;
        double dy = b1 * c2 - b2 * c1;
        double dH = Math.copySign(Math.sqrt((dx * dx + dy * dy) / product), a1 * b2 - a2 * b1);
        double cos = x / sum;
        double sin = y / sum;
        // exp(−((h̄′ − 275)/25)²) is below 1e-16 for mean hues under 120°.
        double rotation = sin >= -ROUNDING && cos > -0.5 ? 0 : rotation(meanC, degrees(x, y));
        return total(l, c, dH, meanC, cos, sin, rotation);
    }

    private static double nearlyOpposite(double a1, double b1, double a2, double b2, double product, double meanC, double l, double c) {
        double h1 = degrees(a1, b1);
        double h2 = degrees(a2, b2);
        double step = h2 - h1;
        double meanH = (h1 + h2) / 2;
        if (Math.abs(step) > 180 + ROUNDING) {
            step -= Math.copySign(360, step);
            meanH += meanH < 180 ? 180 : -180;
        }
        double dH = 2 * Math.sqrt(product) * Math.sin(Math.toRadians(step / 2));
        double angle = Math.toRadians(meanH);
        return total(l, c, dH, meanC, Math.cos(angle), Math.sin(angle), rotation(meanC, meanH));
    }

    private static double total(double l, double c, double dH, double meanC, double cos, double sin, double rotation) {
        double cos2 = 2 * cos * cos - 1;
        double sin2 = 2 * sin * cos;
        double cos3 = cos * (2 * cos2 - 1);
        double sin3 = sin * (2 * cos2 + 1);
        double cos4 = 2 * cos2 * cos2 - 1;
        double sin4 = 2 * sin2 * cos2;
        double t = 1 - 0.17 * (COS_30 * cos + SIN_30 * sin) + 0.24 * cos2
                + 0.32 * (COS_6 * cos3 - SIN_6 * sin3) - 0.20 * (COS_63 * cos4 + SIN_63 * sin4);
        double h = dH / (1 + 0.015 * meanC * t);
        return Math.sqrt(l * l + c * c + h * h + rotation * c * h);
    }

    /** R<sub>T</sub> for a mean hue in degrees. */
    private static double rotation(double meanC, double meanH) {
        double from275 = (meanH - 275) / 25;
        double turn = 30 * Math.exp(-from275 * from275);
        return -2 * Math.sqrt(seventh(meanC)) * Math.sin(Math.toRadians(2 * turn));
    }

    /** C⁷ / (C⁷ + 25⁷). */
    private static double seventh(double chroma) {
        double squared = chroma * chroma;
        double power = squared * squared * squared * chroma;
        return power / (power + POW_25_7);
    }

    private static double length(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    /** Hue angle, [0, 360). */
    private static double degrees(double a, double b) {
        double h = Math.toDegrees(Math.atan2(b, a));
        return h < 0 ? h + 360 : h;
    }
}
