package boughwright.drawing;

/** What is woven or printed on a ribbon, laid along a strip so that it follows every turn. */
final class Weave {

    private Weave() { }

    static void pattern(Svg svg, Studio studio, RibbonPattern pattern, Strip strip, double half, String colour) {
        boolean dark = Tint.light(colour) < 0.5;
        String ink = studio.tone(dark ? Tint.lighter(colour, 0.5) : Tint.darker(colour, 0.4));
        String deep = studio.tone(Tint.darker(colour, 0.4));
        switch (pattern) {
            case PLAIN -> { }
            case DOTS -> dots(svg, strip, half, ink);
            case STRIPE -> along(svg, strip, half, ink, half * 0.16, -0.55, 0, 0.55);
            case LEAF -> leaves(svg, strip, half, ink);
            case PLAID -> {
                along(svg, strip, half, deep, half * 0.26, -0.42, 0.42);
                across(svg, strip, half, deep, half * 0.26, 0);
                along(svg, strip, half, ink, half * 0.07, 0);
                across(svg, strip, half, ink, half * 0.07, 0.5);
            }
            case METALLIC -> across(svg, strip, half, studio.tone(Tint.lighter(colour, 0.6)), half * 0.12, 0.3);
        }
    }

    private static double length(Strip strip) {
        double length = 0;
        for (int i = 1; i < strip.samples(); i++) {
            length += Math.hypot(strip.x()[i] - strip.x()[i - 1], strip.y()[i] - strip.y()[i - 1]);
        }
        return length;
    }

    private static double steps(Strip strip, double pitch) {
        return Math.max(2, Math.round(length(strip) / Math.max(8, pitch)));
    }

    /** Share of the strip that a cut end takes out of its middle. */
    private static double notch(Strip strip, double half) {
        return Math.min(0.3, half * 0.8 / Math.max(1, length(strip)));
    }

    private static void dots(Svg svg, Strip strip, double half, String ink) {
        Path dots = Path.coarse();
        double n = steps(strip, half);
        double notch = notch(strip, half);
        for (int i = 0; i < n; i++) {
            double s = (i + 0.5) / n;
            if (strip.startCut() && s < notch || strip.endCut() && s > 1 - notch) {
                continue;
            }
            for (double v : i % 2 == 0 ? new double[] {-0.5, 0.5} : new double[] {0}) {
                double[] p = strip.at(s, v, half);
                dots.dot(p[0], p[1]);
            }
        }
        svg.raw("<g stroke-linecap=\"round\">").stroke(ink, half * 0.3, dots).raw("</g>");
    }

    private static void along(Svg svg, Strip strip, double half, String ink, double width, double... vs) {
        Path lines = Path.coarse();
        double notch = notch(strip, half);
        for (double v : vs) {
            double from = strip.startCut() ? notch * (1 - Math.abs(v)) : 0;
            double to = strip.endCut() ? 1 - notch * (1 - Math.abs(v)) : 1;
            int n = strip.samples();
            for (int i = 0; i < n; i++) {
                double[] p = strip.at(from + (to - from) * i / (n - 1), v, half);
                if (i == 0) {
                    lines.m(p[0], p[1]);
                } else {
                    lines.l(p[0], p[1]);
                }
            }
        }
        svg.stroke(ink, width, 0.9, lines);
    }

    private static void across(Svg svg, Strip strip, double half, String ink, double width, double offset) {
        Path lines = Path.coarse();
        double n = steps(strip, half * 1.15);
        double notch = notch(strip, half);
        for (int i = 0; i < n; i++) {
            double s = (i + 0.25 + offset) / n;
            if (s > (strip.startCut() ? notch : 0) && s < (strip.endCut() ? 1 - notch : 1)) {
                double[] a = strip.at(s, -0.94, half);
                double[] b = strip.at(s, 0.94, half);
                lines.m(a[0], a[1]).l(b[0], b[1]);
            }
        }
        svg.stroke(ink, width, 0.6, lines);
    }

    /** A running spray: a stalk down the middle with leaves to either side. */
    private static void leaves(Svg svg, Strip strip, double half, String ink) {
        Path leaves = Path.coarse();
        double n = steps(strip, half * 1.4);
        double notch = notch(strip, half);
        for (int i = 0; i < n; i++) {
            double s = (i + 0.15) / n;
            double step = 1.15 / n;
            if (strip.startCut() && s < notch || strip.endCut() && s + step > 1 - notch * 0.6) {
                continue;
            }
            int side = i % 2 == 0 ? 1 : -1;
            double[] foot = strip.at(s, 0, half);
            double[] tip = strip.at(s + step, side * 0.7, half);
            double[] a = strip.at(s + step * 0.25, side * 0.72, half);
            double[] b = strip.at(s + step * 0.85, side * 0.06, half);
            leaves.m(foot[0], foot[1]).q(a[0], a[1], tip[0], tip[1]).q(b[0], b[1], foot[0], foot[1]);
        }
        svg.fill(ink, leaves);
    }
}
