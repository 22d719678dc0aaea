package boughwright.drawing;

/**
 * Straight-on view of the world from one side or from above: right is the picture's x, up its negative y, near is how far
 * a point lies toward the viewer. No vanishing point, so that one ruler holds for the whole picture. Picture units are
 * millimetres.
 */
record Projection(View view) {

    /** Picture x, mm, of a point in metres. */
    double x(double x, double z) {
        return 1000 * right(x, z);
    }

    /** Picture y, mm, seen from a side; the floor is 0, up is negative. */
    double y(double y) {
        return -1000 * y;
    }

    /** Metres to the viewer's right. */
    double right(double x, double z) {
        return switch (view) {
            case FRONT, ABOVE -> x;
            case LEFT -> z;
            case RIGHT -> -z;
            case BACK -> -x;
        };
    }

    /** Metres toward a viewer at one side; from above, toward the picture's foot. */
    double near(double x, double z) {
        return switch (view) {
            case FRONT, ABOVE -> z;
            case LEFT -> -x;
            case RIGHT -> x;
            case BACK -> -z;
        };
    }

    /** Metres to the viewer's right, of a point or a direction. */
    double right(double[] p) {
        return right(p[0], p[2]);
    }

    /** Metres up in the picture. */
    double up(double[] p) {
        return view == View.ABOVE ? -p[2] : p[1];
    }

    /** Metres toward the viewer. */
    double near(double[] p) {
        return view == View.ABOVE ? p[1] : near(p[0], p[2]);
    }
}
