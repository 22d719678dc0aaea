package boughwright.brief;

import boughwright.measure.Length;

/**
 * The customer's tree.
 *
 * @param height floor to tip, {@link #LEAST_HEIGHT} to {@link #GREATEST_HEIGHT}
 * @param widestDiameter at the lowest branches
 * @param lit the tree already has its lights
 * @param real a cut tree rather than an artificial one
 */
public record Tree(Length height, Length widestDiameter, Fullness fullness, SeenFrom seenFrom, boolean lit, boolean real) {

    public static final Length LEAST_HEIGHT = Length.ofFeet(3);
    public static final Length GREATEST_HEIGHT = Length.ofFeet(20);

    /**
     * Narrowest and widest diameter over height that is taken for a tree. A pencil tree is about 0.23 (Treetopia 2016, 19 in on
     * 7 ft); "flared" trees begin at 0.90 (USDA grade standard as quoted by Bishop &amp; Mathews). The limits leave room about both.
     */
    public static final double NARROWEST = 0.15;
    public static final double WIDEST = 1.0;

    public static Length usualDiameter(Length height, Fullness fullness) {
        return new Length(height.metres() * fullness.widthToHeight());
    }

    public TreeForm form() {
        return TreeForm.of(height, widestDiameter);
    }

    /** The surface that is seen and so dressed, m². */
    public double dressedArea() {
        return form().cone().area() * seenFrom.share();
    }

    public Tree withHeight(Length other) {
        return new Tree(other, widestDiameter, fullness, seenFrom, lit, real);
    }
}
