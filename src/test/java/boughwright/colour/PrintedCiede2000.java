package boughwright.colour;

/**
 * CIEDE2000 equation by equation as G. Sharma, W. Wu, E. N. Dalal print it (Color Research &amp; Application 30(1):21-30, 2005), with hue
 * angles in degrees: what the faster form is held against, and its time before.
 */
final class PrintedCiede2000 {

    private static final double POW_25_7 = Math.pow(25, 7);

    private PrintedCiede2000() {
    }

    static double difference(Lab one, Lab two) {
        double meanChroma = (Math.hypot(one.a(), one.b()) + Math.hypot(two.a(), two.b())) / 2;
        double g = 0.5 * (1 - Math.sqrt(seventh(meanChroma)));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * two.a();
        double c1 = Math.hypot(a1, one.b());
        double c2 = Math.hypot(a2, two.b());
        double h1 = hue(a1, one.b());
        double h2 = hue(a2, two.b());

        double dL = two.l() - one.l();
        double dC = c2 - c1;
        double dH = 2 * Math.sqrt(c1 * c2) * sin(hueStep(c1 * c2, h1, h2) / 2);

        double meanL = (one.l() + two.l()) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = meanHue(c1 * c2, h1, h2);
        double t = 1 - 0.17 * cos(meanH - 30) + 0.24 * cos(2 * meanH) + 0.32 * cos(3 * meanH + 6) - 0.20 * cos(4 * meanH - 63);
        double lift = (meanL - 50) * (meanL - 50);
        double sL = 1 + 0.015 * lift / Math.sqrt(20 + lift);
        double sC = 1 + 0.045 * meanC;
        double sH = 1 + 0.015 * meanC * t;
        double turn = 30 * Math.exp(-Math.pow((meanH - 275) / 25, 2));
        double rT = -2 * Math.sqrt(seventh(meanC)) * sin(2 * turn);

        double l = dL / sL;
        double c = dC / sC;
        double h = dH / sH;
        return Math.sqrt(l * l + c * c + h * h + rT * c * h);
    }

    private static double seventh(double chroma) {
        double p = Math.pow(chroma, 7);
        return p / (p + POW_25_7);
    }

    private static double hue(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double h = Math.toDegrees(Math.atan2(b, a));
        return h < 0 ? h + 360 : h;
    }

    private static double hueStep(double chromaProduct, double h1, double h2) {
        if (chromaProduct == 0) {
            return 0;
        }
        double step = h2 - h1;
        if (step > 180) {
            return step - 360;
        }
        return step < -180 ? step + 360 : step;
    }

    private static double meanHue(double chromaProduct, double h1, double h2) {
        double sum = h1 + h2;
        if (chromaProduct == 0) {
            return sum;
        }
        if (Math.abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
