package boughwright.drawing;

import java.util.SplittableRandom;

/** Flower heads seen from the front, 100 units across, centred on the origin. */
final class Flowers {

    private static final double R = 50;
    private static final String POLLEN = "#d8ab4c";

    private final Studio studio;

    Flowers(Studio studio) {
        this.studio = studio;
    }

    void draw(Svg svg, Form form, Surface surface, String colour, String second) {
        SplittableRandom random = Studio.randomFor(form + colour);
        svg.raw("<g transform=\"translate(4 7)\">").circle(studio.radial(R * 1.02, Stop.of(0.6, "#06110b").fade(0.5), Stop.of(1,
                "#06110b").fade(0)), 0, 0, R * 1.02)
                .raw("</g>");
        switch (form) {
            case OPEN_FLOWER -> open(svg, surface, colour, second);
            case MAGNOLIA -> magnolia(svg, surface, colour, second);
            case POINSETTIA -> poinsettia(svg, surface, colour, second);
            case ROSE -> rose(svg, surface, colour);
            case PEONY -> peony(svg, surface, colour, second, random);
            case ANEMONE -> anemone(svg, surface, colour, second, random);
            case DAHLIA -> dahlia(svg, surface, colour, second);
            default -> throw new IllegalArgumentException(form + " is not a flower");
        }
        if (surface == Surface.GLITTER) {
            Sparkle.disc(svg, studio, colour, random, R * 0.92, 70, 1.5);
        }
    }

    private void open(Svg svg, Surface surface, String colour, String second) {
        String edge = edge(colour);
        whorl(svg, paint(surface, colour, 0.6, 0.24), edge, 5, turn(0.5, 5), Petals.petal(0, 4, R * 0.92, 17, 0.56, 0.75));
        Path petal = Petals.petal(0, 4, R, 20.5, 0.54, 0.8);
        veins(petal, 0, 14, 41, 8);
        whorl(svg, paint(surface, colour, 0.46, 0), edge, 5, 0.06, petal);
        String green = Tint.mix("#8d9a4e", colour, 0.15);
        svg.circle(studio.radial(15, Stop.of(0, studio.tone(Tint.darker(green, 0.2))), Stop.of(0.7, studio.tone(green)).fade(0.8),
                Stop.of(1, studio.tone(green)).fade(0)), 0, 0, 15);
        stamens(svg, second == null ? POLLEN : second, 26, 7, 17);
        svg.circle(studio.volume(Surface.SATIN, "#9aa657"), 0, 0, 4.6);
    }

    private void magnolia(Svg svg, Surface surface, String colour, String second) {
        String outer = paint(surface, colour, 0.42, 0.12);
        String inner = paint(surface, Tint.lighter(colour, 0.18), 0.4, 0);
        String edge = edge(colour);
        for (int i = 0; i < 6; i++) {
            petal(svg, outer, edge, Petals.petal(turn(i, 6) + 0.12, 3, R * (i % 2 == 0 ? 1 : 0.92), 18.5, 0.66, 0.3));
        }
        Path folds = Path.fine();
        for (int i = 0; i < 6; i++) {
            veins(folds, turn(i, 6) + 0.12, 18, 40, 6);
        }
        svg.stroke(edge, 0.7, 0.5, folds);
        double[] cups = {2.5, 4.4, 0.6};
        for (double at : cups) {
            svg.raw("<g transform=\"translate(0 2)\">");
            petal(svg, inner, edge, Petals.petal(at, 0, 35, 16.5, 0.62, 0.22));
            svg.raw("</g>");
        }
        String cone = second == null ? "#a8823f" : second;
        svg.ellipse(studio.volume(Surface.MATTE, cone), 1, 0, -1, 6.6, 8.6);
        Path dots = Path.fine();
        for (int i = 0; i < 17; i++) {
            double a = i * 2.4;
            double r = 1.45 * Math.sqrt(i);
            dots.dot(Math.cos(a) * r, -1 + Math.sin(a) * r * 1.25);
        }
        dots(svg, studio.tone(Tint.lighter(cone, 0.5)), 1.6, dots);
        stamens(svg, POLLEN, 18, 7, 11);
    }

