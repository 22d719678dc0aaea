package boughwright.photo;

/**
 * A picture made small.
 *
 * @param argb row by row from the top, 8-bit sRGB with straight alpha in the highest byte
 */
record Pixels(int width, int height, int[] argb) {

    int count() {
        return argb.length;
    }

    /** Less than half covered counts as transparent. */
    boolean transparent(int at) {
        return argb[at] >>> 24 < 128;
    }
}
