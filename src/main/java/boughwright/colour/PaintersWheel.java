package boughwright.colour;

import java.util.stream.IntStream;

/**
 * The wheel of painters, on which red faces green, yellow violet and blue orange (J. Itten, "Kunst der Farbe", 1961).
 *
 * <p>OKLCH spaces hues as they differ for the eye and has red and green a third of the ring apart, where everybody who decorates calls
 * them opposites. Positions are degrees: red 0, yellow 120, blue 240. They come from the OKLCH hues of the twelve colours of the
 * wheel as it is commonly drawn in sRGB (values from memory), straight between neighbours.
 */
final class PaintersWheel {

    /** OKLCH hues of red, orange-red, orange, amber, yellow, yellow-green, green, blue-green, blue, indigo, violet, purple. */
    private static final double[] HUES = hues("#fe2712", "#fc600a", "#fb9902", "#fccc1a", "#fefe33", "#b2d732", "#66b032", "#347c98", "#0247fe", "#4424d6",
            "#8601af", "#c21460");
    static final int PARTS = HUES.length;
    private static final double STEP = 360.0 / PARTS;

    private PaintersWheel() {
    }

    private static double[] hues(String... colours) {
        return IntStream.range(0, colours.length).mapToDouble(i -> Oklab.of(Srgb.read(colours[i]).orElseThrow()).hue()).toArray();
    }

    /** @param hue of OKLCH, degrees @return degrees in [0, 360) */
    static double position(double hue) {
        for (int i = 0; i < PARTS; i++) {
            double span = turn(HUES[i], HUES[(i + 1) % PARTS]);
            double along = turn(HUES[i], hue);
            if (along < span) {
                return (i + along / span) * STEP;
            }
        }
        throw new IllegalStateException("the wheel is closed");
    }

    /** The twelfth of the wheel whose middle is nearest: 0 red, 1 orange-red, … 11 purple. */
    static int part(double position) {
        return (int) Math.round(position / STEP) % PARTS;
    }

    /** How far the one has to turn forward to the other, [0, 360). */
    private static double turn(double from, double to) {
        double turn = (to - from) % 360;
        return turn < 0 ? turn + 360 : turn;
    }

    /** Degrees between two positions, 0 to 180. */
    static double apart(double one, double other) {
        double turn = turn(one, other);
        return Math.min(turn, 360 - turn);
    }
}