    private void poinsettia(Svg svg, Surface surface, String colour, String second) {
        String edge = edge(colour);
        ring(svg, paint(Surface.MATTE, "#3c6b46", 0.3, 0.1), edge("#3c6b46"), 5, 0.3, R * 0.98, 11, 0.45, 1);
        ring(svg, paint(surface, Tint.darker(colour, 0.16), 0.3, 0.06), edge, 7, 0, R, 13.5, 0.46, 1);
        ring(svg, paint(surface, colour, 0.34, 0), edge, 6, 0.4, R * 0.78, 11.5, 0.46, 1);
        ring(svg, paint(surface, Tint.lighter(colour, 0.13), 0.3, 0), edge, 5, 0.1, R * 0.5, 8, 0.46, 1);
        Path veins = Path.fine();
        for (int i = 0; i < 7; i++) {
            veins(veins, turn(i, 7), 26, 45, 5);
        }
        for (int i = 0; i < 6; i++) {
            veins(veins, turn(i, 6) + 0.4, 10, 34, 4);
        }
        svg.stroke(studio.tone(Tint.darker(colour, 0.4)), 0.7, 0.6, veins);
        String bead = second == null ? "#d9b44a" : second;
        for (int i = 0; i < 7; i++) {
            double r = i == 0 ? 0 : 4.6;
            svg.circle(studio.volume(Surface.SATIN, i % 2 == 0 ? bead : "#93a04d"), Math.cos(i) * r, Math.sin(i) * r, 2.6);
        }
    }

    private void rose(Svg svg, Surface surface, String colour) {
        String edge = edge(colour);
        double[][] rings = {{5, 0, 1, 0.1}, {5, 0.7, 0.84, 0.05}, {4, 0.2, 0.67, 0}, {4, 1.1, 0.51, -0.04}, {3, 0.5, 0.36, -0.1}};
        for (double[] ring : rings) {
            double k = ring[2];
            String base = ring[3] > 0 ? Tint.lighter(colour, ring[3]) : Tint.darker(colour, -ring[3]);
            String paint = studio.radial(R * k, Stop.of(0.4, studio.tone(Tint.darker(base, 0.62))), Stop.of(0.7,
                    studio.tone(Tint.darker(base, 0.2))),
                    Stop.of(0.88, studio.tone(sheen(surface, base))), Stop.of(1, studio.tone(Tint.lighter(base, 0.4))));
            // Each petal wraps to one side, over its neighbour.
            Path petal = Path.fine().place(0, 0, 0, k, k).m(0, 0).c(-22, -6, -34, -30, -22, -43).c(-12, -52, 4, -51, 14, -48).c(30, -44,
                    36, -24, 24, -12)
                    .c(18, -5, 8, 0, 0, 0).z();
            whorl(svg, paint, edge, (int) ring[0], ring[1], petal);
        }
        svg.circle(studio.radial(9, Stop.of(0.2, studio.tone(Tint.darker(colour, 0.66))), Stop.of(1, studio.tone(Tint.darker(colour,
                0.16)))), 0, 0, 8.6);
        svg.stroke(studio.tone(Tint.lighter(colour, 0.36)), 1.6, Path.fine().m(-7, 2).c(-7, -8, 5, -9, 7, -1).m(5, 4).c(1, 8, -5, 5, -3,
                0).c(-2, -4, 3, -3, 2, 1));
    }

    private void peony(Svg svg, Surface surface, String colour, String second, SplittableRandom random) {
        String edge = edge(colour);
        double[][] rings = {{6, 50, 27}, {6, 43, 23}, {6, 35, 20}, {5, 27, 17}, {5, 19, 12}};
        for (int k = 0; k < rings.length; k++) {
            int n = (int) rings[k][0];
            String base = Tint.mix(colour, k < 3 ? Tint.lighter(colour, 0.24) : Tint.darker(colour, 0.16), k < 3 ? 1 - k / 3.0 : (k
                    - 2) / 4.0);
            String paint = studio.radial(rings[k][1], Stop.of(0, studio.tone(Tint.darker(base, 0.46))), Stop.of(0.6,
                    studio.tone(Tint.darker(base, 0.1))),
                    Stop.of(0.9, studio.tone(sheen(surface, base))), Stop.of(1, studio.tone(Tint.lighter(base, 0.28))));
            for (int i = 0; i < n; i++) {
                double jitter = (random.nextDouble() - 0.5) * 0.24;
                petal(svg, paint, edge, Petals.frilled(turn(i + k * 0.5, n) + jitter, 0, rings[k][1] * (0.95 + 0.07 * random.nextDouble()),
                        rings[k][2], 0.05 * (random.nextDouble() - 0.3)));
            }
        }
        stamens(svg, second == null ? POLLEN : second, 12, 1, 6);
    }

    private void anemone(Svg svg, Surface surface, String colour, String second, SplittableRandom random) {
        String edge = edge(colour);
        String behind = paint(surface, colour, 0.42, 0.16);
        String front = paint(surface, colour, 0.3, 0);
        Path veins = Path.fine();
        for (int i = 0; i < 7; i++) {
            petal(svg, behind, edge, Petals.petal(turn(i + 0.5, 7), 4, R * (0.94 + 0.06 * random.nextDouble()), 20, 0.66, 0.12));
        }
        for (int i = 0; i < 6; i++) {
            petal(svg, front, edge, Petals.petal(turn(i, 6), 4, R * 0.9, 20, 0.64, 0.16));
            veins(veins, turn(i, 6), 16, 38, 7);
        }
        svg.stroke(edge, 0.7, 0.5, veins);
        String dark = second == null ? "#2a2530" : second;
        stamens(svg, dark, 30, 9, 16);
        svg.circle(studio.volume(Surface.SATIN, dark), 0, 0, 7.5);
    }

