package boughwright.photo;

import boughwright.colour.Oklab;
import boughwright.colour.Srgb;

/** The way back from Oklab to what a screen shows: chroma gives way where sRGB ends, lightness and hue stay. */
final class InGamut {

    private static final int HALVINGS = 20;

    private InGamut() {
    }

    static Srgb of(Oklab colour) {
        if (fits(colour)) {
            return shown(colour);
        }
        double inside = 0;
        double outside = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double part = (inside + outside) / 2;
            if (fits(new Oklab(colour.l(), part * colour.a(), part * colour.b()))) {
                inside = part;
            } else {
                outside = part;
            }
        }
        return shown(new Oklab(colour.l(), inside * colour.a(), inside * colour.b()));
    }

    /** Oklab of lightness, chroma and hue in degrees. */
    static Oklab polar(double lightness, double chroma, double hue) {
        double angle = Math.toRadians(hue);
        return new Oklab(lightness, chroma * Math.cos(angle), chroma * Math.sin(angle));
    }

    private static boolean fits(Oklab colour) {
        for (double part : linear(colour)) {
            if (part < -1e-4 || part > 1 + 1e-4) {
                return false;
            }
        }
        return true;
    }

    /** The inverse of the matrices of B. Ottosson's page, as printed there. */
    private static double[] linear(Oklab colour) {
        double l = cube(colour.l() + 0.3963377774 * colour.a() + 0.2158037573 * colour.b());
        double m = cube(colour.l() - 0.1055613458 * colour.a() - 0.0638541728 * colour.b());
        double s = cube(colour.l() - 0.0894841775 * colour.a() - 1.2914855480 * colour.b());
        return new double[] {4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
            -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
            -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s};
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private static Srgb shown(Oklab colour) {
        double[] linear = linear(colour);
        return new Srgb(part(linear[0]), part(linear[1]), part(linear[2]));
    }

    private static int part(double linear) {
        double v = Math.max(0, Math.min(1, linear));
        return (int) Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055));
    }
}
