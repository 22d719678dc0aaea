package boughwright.colour;

/** Angles of hue in degrees. */
final class Hue {

    private Hue() {
    }

    /** Direction of a point in a plane of colour, [0, 360), counted from the first axis towards the second. */
    static double degrees(double a, double b) {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        // A tiny negative angle plus 360 rounds to 360 itself.
        return degrees >= 0 ? degrees : degrees + 360 < 360 ? degrees + 360 : 0;
    }
}
