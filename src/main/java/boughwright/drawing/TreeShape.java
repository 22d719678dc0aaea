package boughwright.drawing;

import boughwright.brief.Fullness;
import boughwright.brief.TreeForm;

/**
 * The bare tree: a cone from the lowest branches to the tip.
 *
 * @param height       floor to tip, metres, above 0
 * @param widestRadius radius at the lowest branches, metres, above 0
 * @param lowestBranch height of the lowest branches above the floor, metres, in [0, height); about 8 % of the height
 * @param fullness     how densely it is branched
 * @throws IllegalArgumentException when a length lies outside its interval
 */
public record TreeShape(double height, double widestRadius, double lowestBranch, Fullness fullness) {

    public TreeShape {
        if (!(height > 0) || !(widestRadius > 0) || !(lowestBranch >= 0) || !(lowestBranch < height)
                || !Double.isFinite(height) || !Double.isFinite(widestRadius)) {
            throw new IllegalArgumentException("not a tree: height " + height + " m, widest radius " + widestRadius
                    + " m, lowest branch " + lowestBranch + " m");
        }
        if (fullness == null) {
            throw new IllegalArgumentException("a tree needs a fullness");
        }
    }

    /** A tree of the given height and widest diameter (metres) whose lowest branches are at 8 % of the height. */
    public static TreeShape of(double height, double widestDiameter, Fullness fullness) {
        return new TreeShape(height, widestDiameter / 2, height * TreeForm.LOWEST_BRANCH_SHARE, fullness);
    }

    /** Radius of the cone at height y, metres; 0 above the tip, the widest radius below the lowest branches. */
    public double radiusAt(double y) {
        double share = (height - y) / (height - lowestBranch);
        return widestRadius * Math.max(0, Math.min(1, share));
    }
}
