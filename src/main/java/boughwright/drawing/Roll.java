package boughwright.drawing;

import java.util.List;

/** A roll of ribbon with its end drawn out, 1000 units across, to show colour and pattern. */
final class Roll {

    private Roll() { }

    static void draw(Svg svg, Studio studio, ProductPicture.Ribbon ribbon) {
        double half = Math.max(130, Math.min(250, ribbon.width() * 3400));
        int n = 9;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] wx = new double[n];
        double[] wy = new double[n];
        double[] light = new double[n];
        for (int i = 0; i < n; i++) {
            double s = (double) i / (n - 1);
            x[i] = -430 + 860 * s;
            y[i] = 150 * Math.sin((s - 0.5) * Math.PI * 2);
            double slope = Math.atan2(300 * Math.PI * Math.cos((s - 0.5) * Math.PI * 2), 860);
            wx[i] = -Math.sin(slope) * 0.9;
            wy[i] = Math.cos(slope) * 0.9;
            light[i] = 0.6 + 0.42 * Math.sin(s * Math.PI * 3.4 + 0.4);
        }
        Strip strip = new Strip(x, y, wx, wy, light, 0, 1, true, true);
        // One ribbon alone: its own colour as base, the pattern drawn by an overlay of the same width.
        Band band = new Band("swatch", ribbon.title(), "ribbon", List.of(new double[3], new double[3]), half / 500,
                ribbon.colour(), half / 500, ribbon.colour(), ribbon.pattern());
        new RibbonPainter(studio).paint(svg, band, strip, false);
    }
}
