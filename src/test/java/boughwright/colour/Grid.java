package boughwright.colour;

/** The 4,913 colours whose parts are multiples of 16 (the last one 255), spread evenly over sRGB. */
final class Grid {

    private Grid() {
    }

    static Srgb colour(int index) {
        return new Srgb(part(index), part(index / 17), part(index / 289));
    }

    private static int part(int index) {
        return Math.min(255, index % 17 * 16);
    }
}
