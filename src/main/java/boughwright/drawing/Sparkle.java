package boughwright.drawing;

import java.util.SplittableRandom;
import java.util.function.BiPredicate;

/** Glitter: specks lighter and darker than the ground they lie on. */
final class Sparkle {

    private Sparkle() { }

    static void disc(Svg svg, Studio studio, String colour, SplittableRandom random, double r, int count, double size) {
        within(svg, studio, colour, random, new double[] {-r, -r, r, r}, count, size, (x, y) -> x * x + y * y < r * r);
    }

    /** Specks at random in the part of the box {left, top, right, bottom} that lies inside. */
    static void within(Svg svg, Studio studio, String colour, SplittableRandom random, double[] box, int count, double size,
                       BiPredicate<Double, Double> inside) {
        Path bright = Path.fine();
        Path dark = Path.fine();
        int bound = count * 4;
        for (int placed = 0; placed < count && bound > 0; bound--) {
            double x = box[0] + random.nextDouble() * (box[2] - box[0]);
            double y = box[1] + random.nextDouble() * (box[3] - box[1]);
            if (inside.test(x, y)) {
                (placed % 3 == 0 ? dark : bright).dot(x, y);
                placed++;
            }
        }
        along(svg, studio, colour, bright, dark, size);
    }

    /** Specks at given dots. */
    static void along(Svg svg, Studio studio, String colour, Path bright, Path dark, double size) {
        svg.raw("<g stroke-linecap=\"round\">");
        svg.stroke(studio.tone(Tint.darker(colour, 0.35)), size, 0.8, dark);
        svg.stroke(studio.tone(Tint.lighter(colour, 0.78)), size, bright);
        svg.raw("</g>");
    }
}