    private void dahlia(Svg svg, Surface surface, String colour, String second) {
        double[][] rings = {{14, 50, 8.4}, {14, 42.5, 8}, {12, 34.5, 7.6}, {10, 26.5, 7}, {8, 18.5, 6}};
        for (int k = 0; k < rings.length; k++) {
            double l = rings[k][1];
            String base = second != null && k >= 3 ? second : Tint.mix(Tint.lighter(colour, 0.05), Tint.darker(colour, 0.16), k / 4.0);
            String paint = studio.radial(l, Stop.of(0.3, studio.tone(Tint.darker(base, 0.6))), Stop.of(0.62, studio.tone(Tint.darker(base,
                    0.12))),
                    Stop.of(0.9, studio.tone(sheen(surface, base))), Stop.of(1, studio.tone(Tint.lighter(base, 0.32))));
            Path petal = Petals.petal(0, l * 0.3, l, rings[k][2], 0.62, 0.7);
            whorl(svg, paint, edge(base), (int) rings[k][0], turn(k * 0.5, (int) rings[k][0]), petal.m(0, -l * 0.5).l(0, -l * 0.86));
        }
        svg.circle(studio.volume(Surface.MATTE, second == null ? Tint.darker(colour, 0.3) : second), 0, 0, 5.5);
    }

    private void ring(Svg svg, String paint, String edge, int n, double offset, double length, double half, double widest, double sharp) {
        whorl(svg, paint, edge, n, offset, Petals.petal(0, 2, length, half, widest, sharp));
    }

    private static double turn(double i, int of) {
        return 2 * Math.PI * i / of;
    }

    private void petal(Svg svg, String paint, String edge, Path shape) {
        svg.raw("<path fill=\"").raw(paint).raw("\" stroke=\"").raw(edge).raw("\" stroke-width=\".7\" d=\"").raw(shape.d()).raw("\"/>");
    }

    /** Like petals in a ring, one outline turned n times. */
    private void whorl(Svg svg, String paint, String edge, int n, double offset, Path shape) {
        String id = studio.outline(shape);
        svg.raw("<g fill=\"").raw(paint).raw("\" stroke=\"").raw(edge).raw("\" stroke-width=\".8\">");
        for (int i = 0; i < n; i++) {
            svg.raw("<use xlink:href=\"#").raw(id).raw("\" transform=\"rotate(").num(Math.toDegrees(turn(i, n) + offset)).raw(")\"/>");
        }
        svg.raw("</g>");
    }

    /** Dark at the heart, the finish's sheen toward the edge; shade darkens the whole petal. */
    private String paint(Surface surface, String colour, double heart, double shade) {
        String c = Tint.darker(colour, shade);
        return studio.radial(R, Stop.of(0.08, studio.tone(Tint.darker(c, heart))), Stop.of(0.5, studio.tone(Tint.darker(c, heart * 0.24))),
                Stop.of(0.8, studio.tone(sheen(surface, c))), Stop.of(1, studio.tone(Tint.lighter(c, surface == Surface.MATTE ? 0.06
                        : 0.3))));
    }

    private static String sheen(Surface surface, String c) {
        return switch (surface) {
            case MATTE, NATURAL -> c;
            case SATIN, GLITTER -> Tint.lighter(c, 0.2);
            case SHINY, GLASS -> Tint.lighter(c, 0.34);
            case METALLIC -> Tint.lighter(c, 0.46);
        };
    }

    private String edge(String colour) {
        return studio.tone(Tint.darker(colour, Tint.light(colour) > 0.6 ? 0.34 : 0.5));
    }

    private static void veins(Path path, double angle, double from, double to, double spread) {
        path.place(0, 0, angle).m(0, -from).l(0, -to).m(0, -from).q(-spread * 0.7, -(from + to) / 2, -spread, -to * 0.92)
                .m(0, -from).q(spread * 0.7, -(from + to) / 2, spread, -to * 0.92);
    }

    private void stamens(Svg svg, String colour, int n, double from, double to) {
        Path threads = Path.fine();
        Path tips = Path.fine();
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * i / n;
            double r = to * (0.8 + 0.2 * ((i * 7) % 5) / 4);
            threads.m(Math.cos(a) * from, Math.sin(a) * from).l(Math.cos(a) * r, Math.sin(a) * r);
            tips.dot(Math.cos(a) * r, Math.sin(a) * r);
        }
        svg.stroke(studio.tone(Tint.lighter(colour, 0.3)), 0.6, 0.9, threads);
        dots(svg, studio.tone(colour), 2.4, tips);
    }

    private static void dots(Svg svg, String colour, double width, Path path) {
        svg.raw("<g stroke-linecap=\"round\">").stroke(colour, width, path).raw("</g>");
    }
}
