package boughwright.drawing;

import java.util.SplittableRandom;

/**
 * Stems and sprays, drawn growing straight up from the origin with a slight arch; length and head width in mm. Each
 * variant of a product differs in bend and in the set of its twigs.
 */
final class Sprays {

    private final Studio studio;
    private double length;
    private double half;
    private double bend;
    private String colour;
    private String second;
    private Surface surface;
    private SplittableRandom random;

    Sprays(Studio studio) {
        this.studio = studio;
    }

    void draw(Svg svg, Form form, Surface finish, String main, String other, double mm, double width, int variant) {
        length = mm;
        half = width / 2;
        random = Studio.randomFor(form.name() + main + variant);
        bend = length * (0.06 + 0.1 * random.nextDouble()) * (variant % 2 == 0 ? 1 : -1);
        colour = main;
        second = other;
        surface = finish;
        svg.raw("<g stroke-linecap=\"round\" stroke-linejoin=\"round\">");
        switch (form) {
            case BERRY_SPRAY -> berries(svg);
            case LEAF_SPRAY -> leaves(svg);
            case FERN_SPRAY -> fern(svg);
            case TWIG_SPRAY -> twigs(svg);
            case PINE_SPRAY -> pine(svg);
            case EUCALYPTUS_SPRAY -> eucalyptus(svg);
            case FEATHER_SPRAY -> feather(svg);
            case GRASS_SPRAY -> grass(svg);
            case CURL_SPRAY -> curls(svg);
            default -> throw new IllegalArgumentException(form + " is not a spray");
        }
        svg.raw("</g>");
    }

    private double x(double t) {
        return bend * t * t;
    }

    private double y(double t) {
        return -length * t;
    }

    /** Direction of the stem at t, radians clockwise from straight up. */
    private double angle(double t) {
        return Math.atan2(2 * bend * t, length);
    }

    private Path stem(double to) {
        return Path.coarse().m(0, 0).q(0, y(to) / 2, x(to), y(to));
    }

    private String lit() {
        return studio.tone(Tint.lighter(colour, switch (surface) {
            case MATTE, NATURAL -> 0.16;
            case SATIN, GLITTER -> 0.34;
            case SHINY, GLASS -> 0.46;
            case METALLIC -> 0.4;
        }));
    }

    private String shade() {
        return studio.tone(Tint.darker(colour, surface == Surface.METALLIC ? 0.26 : 0.22));
    }

    private String wood() {
        return studio.tone(second == null ? Tint.mix(colour, "#4a3222", 0.62) : Tint.mix(second, "#4a3222", 0.3));
    }

    private void berries(Svg svg) {
        double r = Math.max(3.2, Math.min(8, half * 0.085));
        Path twigs = stem(0.98);
        Path under = Path.coarse();
        Path fruit = Path.coarse();
        Path light = Path.coarse();
        int sides = 9;
        for (int i = 0; i <= sides; i++) {
            double t = 0.34 + 0.64 * i / sides;
            double side = i == sides ? 0 : i % 2 == 0 ? 1 : -1;
            double a = angle(t) + side * (0.5 + 0.4 * random.nextDouble());
            double reach = half * (1.15 - 0.55 * t) * (i == sides ? 0.3 : 0.75 + 0.35 * random.nextDouble());
            double ex = x(t) + Math.sin(a) * reach;
            double ey = y(t) - Math.cos(a) * reach;
            twigs.m(x(t), y(t)).q(x(t) + Math.sin(a) * reach * 0.4, y(t) - Math.cos(a) * reach * 0.6, ex, ey);
            for (int k = 0; k < 4; k++) {
                double s = 0.5 + 0.5 * k / 3;
                double off = (k % 2 == 0 ? 1 : -1) * r * 1.6;
                double bx = x(t) + (ex - x(t)) * s + Math.cos(a) * off;
                double by = y(t) + (ey - y(t)) * s + Math.sin(a) * off;
                under.dot(bx + r * 0.3, by + r * 0.4);
                fruit.dot(bx, by);
                light.dot(bx - r * 0.34, by - r * 0.36);
            }
        }
        svg.stroke(wood(), Math.max(2.2, length * 0.007), twigs);
        svg.stroke(studio.tone(Tint.darker(colour, 0.5)), r * 2.1, under);
        svg.stroke(studio.tone(colour), r * 2, fruit);
        svg.stroke(studio.tone(Tint.lighter(colour, surface == Surface.MATTE ? 0.25 : 0.62)), r * 0.66, light);
    }

