package boughwright.colour;

/**
 * Intensities of the sRGB primaries, linear in light: the joint through which every space here converts to every other. Neutral
 * colours have three equal parts.
 *
 * <p>0..1 is what a screen shows; parts outside belong to colours beyond its gamut and are kept as they are.
 *
 * @param r red
 * @param g green
 * @param b blue
 */
public record LinearRgb(double r, double g, double b) {

    /** What a part may stray from 0..1 by rounding in conversions: less than a hundredth of an 8-bit step, and far above 1e-15. */
    private static final double ROUNDING = 1e-6;

    /** The transfer function of IEC 61966-2-1 undone. */
    public static LinearRgb of(Srgb colour) {
        return new LinearRgb(Srgb.linear(colour.red()), Srgb.linear(colour.green()), Srgb.linear(colour.blue()));
    }

    /** Whether sRGB can show it; rounding in conversions is forgiven up to 1e-6. */
    public boolean inGamut() {
        return within(-ROUNDING, 1 + ROUNDING);
    }

    /** Whether every part is within 0..1, to the last bit. */
    boolean exactlyInGamut() {
        return within(0, 1);
    }

    private boolean within(double least, double most) {
        return r >= least && r <= most && g >= least && g <= most && b >= least && b <= most;
    }

    /** Each part outside 0..1 brought to the nearer end, which may shift hue and lightness; {@link Oklch#mapped} keeps them better. */
    public LinearRgb clipped() {
        return new LinearRgb(clip(r), clip(g), clip(b));
    }

    private static double clip(double part) {
        return Math.max(0, Math.min(1, part));
    }

    /** The nearest 8-bit colour, parts clipped. For any {@link Srgb} s, {@code LinearRgb.of(s).toSrgb()} is s. */
    public Srgb toSrgb() {
        return new Srgb(Srgb.part(r), Srgb.part(g), Srgb.part(b));
    }
}
