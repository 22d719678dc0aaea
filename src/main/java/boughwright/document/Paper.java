package boughwright.document;

import boughwright.measure.Units;

/** Sizes of paper that a shop's printer holds; upright. */
public enum Paper {
    /** 8.5 × 11 in. */
    LETTER(612, 792),
    /** 210 × 297 mm (ISO 216). */
    A4(595.276, 841.89);

    /** Room that page 1 leaves for the picture beside its column of facts, and below its title, points. */
    private static final double BESIDE_PICTURE = 268;
    private static final double ABOVE_AND_BELOW_PICTURE = 232;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** What is usual where people measure in these units. */
    public static Paper of(Units units) {
        return units == Units.FEET ? LETTER : A4;
    }

    /** Points (1/72 in). */
    double width() {
        return width;
    }

    /** Points. */
    double height() {
        return height;
    }

    double pictureWidth() {
        return width - BESIDE_PICTURE;
    }

    double pictureHeight() {
        return height - ABOVE_AND_BELOW_PICTURE;
    }
}
