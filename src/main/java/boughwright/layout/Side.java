package boughwright.layout;

import boughwright.brief.Word;

/** A quarter of the tree as one stands before it, each an eighth of the way round to either side of 6, 3, 12 and 9 o'clock. */
public enum Side implements Word {
    FRONT, RIGHT, BACK, LEFT;

    /** @param clock in (0, 12] */
    static Side of(double clock) {
        double fromFront = (7.5 - clock + 12) % 12;
        return values()[(int) (fromFront / 3) % 4];
    }
}
