package boughwright.colour;

/**
 * Brings a colour into what sRGB can show: the CSS Color Module Level 4's gamut mapping by binary search in OKLCH chroma with local
 * MINDE, step by step as it stands there. "Local MINDE": at each chroma tried, clipping is good enough where its ΔE<sub>OK</sub> is below the
 * just noticeable difference, so less chroma is lost along the gamut's hollow sides.
 */
final class GamutMapping {

    /** Just noticeable difference in Oklab, and how near to it a search ends; CSS Color 4. */
    private static final double JND = 0.02;
    private static final double EPSILON = 0.0001;

    private static final LinearRgb WHITE = new LinearRgb(1, 1, 1);
    private static final LinearRgb BLACK = new LinearRgb(0, 0, 0);

    private GamutMapping() {
    }

    /** A colour with every part within 0..1. Twelve chromas are tried at most for a chroma up to 0.4, one more for each doubling. */
    static LinearRgb of(Oklch origin) {
        if (origin.l() >= 1) {
            return WHITE;
        }
        if (origin.l() <= 0) {
            return BLACK;
        }
        LinearRgb shown = origin.toLinear();
        if (shown.exactlyInGamut()) {
            return shown;
        }
        LinearRgb clipped = shown.clipped();
        if (loss(clipped, origin) < JND) {
            return clipped;
        }
        double least = 0;
        double most = origin.c();
        boolean leastInGamut = true;
        while (most - least > EPSILON) {
            double chroma = (least + most) / 2;
            Oklch current = new Oklch(origin.l(), chroma, origin.h());
            LinearRgb light = current.toLinear();
            if (leastInGamut && light.exactlyInGamut()) {
                least = chroma;
                continue;
            }
            clipped = light.clipped();
            double loss = loss(clipped, current);
            if (loss >= JND) {
                most = chroma;
            } else if (JND - loss < EPSILON) {
                return clipped;
            } else {
                leastInGamut = false;
                least = chroma;
            }
        }
        return clipped;
    }

    private static double loss(LinearRgb clipped, Oklch wanted) {
        return Oklab.of(clipped).difference(wanted.toOklab());
    }
}
