package boughwright.drawing;

/** A little hanging house with lit windows, snow on its roof; the origin is the top of its gable. */
final class House {

    private House() { }

    static void draw(Svg svg, Studio studio, Surface surface, String colour, String second, double w, double h) {
        String roof = second == null ? Tint.mix(colour, "#5a2f28", 0.55) : second;
        double eaves = h * 0.46;
        Path front = Path.fine().m(-w * 0.86, eaves).l(-w * 0.16, h * 0.12).l(w * 0.3, eaves).l(w * 0.3, h).l(-w * 0.86, h).z();
        Path side = Path.fine().m(w * 0.3, eaves).l(w * 0.86, eaves).l(w * 0.86, h * 0.94).l(w * 0.3, h).z();
        svg.raw("<g transform=\"translate(3 4)\">").fill("#06110b", 0.32, Path.fine().m(-w * 0.86, eaves).l(-w * 0.16, 0).l(w * 0.5, 0)
                .l(w, eaves).l(w * 0.86, h).l(-w * 0.86, h).z()).raw("</g>");
        svg.fill(studio.tone(Tint.darker(roof, 0.2)), Path.fine().m(w * 0.42, h * 0.24).l(w * 0.42, 0).l(w * 0.6, 0).l(w * 0.6, h * 0.24)
                .z());
        svg.fill(studio.volume(surface == Surface.GLASS ? Surface.SATIN : surface, colour), front);
        svg.fill(studio.tone(Tint.darker(colour, 0.3)), side);
        svg.fill(studio.tone(roof), Path.fine().m(-w * 0.18, h * 0.04).l(w * 0.46, h * 0.04).l(w, eaves + h * 0.04).l(w * 0.36, eaves
                + h * 0.04).z());
        svg.fill(studio.tone(Tint.darker(roof, 0.3)), Path.fine().m(-w * 0.18, h * 0.04).l(-w, eaves + h * 0.05).l(-w * 0.9, eaves
                + h * 0.1).l(-w * 0.16, h * 0.14).z());
        String snow = studio.tone("#fbf8f0");
        svg.fill(snow, Path.fine().m(-w * 0.2, h * 0.02).l(w * 0.48, h * 0.02).l(w * 0.72, h * 0.22).c(w * 0.62, h * 0.3, w * 0.52,
                h * 0.2, w * 0.44, h * 0.26)
                .c(w * 0.34, h * 0.34, w * 0.26, h * 0.2, w * 0.16, h * 0.22).c(w * 0.06, h * 0.24, 0, h * 0.16, -w * 0.06, h * 0.18).z());
        String glow = studio.evening() ? "#ffd98a" : "#f6cf7c";
        String frame = studio.tone(Tint.darker(colour, 0.5));
        svg.raw("<g fill=\"").raw(glow).raw("\" stroke=\"").raw(frame).raw("\"").attr("stroke-width", Math.max(0.8, w * 0.05)).raw(">");
        Path panes = Path.fine();
        for (double[] at : new double[][] {{-0.68, 0.56}, {-0.12, 0.56}, {-0.4, 0.33}}) {
            double x = at[0] * w;
            double y = at[1] * h;
            panes.m(x, y).l(x + w * 0.26, y).l(x + w * 0.26, y + h * 0.15).l(x, y + h * 0.15).z().m(x + w * 0.13, y).l(x + w * 0.13, y
                    + h * 0.15);
        }
        panes.m(w * 0.48, h * 0.6).l(w * 0.68, h * 0.59).l(w * 0.68, h * 0.74).l(w * 0.48, h * 0.75).z();
        svg.raw("<path d=\"").raw(panes.d()).raw("\"/></g>");
        svg.fill(studio.tone(Tint.darker(roof, 0.1)), Path.fine().m(-w * 0.42, h).l(-w * 0.42, h * 0.8).q(-w * 0.28, h * 0.7, -w * 0.14,
                h * 0.8).l(-w * 0.14, h).z());
        svg.fill(snow, Path.fine().m(-w * 0.95, h * 1.02).c(-w * 0.7, h * 0.94, -w * 0.5, h, -w * 0.2, h * 0.97).c(w * 0.1, h * 0.93,
                w * 0.4, h * 0.98, w * 0.92, h * 0.93)
                .l(w * 0.92, h * 1.0).c(w * 0.3, h * 1.05, -w * 0.4, h * 1.05, -w * 0.95, h * 1.02).z());
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, "#fbf3df", Studio.randomFor("house"), new double[] {-w * 0.1, h * 0.03, w * 0.6, h * 0.3}, 20,
                    Math.max(1, w * 0.05), (x, y) -> true);
        }
    }
}
