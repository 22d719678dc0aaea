package boughwright.drawing;

import java.util.SplittableRandom;

/**
 * Balls and hanging shapes. A ball is centred on the origin; a hanging shape has the origin at the branch and hangs below
 * it on its cord; a bird sits on the origin. Width and height in mm.
 */
final class Ornaments {

    private static final String BRASS = "#c39a4e";

    private final Studio studio;

    Ornaments(Studio studio) {
        this.studio = studio;
    }

    /** How far below the branch a shape of this width hangs, mm. */
    static double cord(double width) {
        return Math.max(16, Math.min(34, width * 0.34));
    }

    /** Height that a form takes for a width when the product does not tell. */
    static double usualHeight(Form form, double width) {
        return width * switch (form) {
            case DROP -> 1.5;
            case FINIAL -> 2.7;
            case ICICLE -> 6;
            case ACORN -> 1.35;
            case PINECONE -> 1.6;
            case BELL -> 1.05;
            case HOUSE -> 1.25;
            case BIRD -> 0.62;
            default -> 1;
        };
    }

    void ball(Svg svg, Surface surface, String colour, String second) {
        double r = 50;
        if (surface != Surface.GLASS) {
            svg.raw("<g transform=\"translate(5 8)\">").circle(studio.radial(r * 1.04, Stop.of(0.8, "#06110b").fade(0.5),
                    Stop.of(1, "#06110b").fade(0)), 0, 0, r * 1.04).raw("</g>");
        }
        cap(svg, 0, -r, 8.5);
        svg.circle(studio.volume(surface, colour), 0, 0, r);
        if (second != null) {
            Path band = Path.fine().m(-48.4, -12).c(-24, 4, 24, 4, 48.4, -12).l(49, 10).c(24, 26, -24, 26, -49, 10).z();
            svg.fill(studio.volume(surface, second), 0.92, band);
        }
        if (surface == Surface.METALLIC) {
            svg.circle(studio.radial(r, Stop.of(0.62, "#120a08").fade(0), Stop.of(0.86, "#120a08").fade(0.2), Stop.of(1, "#120a08")
                    .fade(0.55)), 0, 0, r);
        }
        finish(svg, surface, colour, 0, 0, r, r);
    }

    void hanging(Svg svg, Form form, Surface surface, String colour, String second, double width, double height) {
        double cord = cord(width);
        svg.stroke(studio.tone(BRASS), Math.max(1.4, width * 0.018), 0.9, Path.fine().m(0, 0).q(-2, cord * 0.5, 0, cord + 2).q(3,
                cord * 0.5, 0, 0));
        svg.raw("<g transform=\"translate(0 ").num(cord).raw(")\">");
        switch (form) {
            case DROP -> drop(svg, surface, colour, second, width / 2, height);
            case FINIAL -> finial(svg, surface, colour, second, width / 2, height);
            case ICICLE -> icicle(svg, surface, colour, width / 2, height);
            case STAR -> star(svg, surface, colour, width / 2);
            case SNOWFLAKE -> snowflake(svg, surface, colour, width / 2);
            case ACORN -> acorn(svg, surface, colour, second, width / 2, height);
            case PINECONE -> pinecone(svg, surface, colour, second, width / 2, height);
            case BELL -> bell(svg, surface, colour, second, width / 2, height);
            case HOUSE -> House.draw(svg, studio, surface, colour, second, width / 2, height);
            default -> throw new IllegalArgumentException(form + " does not hang");
        }
        svg.raw("</g>");
    }

    private void drop(Svg svg, Surface surface, String colour, String second, double w, double h) {
        Path body = Path.fine().m(0, 0).c(w * 0.16, h * 0.3, w, h * 0.42, w, h - w).c(w, h - w * 0.42, w * 0.55, h, 0, h)
                .c(-w * 0.55, h, -w, h - w * 0.42, -w, h - w).c(-w, h * 0.42, -w * 0.16, h * 0.3, 0, 0).z();
        shadow(svg, surface, body, w);
        cap(svg, 0, 2, w * 0.17);
        svg.fill(studio.volume(surface, colour), body);
        if (second != null) {
            svg.fill(studio.volume(surface, second), 0.95, Path.fine().m(-w * 0.96, h - w * 1.24).c(-w * 0.4, h - w * 0.98, w * 0.4, h
                    - w * 0.98, w * 0.96, h - w * 1.24)
                    .l(w, h - w * 0.86).c(w * 0.4, h - w * 0.56, -w * 0.4, h - w * 0.56, -w, h - w * 0.86).z());
        }
        finish(svg, surface, colour, 0, h - w, w, w);
    }

