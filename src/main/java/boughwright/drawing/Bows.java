package boughwright.drawing;

/** Accents tied of ribbon: a pair of tails, a bow of one loop, a bow of two. The knot is the origin; mm. */
final class Bows {

    private final Studio studio;
    private String colour;
    private String trim;
    private Surface surface;

    Bows(Studio studio) {
        this.studio = studio;
    }

    void draw(Svg svg, Form form, Surface finish, String main, String second, double ribbon, double tail) {
        colour = main;
        surface = finish;
        trim = second == null ? Tint.lighter(main, 0.45) : second;
        double loop = Math.max(ribbon * 1.75, tail * 0.62);
        svg.raw("<g stroke-linejoin=\"round\">");
        tail(svg, ribbon, tail, 0.42, false);
        tail(svg, ribbon, tail * 0.9, -0.46, true);
        switch (form) {
            case TAILS -> { }
            case ONE_LOOP_BOW -> loop(svg, ribbon, loop, -62);
            case TWO_LOOP_BOW -> {
                loop(svg, ribbon, loop, -20);
                svg.raw("<g transform=\"scale(-1 1)\">");
                loop(svg, ribbon, loop * 0.96, -16);
                svg.raw("</g>");
            }
            default -> throw new IllegalArgumentException(form + " is not tied");
        }
        knot(svg, ribbon);
        svg.raw("</g>");
    }

    private String lightest() {
        return studio.tone(Tint.lighter(colour, switch (surface) {
            case MATTE, NATURAL -> 0.1;
            case SATIN, GLITTER -> 0.32;
            case SHINY, GLASS -> 0.44;
            case METALLIC -> 0.6;
        }));
    }

    private void tail(Svg svg, double w, double l, double lean, boolean slanted) {
        double n = w * 0.2;
        double h = w * 0.46;
        double dx = Math.sin(lean) * l;
        double dy = Math.cos(lean) * l;
        double sx = Math.signum(lean) * w * 0.3;
        Path body = Path.fine().m(-n, 0).c(-h + dx * 0.1 + sx, dy * 0.36, -h + dx * 0.5 - sx, dy * 0.62, dx - h, dy);
        if (slanted) {
            body.l(dx + h * 0.9, dy - w * 0.5);
        } else {
            body.l(dx + Math.sin(lean) * -w * 0.3, dy - w * 0.42).l(dx + h, dy - w * 0.04);
        }
        body.c(h + dx * 0.5 - sx, dy * 0.6, h + dx * 0.1 + sx, dy * 0.34, n, 0).z();
        String dark = studio.tone(Tint.darker(colour, 0.45));
        String c = studio.tone(colour);
        svg.raw("<g transform=\"translate(5 8)\">").fill("#06110b", 0.28, body).raw("</g>");
        svg.fill(studio.linear(0, 0, dx, dy, Stop.of(0, dark), Stop.of(0.28, c), Stop.of(0.46, lightest()), Stop.of(0.66,
                studio.tone(Tint.darker(colour, 0.2))),
                Stop.of(0.86, c), Stop.of(1, lightest())), body);
        svg.stroke(studio.tone(trim), Math.max(1, w * 0.045), 0.9, Path.fine().m(-n, 0).c(-h + dx * 0.1 + sx, dy * 0.36, -h + dx * 0.5
                - sx, dy * 0.62, dx - h, dy)
                .m(dx + h, slanted ? dy - w * 0.5 : dy - w * 0.04).c(h + dx * 0.5 - sx, dy * 0.6, h + dx * 0.1 + sx, dy * 0.34, n, 0));
        sparkle(svg, Math.min(0, dx) - h * 0.4, dy * 0.2, Math.max(0, dx) + h * 0.4, dy * 0.8, w);
    }

