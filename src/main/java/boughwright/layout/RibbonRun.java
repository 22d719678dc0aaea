package boughwright.layout;

import java.util.List;

/**
 * One run of the two body ribbons, pinched together and laid as one.
 *
 * @param baseSku of the open weave beneath; empty when the scheme has none
 * @param overlaySku of the ribbon on it; empty when the scheme has none
 * @param height of its first pinch above the floor, metres
 * @param clock of its first pinch
 * @param points the ribbon's middle line from the free end of its first tail to that of its last, metres in room coordinates
 * @param loops large loops, at least 2
 * @param smallLoops between them
 * @param bow where it has a two-loop bow: {@code start}, {@code end} or {@code none}
 * @param length that is cut for it, metres; the drawn line has the same length within 2 %
 */
public record RibbonRun(
        String id, String baseSku, String overlaySku, double height, double clock, List<Point> points, int loops, int smallLoops, String bow,
        double length) {

    public RibbonRun {
        points = List.copyOf(points);
    }

    /** Length of the drawn line, metres. */
    public double drawnLength() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i).distance(points.get(i - 1));
        }
        return sum;
    }
}
