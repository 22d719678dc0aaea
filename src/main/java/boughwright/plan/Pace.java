package boughwright.plan;

/** Minutes that one thing takes a person doing it for the first time (common practice, no published source). */
final class Pace {

    static final double STRING_OF_LIGHTS = 7;
    static final double GROUPING = 6;
    static final double CUT_RUN = 1;
    static final double LAY_RUN = 3;
    static final double BIND_CLUSTER = 3;
    static final double SET_CLUSTER = 2;
    static final double STEM = 1;
    static final double FILLER = 0.5;
    static final double FEATURE = 0.8;
    static final double ACCENT = 3;

    private Pace() {
    }

    /** Whole minutes, at least one. */
    static int minutes(double each, int count) {
        return Math.max(1, (int) Math.ceil(each * count - 1e-9));
    }
}
