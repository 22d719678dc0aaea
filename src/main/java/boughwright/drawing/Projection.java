package boughwright.drawing;

/**
 * Straight-on view of the world from one side: right is the picture's x, up its negative y, near is how far a point lies
 * toward the viewer. No vanishing point, so that one ruler holds for the whole picture. Picture units are millimetres.
 */
record Projection(View view) {

    /** Picture x, mm, of a point in metres. */
    double x(double x, double z) {
        return 1000 * right(x, z);
    }

    /** Picture y, mm; the floor is 0, up is negative. */
    double y(double y) {
        return -1000 * y;
    }

    /** Metres to the viewer's right. */
    double right(double x, double z) {
        return switch (view) {
            case FRONT -> x;
            case LEFT -> z;
            case RIGHT -> -z;
            case BACK -> -x;
        };
    }

    /** Metres toward the viewer. */
    double near(double x, double z) {
        return switch (view) {
            case FRONT -> z;
            case LEFT -> -x;
            case RIGHT -> x;
            case BACK -> -z;
        };
    }
}
