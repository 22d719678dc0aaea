package boughwright.brief;

/**
 * How a tree's width stands to its height: what makes it slim or wide.
 *
 * <p>The classes are those of the trade's reading of the USDA grade standard for Christmas trees: below 40 % "candlestick", 40 to
 * 90 % normal, above 90 % "flared" (Bishop &amp; Mathews, "Tree taper"). How the boughs stand in each is common practice, no
 * published source: those of a slim tree rise, those of a flared one hang.
 */
public enum Taper implements Word {
    CANDLESTICK(0.45), NORMAL(1), FLARED(1.2);

    private final double droop;

    Taper(double droop) {
        this.droop = droop;
    }

    /** How far boughs hang toward their tips, as a share of what they do on a tree of normal taper. */
    public double droop() {
        return droop;
    }

    /** @param widthToHeight widest diameter over height */
    public static Taper of(double widthToHeight) {
        return widthToHeight < 0.40 ? CANDLESTICK : widthToHeight <= 0.90 ? NORMAL : FLARED;
    }
}