    private void leaves(Svg svg) {
        svg.stroke(wood(), Math.max(2.4, length * 0.009), stem(0.96));
        Path light = Path.coarse();
        Path dark = Path.coarse();
        Path ribs = Path.coarse();
        int n = 15;
        for (int i = 0; i < n; i++) {
            double t = 0.26 + 0.74 * i / (n - 1);
            double side = i == n - 1 ? 0 : i % 2 == 0 ? 1 : -1;
            double a = angle(t) + side * (0.62 + 0.3 * random.nextDouble());
            double l = Math.min(length * 0.2, half * 1.0) * (1.1 - 0.4 * t) * (0.85 + 0.3 * random.nextDouble());
            leaf(side >= 0 ? dark : light, x(t), y(t), a, l, l * 0.25);
            ribs.place(x(t), y(t), a).m(0, -l * 0.08).l(0, -l * 0.82);
        }
        svg.fill(shade(), dark).fill(surface == Surface.METALLIC ? lit() : studio.tone(colour), light).stroke(lit(), Math.max(1,
                half * 0.016), 0.85, ribs);
        glitter(svg, 46);
    }

    private static void leaf(Path path, double x, double y, double angle, double l, double w) {
        path.place(x, y, angle).m(0, 0).c(-w, -l * 0.3, -w, -l * 0.66, 0, -l).c(w, -l * 0.66, w, -l * 0.3, 0, 0).z();
    }

    private void fern(Svg svg) {
        Path light = Path.coarse();
        Path dark = Path.coarse();
        int n = 17;
        for (int i = 0; i < n; i++) {
            double t = 0.2 + 0.78 * i / (n - 1);
            double grow = Math.sin(Math.PI * (0.2 + 0.76 * (double) i / (n - 1)));
            double l = half * 0.98 * grow + length * 0.01;
            for (int side = -1; side <= 1; side += 2) {
                double a = angle(t) + side * (1.12 - 0.42 * t);
                double w = Math.max(2.4, length * 0.0185) * Math.sqrt(grow);
                (side < 0 ? light : dark).place(x(t), y(t), a).m(-w * 0.4, 0).c(-w, -l * 0.4, -w * 0.7 - side * l * 0.04, -l * 0.8,
                        side * -l * 0.1, -l)
                        .c(w * 0.8, -l * 0.8, w, -l * 0.4, w * 0.6, 0).z();
            }
        }
        svg.fill(shade(), dark).fill(surface == Surface.METALLIC ? lit() : studio.tone(Tint.lighter(colour, 0.08)), light);
        svg.stroke(wood(), Math.max(2, length * 0.008), stem(0.98));
        svg.stroke(lit(), Math.max(0.8, length * 0.003), 0.8, stem(0.96));
        glitter(svg, 50);
    }

    private void twigs(Svg svg) {
        Path thick = stem(0.7);
        Path thin = Path.coarse();
        Path buds = Path.coarse();
        twig(thin, buds, 0, y(0.1), 0.06, length * 0.88, 0);
        twig(thin, buds, x(0.3), y(0.3), angle(0.3) - 0.36, length * 0.6, 1);
        twig(thin, buds, x(0.36), y(0.36), angle(0.36) + 0.4, length * 0.52, 1);
        twig(thin, buds, x(0.6), y(0.6), angle(0.6) - 0.1, length * 0.38, 1);
        double w = Math.max(2, length * 0.0085);
        svg.stroke(shade(), w * 1.3, thick).stroke(studio.tone(colour), w * 0.8, thin).stroke(lit(), w * 0.3, 0.8, thin);
        svg.stroke(second == null ? lit() : studio.tone(second), w * (surface == Surface.GLITTER ? 1.7 : 1.3), buds);
    }

    private void twig(Path path, Path buds, double x, double y, double angle, double l, int depth) {
        double reach = Math.min(l, Math.max(l * 0.5, half * 1.5));
        double kink = (random.nextDouble() - 0.5) * 0.24;
        double mx = x + Math.sin(angle) * reach * 0.5;
        double my = y - Math.cos(angle) * reach * 0.5;
        double ex = mx + Math.sin(angle + kink) * reach * 0.5;
        double ey = my - Math.cos(angle + kink) * reach * 0.5;
        path.m(x, y).l(mx, my).l(ex, ey);
        buds.dot(ex, ey).dot((mx + ex) / 2 + 2, (my + ey) / 2);
        if (depth < 3) {
            int side = random.nextBoolean() ? 1 : -1;
            twig(path, buds, mx, my, angle + side * (0.36 + 0.22 * random.nextDouble()), l * 0.5, depth + 1);
            twig(path, buds, (mx + ex) / 2, (my + ey) / 2, angle - side * (0.36 + 0.2 * random.nextDouble()), l * 0.36, depth + 1);
        }
    }

