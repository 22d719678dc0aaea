package boughwright.drawing;

/** Petal outlines round the origin. Angles in radians clockwise from straight up; lengths in the shape's units. */
final class Petals {

    private Petals() { }

    /** A broad petal, its greatest width at the share of its length, pointed by sharp in [0 round .. 1 pointed]. */
    static Path petal(double angle, double from, double length, double half, double widest, double sharp) {
        Path p = Path.fine().place(0, 0, angle);
        add(p, from, length, half, widest, sharp);
        return p;
    }

    static void add(Path p, double from, double length, double half, double widest, double sharp) {
        double top = -length;
        double wide = -(from + (length - from) * widest);
        double tipX = half * (0.72 - 0.66 * sharp);
        double tipY = top + (length - from) * 0.16 * sharp;
        p.m(0, -from).c(-half * 0.5, -from, -half, wide + (length - from) * 0.24, -half, wide)
                .c(-half, wide - (length - from) * 0.3, -tipX, tipY, 0, top)
                .c(tipX, tipY, half, wide - (length - from) * 0.3, half, wide)
                .c(half, wide + (length - from) * 0.24, half * 0.5, -from, 0, -from).z();
    }

    /** A petal with a frilled edge of three lobes. */
    static Path frilled(double angle, double from, double length, double half, double tilt) {
        double l = length - from;
        return Path.fine().place(0, 0, angle).m(0, -from)
                .c(-half * 0.6, -from - l * 0.1, -half * 1.1, -from - l * 0.45, -half, -from - l * 0.74)
                .c(-half * 0.96, -from - l * 0.98, -half * 0.5, -length * (1 + tilt), -half * 0.34, -from - l * 0.9)
                .c(-half * 0.2, -length * 1.05, half * 0.2, -length * (1.04 - tilt), half * 0.3, -from - l * 0.92)
                .c(half * 0.5, -length, half * 0.98, -from - l * 0.96, half, -from - l * 0.72)
                .c(half * 1.1, -from - l * 0.42, half * 0.6, -from - l * 0.1, 0, -from).z();
    }
}