    private void finial(Svg svg, Surface surface, String colour, String second, double w, double h) {
        String paint = studio.volume(surface, colour);
        String other = studio.volume(surface, second == null ? Tint.darker(colour, 0.24) : second);
        double bulb = h * 0.4;
        Path body = Path.fine().m(-w * 0.24, h * 0.13).c(-w * 0.3, h * 0.2, -w, h * 0.22, -w, bulb * 0.92)
                .c(-w, h * 0.5, -w * 0.22, h * 0.5, -w * 0.2, h * 0.58).c(-w * 0.16, h * 0.74, -w * 0.05, h * 0.86, 0, h)
                .c(w * 0.05, h * 0.86, w * 0.16, h * 0.74, w * 0.2, h * 0.58).c(w * 0.22, h * 0.5, w, h * 0.5, w, bulb * 0.92)
                .c(w, h * 0.22, w * 0.3, h * 0.2, w * 0.24, h * 0.13).z();
        shadow(svg, surface, body, w);
        cap(svg, 0, 1, w * 0.16);
        svg.ellipse(other, 1, 0, h * 0.08, w * 0.38, h * 0.065);
        svg.fill(paint, body);
        svg.ellipse(other, 1, 0, h * 0.575, w * 0.3, h * 0.026);
        svg.ellipse(other, 1, 0, h * 0.145, w * 0.34, h * 0.022);
        svg.stroke(studio.tone(Tint.lighter(second == null ? colour : second, 0.3)), Math.max(1, w * 0.05), 0.8,
                Path.fine().m(-w * 0.97, bulb * 0.86).c(-w * 0.4, bulb * 1.0, w * 0.4, bulb * 1.0, w * 0.97, bulb * 0.86)
                        .m(-w * 0.98, bulb * 0.98).c(-w * 0.4, bulb * 1.12, w * 0.4, bulb * 1.12, w * 0.98, bulb * 0.98));
        finish(svg, surface, colour, 0, bulb * 0.9, w, w * 0.9);
        svg.fill(studio.tone(Tint.lighter(colour, 0.7)), 0.6, Path.fine().m(-w * 0.1, h * 0.6).l(-w * 0.03, h * 0.6).l(0, h * 0.9).z());
    }