    private void pine(Svg svg) {
        Path stems = stem(0.96);
        Path dark = Path.coarse();
        Path light = Path.coarse();
        double needle = Math.min(length * 0.15, half * 0.55);
        needles(dark, light, 0, 0, 0.06, length * 0.97, needle, 30);
        for (int i = 0; i < 5; i++) {
            double t = 0.24 + 0.13 * i;
            int side = i % 2 == 0 ? 1 : -1;
            double a = angle(t) + side * 0.62;
            double l = half * (1.15 - 0.5 * t);
            stems.m(x(t), y(t)).l(x(t) + Math.sin(a) * l, y(t) - Math.cos(a) * l);
            needles(dark, light, x(t), y(t), a, l, needle * 0.9, 12);
        }
        svg.stroke(studio.tone(Tint.mix(colour, "#4a3222", 0.62)), Math.max(2.4, length * 0.01), stems);
        double w = Math.max(1.6, length * 0.006);
        svg.stroke(shade(), w * 1.1, dark).stroke(lit(), w * 0.8, light);
        if (second != null) {
            for (int i = 0; i < 3; i++) {
                svg.ellipse(studio.volume(Surface.NATURAL, second), 1, x(0.4) + (i - 1) * half * 0.26, y(0.36 + 0.1 * i), half * 0.15,
                        half * 0.21);
            }
        }
        glitter(svg, 40);
    }

    private void needles(Path dark, Path light, double x, double y, double angle, double l, double needle, int n) {
        for (int i = 0; i < n; i++) {
            double s = l * (0.12 + 0.88 * i / n);
            double px = x + Math.sin(angle) * s;
            double py = y - Math.cos(angle) * s;
            double off = Math.abs(px) > 0 && x == 0 ? x(s / length) - px : 0;
            for (int side = -1; side <= 1; side += 2) {
                double a = angle + side * (0.7 - 0.4 * i / n) + 0.2 * (random.nextDouble() - 0.5);
                (side < 0 ? light : dark).m(px + off, py).l(px + off + Math.sin(a) * needle, py - Math.cos(a) * needle);
            }
        }
    }

    private void eucalyptus(Svg svg) {
        svg.stroke(wood(), Math.max(2.2, length * 0.008), stem(0.99));
        Path ribs = Path.coarse();
        int pairs = 10;
        for (int i = 0; i < pairs; i++) {
            double t = 0.2 + 0.78 * i / (pairs - 1);
            double l = Math.min(half * 0.92, length * 0.12) * (1.08 - 0.62 * i / pairs);
            for (int side = -1; side <= 1; side += 2) {
                double a = angle(t) + side * (1.0 - 0.34 * t + 0.2 * random.nextDouble());
                double w = l * (0.44 + 0.1 * random.nextDouble());
                Path leaf = Path.coarse().place(x(t), y(t), a).m(0, 0).c(-w * 1.1, -l * 0.12, -w * 1.1, -l * 0.96, 0, -l).c(w * 1.1,
                        -l * 0.96, w * 1.1, -l * 0.12, 0, 0).z();
                String paint = side < 0 ? studio.tone(Tint.lighter(colour, 0.12 + 0.1 * random.nextDouble()))
                        : studio.tone(Tint.darker(colour, 0.06 + 0.12 * random.nextDouble()));
                svg.raw("<path fill=\"").raw(paint).raw("\" stroke=\"").raw(shade()).raw("\" stroke-width=\".8\" d=\"").raw(leaf.d())
                        .raw("\"/>");
                ribs.place(x(t), y(t), a).m(0, -l * 0.1).l(0, -l * 0.86);
            }
        }
        svg.stroke(lit(), Math.max(0.9, length * 0.0028), 0.9, ribs);
        glitter(svg, 46);
    }