    private void loop(Svg svg, double w, double l, double degrees) {
        double h = w * 0.6;
        double n = w * 0.17;
        Path outer = Path.fine().m(0, -n).c(l * 0.3, -h * 1.5, l * 0.74, -h * 1.3, l * 0.96, -h * 0.62).c(l * 1.08, -h * 0.1, l * 1.02,
                h * 0.5, l * 0.84, h * 0.66)
                .c(l * 0.6, h * 0.82, l * 0.26, h * 0.5, 0, n).z();
        Path mouth = Path.fine().m(l * 0.92, h * 0.5).c(l * 0.62, h * 0.44, l * 0.5, -h * 0.3, l * 0.66, -h * 0.82).c(l * 0.86, -h * 0.96,
                l * 1.06, -h * 0.1, l * 0.92, h * 0.5).z();
        String dark = studio.tone(Tint.darker(colour, 0.5));
        String c = studio.tone(colour);
        svg.raw("<g transform=\"rotate(").num(degrees).raw(")\">");
        svg.raw("<g transform=\"translate(4 8)\">").fill("#06110b", 0.28, outer).raw("</g>");
        svg.fill(studio.linear(0, 0, l, -h * 0.3, Stop.of(0, dark), Stop.of(0.22, c), Stop.of(0.5, lightest()), Stop.of(0.7, c), Stop.of(1,
                studio.tone(Tint.darker(colour, 0.3)))), outer);
        svg.fill(studio.linear(l * 0.56, 0, l, 0, Stop.of(0, dark), Stop.of(1, studio.tone(Tint.darker(colour, 0.24)))), mouth);
        svg.stroke(studio.tone(trim), Math.max(1, w * 0.045), 0.9, Path.fine().m(l * 0.92, h * 0.5).c(l * 0.62, h * 0.44, l * 0.5,
                -h * 0.3, l * 0.66, -h * 0.82)
                .c(l * 0.86, -h * 0.96, l * 1.06, -h * 0.1, l * 0.92, h * 0.5).m(0, n).c(l * 0.26, h * 0.5, l * 0.6, h * 0.82, l * 0.84,
                        h * 0.66)
                .m(0, -n).c(l * 0.3, -h * 1.5, l * 0.6, -h * 1.3, l * 0.68, -h * 0.84));
        svg.stroke(dark, Math.max(0.8, w * 0.03), 0.6, Path.fine().m(l * 0.06, -n * 0.4).q(l * 0.2, -h * 0.5, l * 0.42, -h * 0.6)
                .m(l * 0.06, 0).q(l * 0.2, -h * 0.1, l * 0.36, -h * 0.06).m(l * 0.06, n * 0.4).q(l * 0.18, h * 0.24, l * 0.38, h * 0.34));
        sparkle(svg, l * 0.12, -h * 0.5, l * 0.52, h * 0.4, w);
        svg.raw("</g>");
    }

    private void knot(Svg svg, double w) {
        double k = w * 0.24;
        svg.fill(studio.volume(surface, colour), Path.fine().m(-k, -k * 0.8).c(-k * 0.4, -k * 1.2, k * 0.4, -k * 1.2, k, -k * 0.8)
                .c(k * 1.24, -k * 0.2, k * 1.2, k * 0.5, k * 0.86, k)
                .c(k * 0.3, k * 1.3, -k * 0.3, k * 1.3, -k * 0.86, k).c(-k * 1.2, k * 0.5, -k * 1.24, -k * 0.2, -k, -k * 0.8).z());
        svg.stroke(studio.tone(Tint.darker(colour, 0.5)), Math.max(0.7, w * 0.025), 0.6, Path.fine().m(-k * 0.4, -k).q(-k * 0.1, 0,
                -k * 0.4, k).m(k * 0.3, -k).q(k * 0.5, 0, k * 0.3, k));
    }

    private void sparkle(Svg svg, double x1, double y1, double x2, double y2, double w) {
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, colour, Studio.randomFor("bow" + Math.round(x1 + y2)), new double[] {x1, y1, x2, y2}, 14,
                    Math.max(1.4, w * 0.035), (x, y) -> true);
        }
    }
}
