package boughwright.drawing;

/** Paints one strip of a band: its shadow, the base, the overlay with its pattern, the wired edges, folds and light. */
final class RibbonPainter {

    private static final int LIGHT_STOPS = 5;

    private final Studio studio;

    RibbonPainter(Studio studio) {
        this.studio = studio;
    }

    /** Shadowed strips lie before foliage; one that stands out past the silhouette throws no shadow on the wall. */
    void paint(Svg svg, Band band, Strip strip, boolean shadowed) {
        boolean fishtail = (band.id().hashCode() & 1) == 0;
        double base = band.baseWidth() * 500;
        double over = band.overlayWidth() * 500;
        String baseColour = strip.facing() < 0 ? Tint.darker(band.baseColour(), 0.14) : band.baseColour();
        String body = studio.outline(strip.outline(base, fishtail));
        if (shadowed) {
            svg.raw("<use xlink:href=\"#").raw(body).raw("\" fill=\"#06110b\" fill-opacity=\".36\" transform=\"translate(9 20)\"/>");
        }
        edged(svg, studio.tone(baseColour), studio.tone(Tint.lighter(baseColour, 0.38)), Math.max(2, base * 0.06));
        svg.raw("<use xlink:href=\"#").raw(body).raw("\"/></g>");
        if (over > 0) {
            String colour = strip.facing() < 0 ? Tint.darker(band.overlayColour(), 0.16) : band.overlayColour();
            edged(svg, studio.tone(colour), studio.tone(Tint.lighter(colour, 0.36)), Math.max(2, over * 0.08));
            svg.raw("<path d=\"").raw(strip.outline(over, fishtail).d()).raw("\"/></g>");
            Weave.pattern(svg, studio, band.pattern(), strip, over, colour);
        }
        svg.raw("<use xlink:href=\"#").raw(body).raw("\" fill=\"").raw(light(strip, band.pattern() == RibbonPattern.METALLIC)).raw("\"/>");
        folds(svg, strip, base);
    }

    private static void edged(Svg svg, String fill, String stroke, double width) {
        svg.raw("<g fill=\"").raw(fill).raw("\" stroke=\"").raw(stroke).raw("\"").attr("stroke-width", width).raw(">");
    }

    /** Light and shade along the strip, laid over both ribbons at once; metallic weave doubles the contrast. */
    private String light(Strip strip, boolean metallic) {
        int n = strip.samples();
        double gloss = metallic ? 1.5 : 1;
        Stop[] stops = new Stop[LIGHT_STOPS];
        for (int i = 0; i < LIGHT_STOPS; i++) {
            double s = (double) i / (LIGHT_STOPS - 1);
            double deep = 0;
            if (!strip.startCut()) {
                deep = Math.max(deep, 1 - s / 0.22);
            }
            if (!strip.endCut()) {
                deep = Math.max(deep, 1 - (1 - s) / 0.22);
            }
            double v = (strip.brightness(s) - 0.6) * 1.5 - Math.max(0, deep) * 0.62;
            stops[i] = v > 0 ? Stop.of(s, "#fff6e6").fade(Math.min(0.58, v * gloss * (studio.evening() ? 0.5 : 1.05)))
                    : Stop.of(s, "#12080c").fade(Math.min(0.64, -v * 0.66 * gloss));
        }
        return studio.linear(Math.round(strip.x()[0]), Math.round(strip.y()[0]), Math.round(strip.x()[n - 1]), Math.round(strip.y()[n
                - 1]), stops);
    }

    /** Gathers that fan from the pinches. */
    private static void folds(Svg svg, Strip strip, double half) {
        Path folds = Path.coarse();
        double[] across = {-0.5, 0.34};
        for (int i = 0; i < across.length; i++) {
            double reach = 0.2 + 0.08 * i;
            if (!strip.startCut()) {
                line(folds, strip, half, across[i], 0.01, reach);
            }
            if (!strip.endCut()) {
                line(folds, strip, half, across[i], 0.99, 1 - reach * 0.9);
            }
        }
        svg.stroke("#1a0d12", Math.max(1.6, half * 0.06), 0.36, folds);
    }

    private static void line(Path path, Strip strip, double half, double v, double from, double to) {
        double[] a = strip.at(from, v, half);
        double[] c = strip.at(to, v * 0.9, half);
        path.m(a[0], a[1]).l(c[0], c[1]);
    }
}