    private void feather(Svg svg) {
        double w = half * 0.6;
        Path vane = Path.coarse().m(0, y(0.16)).c(-w * 0.9, y(0.22), -w * 1.2 + x(0.6), y(0.72), x(1), y(1)).c(w * 1.2 + x(0.6), y(0.74),
                w * 0.9, y(0.24), 0, y(0.16)).z();
        svg.fill(studio.linear(-w, 0, w, 0, Stop.of(0, lit()).fade(0.85), Stop.of(0.5, studio.tone(colour)).fade(0.92), Stop.of(1,
                shade()).fade(0.85)), vane);
        Path light = Path.coarse();
        Path dark = Path.coarse();
        int n = 40;
        for (int i = 0; i < n; i++) {
            double t = 0.14 + 0.84 * i / n;
            double l = w * 1.75 * Math.sin(Math.PI * (0.1 + 0.84 * i / n)) * (0.86 + 0.24 * random.nextDouble());
            for (int side = -1; side <= 1; side += 2) {
                double a = angle(t) + side * (0.86 - 0.34 * t);
                double ex = x(t) + Math.sin(a) * l;
                double ey = y(t) - Math.cos(a) * l;
                (side < 0 ? light : dark).m(x(t), y(t)).q(x(t) + Math.sin(a) * l * 0.7, y(t) - Math.cos(a) * l * 0.4, ex, ey);
            }
        }
        double s = Math.max(1, length * 0.006);
        svg.stroke(shade(), s, 0.8, dark).stroke(lit(), s, 0.9, light).stroke(studio.tone(Tint.lighter(colour, 0.55)), s * 1.5, stem(0.97));
        glitter(svg, 36);
    }

    private void grass(Svg svg) {
        Path dark = Path.coarse();
        Path light = Path.coarse();
        Path seeds = Path.coarse();
        int n = 9;
        for (int i = 0; i < n; i++) {
            double u = -1 + 2.0 * i / (n - 1);
            double l = length * (1 - 0.28 * Math.abs(u)) * (0.86 + 0.14 * random.nextDouble());
            double ex = u * half * 1.0;
            double ey = -l * (0.98 - 0.2 * u * u);
            double w = Math.max(1.8, length * 0.007);
            Path blade = i % 2 == 0 ? light : dark;
            blade.m(-w * 0.6, 0).q(ex * 0.15 - w, -l * 0.66, ex, ey).q(ex * 0.15 + w, -l * 0.62, w * 0.6, 0).z();
            if (i % 2 == 0) {
                for (int k = 0; k < 9; k++) {
                    double t = 0.72 + 0.03 * k;
                    double bx = 2 * t * (1 - t) * ex * 0.15 + t * t * ex;
                    double by = 2 * t * (1 - t) * -l * 0.64 + t * t * ey;
                    seeds.m(bx, by).l(bx + (k % 2 == 0 ? 1 : -1) * length * 0.014, by - length * 0.022);
                }
            }
        }
        svg.fill(shade(), dark).fill(surface == Surface.METALLIC ? lit() : studio.tone(colour), light)
                .stroke(second == null ? lit() : studio.tone(second), Math.max(2, length * 0.008), seeds);
        glitter(svg, 30);
    }

    private void curls(Svg svg) {
        Path wires = Path.coarse();
        Path tips = Path.coarse();
        for (int i = 0; i < 5; i++) {
            double u = -1 + i / 2.0;
            double l = length * (0.97 - 0.2 * Math.abs(u) - 0.08 * (i % 2));
            double r0 = half * (0.34 - 0.06 * (i % 2));
            int side = u < 0 || i == 2 && random.nextBoolean() ? -1 : 1;
            double cx = u * half * 0.62;
            double cy = -l + r0;
            double[][] spiral = new double[18][];
            for (int k = 0; k < spiral.length; k++) {
                double a = k * 0.62;
                double r = r0 * (1 - (double) k / spiral.length * 0.86);
                spiral[k] = new double[] {cx - side * Math.cos(a) * r, cy - Math.sin(a) * r};
            }
            wires.m(0, 0).q(u * half * 0.02, cy * 0.7, spiral[0][0], spiral[0][1]).through(spiral);
            double[] end = spiral[spiral.length - 1];
            tips.dot(end[0], end[1]);
        }
        double w = Math.max(2.2, length * 0.0085);
        svg.stroke(shade(), w, wires).stroke(lit(), w * 0.42, wires).stroke(second == null ? studio.tone(Tint.lighter(colour, 0.3))
                : studio.tone(second), w * 2.6, tips);
        glitter(svg, 24);
    }

    private void glitter(Svg svg, int count) {
        if (surface == Surface.GLITTER) {
            Sparkle.within(svg, studio, colour, random, new double[] {-half, -length, half, -length * 0.25}, count, Math.max(1.6,
                    length * 0.0055), (px, py) -> {
                double t = -py / length;
                return Math.abs(px - x(t)) < half * 0.62 * Math.sin(Math.PI * Math.min(1, 0.1 + 0.85 * t));
            });
        }
    }
}
