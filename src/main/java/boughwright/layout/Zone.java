package boughwright.layout;

import boughwright.brief.Word;

/**
 * How far out a piece sits. Two pieces of one zone never overlap; pieces of different zones may lie behind one another, which is
 * what gives a tree depth. The crown is one bouquet, whose stems touch by design; so do the four stems of one cluster.
 */
public enum Zone implements Word {
    DEEP(0.60), MIDDLE(0.82), OUTER(0.93), TIP(1.0), CROWN(0.5);

    private final double depth;

    Zone(double depth) {
        this.depth = depth;
    }

    /** 0 at the trunk, 1 at the branch tips. */
    public double depth() {
        return depth;
    }
}
