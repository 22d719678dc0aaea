package boughwright.brief;

/** How densely a tree is branched. */
public enum Fullness implements Word {
    SPARSE(0.46), MEDIUM(62.0 / 108), FULL(0.61);

    private final double widthToHeight;

    Fullness(double widthToHeight) {
        this.widthToHeight = widthToHeight;
    }

    /**
     * Widest diameter over height of a tree of this fullness when nobody has measured it.
     *
     * <p>Medium is 62 in on 9 ft, between the slim (below 0.56) and the full (0.60 and above) of a retailer's guide to 7 ft
     * trees (Treetopia, "Christmas Tree 101: Full, Slim, Pencil", 14 April 2016); all three are "normal taper", 0.40 to 0.90.
     */
    public double widthToHeight() {
        return widthToHeight;
    }
}
