package boughwright.document;

import boughwright.measure.Units;

/** The sheets that a plan is printed on. */
public enum Paper {
    LETTER, A4;

    /** What is usual where people measure in these units. */
    public static Paper of(Units units) {
        return units == Units.FEET ? LETTER : A4;
    }
}