    private void icicle(Svg svg, Surface surface, String colour, double w, double h) {
        Path body = Path.fine().m(-w, 0).c(-w * 0.9, h * 0.4, -w * 0.3, h * 0.8, 0, h).c(w * 0.3, h * 0.8, w * 0.9, h * 0.4, w, 0)
                .c(w * 0.6, -w * 0.7, -w * 0.6, -w * 0.7, -w, 0).z();
        cap(svg, 0, -w * 0.4, w * 0.5);
        svg.fill(studio.linear(-w, 0, w, 0, Stop.of(0, studio.tone(Tint.darker(colour, 0.1))).fade(0.9), Stop.of(0.3,
                studio.tone(Tint.lighter(colour, 0.7))).fade(0.75),
                Stop.of(0.6, studio.tone(colour)).fade(surface == Surface.GLASS ? 0.45 : 0.9), Stop.of(1, studio.tone(Tint.darker(colour,
                        0.3))).fade(0.95)), body);
        Path twist = Path.fine();
        Path lit = Path.fine();
        int turns = 9;
        for (int i = 0; i < turns; i++) {
            double t = (i + 0.3) / turns;
            double r = w * (1 - t) * 0.92;
            twist.m(-r, h * t).q(0, h * (t + 0.09), r, h * (t + 0.055));
            lit.m(-r, h * t + w * 0.2).q(-r * 0.3, h * (t + 0.07), r * 0.1, h * (t + 0.07) + w * 0.1);
        }
        svg.stroke(studio.tone(Tint.darker(colour, 0.34)), Math.max(0.8, w * 0.12), 0.7, twist);
        svg.stroke("#ffffff", Math.max(0.8, w * 0.14), studio.evening() ? 0.5 : 0.85, lit);
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, colour, Studio.randomFor("icicle"), new double[] {-w, 0, w, h}, 40, Math.max(1, w * 0.16),
                    (x, y) -> Math.abs(x) < w * (1 - y / h));
        }
    }

    private void star(Svg svg, Surface surface, String colour, double r) {
        double cy = r;
        Path outline = Path.fine();
        Path light = Path.fine();
        Path dark = Path.fine();
        for (int i = 0; i < 5; i++) {
            double a = i * Math.PI * 2 / 5 - Math.PI / 2;
            double tx = Math.cos(a) * r;
            double ty = cy + Math.sin(a) * r;
            double lx = Math.cos(a - Math.PI / 5) * r * 0.44;
            double ly = cy + Math.sin(a - Math.PI / 5) * r * 0.44;
            double rx = Math.cos(a + Math.PI / 5) * r * 0.44;
            double ry = cy + Math.sin(a + Math.PI / 5) * r * 0.44;
            light.m(0, cy).l(lx, ly).l(tx, ty).z();
            dark.m(0, cy).l(rx, ry).l(tx, ty).z();
            if (i == 0) {
                outline.m(lx, ly);
            }
            outline.l(tx, ty).l(rx, ry);
        }
        outline.z();
        shadow(svg, surface, outline, r);
        if (surface == Surface.GLASS) {
            svg.fill(studio.volume(surface, colour), outline);
            svg.stroke(studio.tone(Tint.lighter(colour, 0.6)), r * 0.05, light);
        } else {
            svg.fill(studio.tone(Tint.lighter(colour, surface == Surface.MATTE ? 0.14 : 0.36)), light);
            svg.fill(surface == Surface.METALLIC ? studio.volume(surface, Tint.darker(colour, 0.2)) : studio.tone(Tint.darker(colour,
                    0.26)), dark);
        }
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, colour, Studio.randomFor("star"), new double[] {-r, 0, r, 2 * r}, 60, Math.max(1.2, r * 0.045),
                    (x, y) -> Math.hypot(x, y - cy) < r * 0.56);
        }
        gleam(svg, surface, -r * 0.16, cy - r * 0.2, r * 0.16);
    }

    private void snowflake(Svg svg, Surface surface, String colour, double r) {
        Path arms = Path.fine();
        for (int i = 0; i < 6; i++) {
            arms.place(0, r, i * Math.PI / 3).m(0, 0).l(0, -r * 0.97);
            for (double t : new double[] {0.36, 0.58, 0.8}) {
                double s = r * (0.36 - 0.26 * Math.abs(t - 0.5));
                arms.m(-s * 0.8, -r * t - s * 0.62).l(0, -r * t).l(s * 0.8, -r * t - s * 0.62);
            }
            arms.m(0, -r * 0.2).l(r * 0.173, -r * 0.1);
        }
        double w = Math.max(1.6, r * 0.085);
        svg.raw("<g stroke-linecap=\"round\" stroke-linejoin=\"round\">");
        svg.raw("<g transform=\"translate(2 3)\">").stroke("#06110b", w, 0.35, arms).raw("</g>");
        svg.stroke(studio.tone(Tint.darker(colour, 0.24)), w, arms);
        svg.raw("<g transform=\"translate(-.5 -.6)\">").stroke(studio.tone(Tint.lighter(colour, surface == Surface.MATTE ? 0.1 : 0.5)),
                w * 0.55, arms).raw("</g></g>");
        if (surface == Surface.GLITTER || surface == Surface.METALLIC) {
            Sparkle.disc(svg, studio, colour, Studio.randomFor("flake"), r * 0.2, 8, w * 0.5);
        }
    }

    private void acorn(Svg svg, Surface surface, String colour, String second, double w, double h) {
        String capColour = second == null ? Tint.mix(colour, "#4a3524", 0.62) : second;
        Path nut = Path.fine().m(-w * 0.84, h * 0.34).c(-w * 0.9, h * 0.7, -w * 0.4, h * 0.9, 0, h).c(w * 0.4, h * 0.9, w * 0.9, h * 0.7,
                w * 0.84, h * 0.34).z();
        Path cup = Path.fine().m(-w, h * 0.38).c(-w * 1.04, h * 0.1, -w * 0.4, h * 0.06, 0, h * 0.06).c(w * 0.4, h * 0.06, w * 1.04,
                h * 0.1, w, h * 0.38)
                .c(w * 0.5, h * 0.47, -w * 0.5, h * 0.47, -w, h * 0.38).z();
        shadow(svg, surface, nut, w);
        svg.fill(studio.volume(surface, colour), nut);
        finish(svg, surface, colour, 0, h * 0.6, w * 0.8, h * 0.34);
        svg.stroke(studio.tone(capColour), Math.max(2, w * 0.14), Path.fine().m(0, h * 0.08).q(w * 0.05, 0, 0, -h * 0.02));
        svg.fill(studio.volume(Surface.MATTE, capColour), cup);
        Path scales = Path.fine();
        for (int row = 0; row < 4; row++) {
            double y = h * (0.14 + row * 0.08);
            double half = w * (0.5 + row * 0.14);
            int n = 4 + row;
            for (int i = 0; i < n; i++) {
                double x = -half + 2 * half * (i + 0.5) / n;
                scales.m(x - half / n, y).q(x, y + h * 0.08, x + half / n, y);
            }
        }
        svg.stroke(studio.tone(Tint.lighter(capColour, 0.3)), Math.max(0.8, w * 0.05), 0.8, scales);
    }

    private void pinecone(Svg svg, Surface surface, String colour, String second, double w, double h) {
        String tip = second == null ? Tint.lighter(colour, 0.4) : second;
        svg.ellipse("#06110b", 0.34, 4, h * 0.54, w * 0.95, h * 0.48);
        svg.ellipse(studio.tone(Tint.darker(colour, 0.5)), 1, 0, h * 0.5, w * 0.8, h * 0.47);
        int rows = 9;
        for (int row = rows - 1; row >= 0; row--) {
            double t = (row + 0.5) / rows;
            double half = w * Math.sin(Math.PI * (0.16 + 0.8 * Math.pow(1 - t, 0.8))) * 0.98;
            int n = row % 2 == 0 ? 4 : 5;
            double size = half / n * 1.5 + w * 0.06;
            Path scales = Path.fine();
            Path rims = Path.fine();
            for (int i = 0; i < n; i++) {
                double u = n == 1 ? 0 : -1 + 2.0 * i / (n - 1);
                double x = Math.sin(u * 1.35) * half * 0.82;
                double s = size * (0.55 + 0.45 * Math.cos(u * 1.2));
                double y = h * (0.02 + 0.92 * t);
                scales.m(x - s * 0.5, y - s * 0.2).c(x - s, y + s * 0.5, x - s * 0.5, y + s, x + u * s * 0.3, y + s * 1.05)
                        .c(x + s * 0.5, y + s, x + s, y + s * 0.5, x + s * 0.5, y - s * 0.2).z();
                rims.m(x - s * 0.74, y + s * 0.6).q(x - s * 0.3, y + s * 1.04, x + u * s * 0.3, y + s * 1.05).q(x + s * 0.4, y + s * 1.02,
                        x + s * 0.74, y + s * 0.6);
            }
            svg.raw("<path stroke=\"").raw(studio.tone(Tint.darker(colour, 0.55))).raw("\"").attr("stroke-width", Math.max(0.6, w * 0.03))
                    .raw(" fill=\"").raw(surface == Surface.NATURAL || surface == Surface.MATTE ? studio.tone(Tint.darker(colour,
                            0.1 * (row % 2)))
                            : studio.volume(surface, colour)).raw("\" d=\"").raw(scales.d()).raw("\"/>");
            svg.stroke(studio.tone(tip), Math.max(1, w * 0.07), 0.85, rims);
        }
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, colour, Studio.randomFor("cone"), new double[] {-w, 0, w, h}, 60, Math.max(1.2, w * 0.06),
                    (x, y) -> Math.hypot(x / w, (y - h / 2) / (h / 2)) < 0.9);
        }
        cap(svg, 0, h * 0.02, w * 0.16);
    }

    private void bell(Svg svg, Surface surface, String colour, String second, double w, double h) {
        Path body = Path.fine().m(0, h * 0.02).c(w * 0.6, h * 0.02, w * 0.56, h * 0.36, w * 0.66, h * 0.62).c(w * 0.74, h * 0.76, w * 0.94,
                h * 0.78, w, h * 0.86)
                .c(w * 0.5, h * 0.98, -w * 0.5, h * 0.98, -w, h * 0.86).c(-w * 0.94, h * 0.78, -w * 0.74, h * 0.76, -w * 0.66, h * 0.62)
                .c(-w * 0.56, h * 0.36, -w * 0.6, h * 0.02, 0, h * 0.02).z();
        shadow(svg, surface, body, w);
        cap(svg, 0, h * 0.04, w * 0.15);
        svg.circle(studio.volume(Surface.SHINY, second == null ? BRASS : second), 0, h * 0.97, w * 0.17);
        svg.fill(studio.volume(surface, colour), body);
        svg.ellipse(studio.tone(Tint.darker(colour, 0.5)), 0.9, 0, h * 0.872, w * 0.86, h * 0.052);
        svg.circle(studio.volume(Surface.SHINY, second == null ? BRASS : second), 0, h * 0.95, w * 0.16);
        svg.stroke(studio.tone(Tint.lighter(colour, 0.45)), Math.max(1, w * 0.05), 0.8, Path.fine().m(-w * 0.7, h * 0.68).c(-w * 0.3,
                h * 0.76, w * 0.3, h * 0.76, w * 0.7, h * 0.68));
        finish(svg, surface, colour, -w * 0.04, h * 0.4, w * 0.6, h * 0.36);
    }

    void bird(Svg svg, Surface surface, String colour, String second, double width) {
        double w = width;
        String belly = second == null ? Tint.lighter(colour, 0.62) : second;
        svg.stroke(studio.tone("#4b3a2c"), w * 0.018, Path.fine().m(-w * 0.02, 0).l(0, -w * 0.1).m(w * 0.06, 0).l(w * 0.05, -w * 0.1));
        svg.fill(studio.tone(Tint.darker(colour, 0.3)), Path.fine().m(-w * 0.2, -w * 0.2).l(-w * 0.52, -w * 0.06).l(-w * 0.5, 0)
                .l(-w * 0.1, -w * 0.12).z());
        Path body = Path.fine().m(-w * 0.26, -w * 0.16).c(-w * 0.2, -w * 0.34, 0, -w * 0.42, w * 0.12, -w * 0.46).c(w * 0.16, -w * 0.64,
                w * 0.4, -w * 0.64, w * 0.41, -w * 0.46)
                .c(w * 0.42, -w * 0.3, w * 0.34, -w * 0.07, w * 0.06, -w * 0.05).c(-w * 0.1, -w * 0.04, -w * 0.22, -w * 0.08, -w * 0.26,
                        -w * 0.16).z();
        svg.fill(studio.volume(surface, colour), body);
        svg.fill(studio.tone(belly), 0.9, Path.fine().m(w * 0.36, -w * 0.42).c(w * 0.42, -w * 0.3, w * 0.32, -w * 0.08, w * 0.06,
                -w * 0.06).c(w * 0.16, -w * 0.2, w * 0.24, -w * 0.36, w * 0.36, -w * 0.42).z());
        svg.fill(studio.tone(Tint.darker(colour, 0.26)), Path.fine().m(w * 0.12, -w * 0.36).c(w * 0.16, -w * 0.2, -w * 0.06, -w * 0.08,
                -w * 0.4, -w * 0.1).c(-w * 0.24, -w * 0.2, -w * 0.1, -w * 0.38, w * 0.12, -w * 0.36).z());
        svg.stroke(studio.tone(Tint.lighter(colour, 0.3)), w * 0.012, 0.8, Path.fine().m(w * 0.06, -w * 0.3).q(-w * 0.04, -w * 0.2,
                -w * 0.26, -w * 0.13)
                .m(w * 0.08, -w * 0.25).q(0, -w * 0.17, -w * 0.18, -w * 0.12));
        svg.fill(studio.tone("#c58a35"), Path.fine().m(w * 0.4, -w * 0.52).l(w * 0.5, -w * 0.47).l(w * 0.4, -w * 0.45).z());
        svg.circle("#15110f", w * 0.32, -w * 0.5, w * 0.022).circle("#ffffff", w * 0.314, -w * 0.508, w * 0.008);
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, colour, Studio.randomFor("bird"), new double[] {-w * 0.2, -w * 0.4, w * 0.3, -w * 0.08}, 40,
                    w * 0.016, (x, y) -> true);
        }
    }

    private void cap(Svg svg, double x, double y, double half) {
        svg.raw("<rect fill=\"").raw(studio.volume(Surface.METALLIC, BRASS)).raw("\"").attr("x", x - half).attr("y", y - half * 0.9)
                .attr("width", half * 2).attr("height", half * 1.4).attr("rx", half * 0.3).raw("/>");
    }

    private static void shadow(Svg svg, Surface surface, Path body, double w) {
        if (surface != Surface.GLASS) {
            svg.raw("<g transform=\"translate(").num(w * 0.1).raw(" ").num(w * 0.15).raw(")\">").fill("#06110b", 0.32, body).raw("</g>");
        }
    }

    /** What lies on the surface of a round body: highlight, rim light, specks. */
    private void finish(Svg svg, Surface surface, String colour, double x, double y, double rx, double ry) {
        switch (surface) {
            case SHINY -> {
                gleam(svg, surface, x - rx * 0.36, y - ry * 0.44, Math.min(rx, ry) * 0.24);
                svg.stroke(studio.tone(Tint.lighter(colour, 0.6)), Math.min(rx, ry) * 0.06, 0.6,
                        Path.fine().m(x + rx * 0.1, y + ry * 0.88).q(x + rx * 0.66, y + ry * 0.78, x + rx * 0.84, y + ry * 0.24));
            }
            case GLASS -> {
                gleam(svg, surface, x - rx * 0.38, y - ry * 0.44, Math.min(rx, ry) * 0.22);
                svg.stroke("#ffffff", Math.min(rx, ry) * 0.07, studio.evening() ? 0.45 : 0.8,
                        Path.fine().m(x - rx * 0.8, y + ry * 0.1).q(x - rx * 0.76, y - ry * 0.56, x - rx * 0.2, y - ry * 0.82)
                                .m(x + rx * 0.2, y + ry * 0.82).q(x + rx * 0.68, y + ry * 0.66, x + rx * 0.8, y + ry * 0.16));
            }
            case METALLIC -> gleam(svg, surface, x - rx * 0.3, y - ry * 0.5, Math.min(rx, ry) * 0.17);
            case NATURAL -> {
                Path grain = Path.fine();
                for (int i = -2; i <= 2; i++) {
                    double bow = rx * 0.42 * i;
                    grain.m(x + bow * 0.5, y - ry * 0.9).q(x + bow * 1.25, y, x + bow * 0.5, y + ry * 0.9);
                }
                svg.stroke(studio.tone(Tint.darker(colour, 0.5)), Math.max(0.8, Math.min(rx, ry) * 0.035), 0.5, grain);
            }
            case GLITTER -> Sparkle.within(svg, studio, colour, Studio.randomFor("g" + Math.round(rx)), new double[] {x - rx, y - ry, x
                    + rx, y + ry}, 100,
                    Math.max(1.1, Math.min(rx, ry) * 0.05), (a, b) -> Math.hypot((a - x) / rx, (b - y) / ry) < 0.94);
            default -> { }
        }
    }

    private void gleam(Svg svg, Surface surface, double x, double y, double r) {
        if (surface == Surface.SHINY || surface == Surface.GLASS || surface == Surface.METALLIC) {
            svg.raw("<g transform=\"translate(").num(x).raw(" ").num(y).raw(") rotate(-38)\">")
                    .ellipse("#ffffff", studio.evening() ? 0.5 : 0.86, 0, 0, r, r * 0.56).raw("</g>");
        }
    }
}
