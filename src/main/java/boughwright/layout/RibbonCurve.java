package boughwright.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * The middle line of one run of ribbon as it is laid: tails, loops and bows, each with exactly its cut length.
 *
 * <p>The run starts at its first pinch and works its way down the slant, swaying a little from side to side. Between two pinches
 * a loop stands out from the branches as a half sine, lower than its pinches by a third of how far it stands out; how far that
 * is follows from the ribbon that the loop takes, found by bisection on the length of the drawn line.
 */
final class RibbonCurve {

    private static final int STEPS = 14;
    /** Where ribbon is pinched into the tree. */
    private static final double PINCH_DEPTH = 0.9;

    private final Surface surface;
    private final List<Point> points = new ArrayList<>();
    private double slant;
    private double angle;

    RibbonCurve(Surface surface, double slant, double angle) {
        this.surface = surface;
        this.slant = slant;
        this.angle = angle;
    }

    List<Point> points() {
        return List.copyOf(points);
    }

    /** A point at offsets from the present pinch: metres down the slant, sideways (+ toward 3 o'clock) and out. */
    private Point at(double down, double side, double out) {
        double there = Math.max(0.02, slant + down);
        double radius = Math.max(0.04, surface.radius(there));
        return surface.proud(there, angle + side / radius, radius * PINCH_DEPTH + out);
    }

    /** A shape of one part of the run: where it is at a share 0..1 of its way when it is blown up to {@code size} metres. */
    private interface Shape {
        Point at(double share, double size);
    }

    private void draw(double length, double most, Shape shape) {
        double small = 0;
        double large = most;
        for (int i = 0; i < 40; i++) {
            double middle = (small + large) / 2;
            if (lengthOf(shape, middle) < length) {
                small = middle;
            } else {
                large = middle;
            }
        }
        for (int i = points.isEmpty() ? 0 : 1; i <= STEPS; i++) {
            points.add(shape.at(i / (double) STEPS, large));
        }
    }

    private static double lengthOf(Shape shape, double size) {
        double sum = 0;
        Point before = shape.at(0, size);
        for (int i = 1; i <= STEPS; i++) {
            Point next = shape.at(i / (double) STEPS, size);
            sum += next.distance(before);
            before = next;
        }
        return sum;
    }

    /** The tail above the first pinch, lying off to one side. */
    RibbonCurve firstTail(double length, int side) {
        draw(length, 3, (s, size) -> {
            double back = 1 - s;
            return at(-0.25 * size * back, side * size * back, 0.35 * size * Math.sin(Math.PI * back / 1.6) * back);
        });
        return this;
    }

    /** The tail below the last pinch, hanging free. */
    RibbonCurve lastTail(double length, int side) {
        draw(length, 3, (s, size) -> at(size * s, side * 0.35 * size * s, 0.3 * size * Math.sin(Math.PI * s / 1.4)));
        return this;
    }

    /**
     * A loop from this pinch to the next.
     *
     * @param span metres down the slant between the pinches
     * @param sway metres sideways between them, + toward 3 o'clock
     */
    RibbonCurve loop(double length, double span, double sway) {
        draw(length, 3, (s, size) -> {
            double stand = size * Math.sin(Math.PI * s);
            return at(span * s + stand / 3, sway * s, stand);
        });
        angle += sway / Math.max(0.04, surface.radius(slant + span));
        slant += span;
        return this;
    }

    /** A two-loop bow at this pinch, one loop to either side. */
    RibbonCurve bow(double loopLength) {
        for (int side : new int[] {-1, 1}) {
            draw(loopLength, 3, (s, size) -> {
                double round = 2 * Math.PI * s;
                return at(0.3 * size * Math.sin(round) * side, side * size * (1 - Math.cos(round)) / 2, 0.45 * size * Math.sin(Math.PI * s));
            });
        }
        return this;
    }
}
