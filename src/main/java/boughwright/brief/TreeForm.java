package boughwright.brief;

import boughwright.measure.Cone;
import boughwright.measure.Length;

/**
 * The shape on which a tree is dressed: a cone from the lowest branches to the tip.
 *
 * @param height floor to tip
 * @param widestRadius at the lowest branches
 * @param lowestBranch height of the lowest branches above the floor
 */
public record TreeForm(Length height, Length widestRadius, Length lowestBranch) {

    /** Height of the lowest branches over the tree's height when nobody has measured it (common practice, no published source). */
    public static final double LOWEST_BRANCH_SHARE = 0.08;

    public static TreeForm of(Length height, Length widestDiameter) {
        return new TreeForm(height, new Length(widestDiameter.metres() / 2), new Length(height.metres() * LOWEST_BRANCH_SHARE));
    }

    public Cone cone() {
        return new Cone(widestRadius.metres(), height.metres() - lowestBranch.metres());
    }

    /** Radius of the tree at a height above the floor, metres; 0 above the tip, the widest below the lowest branches. */
    public double radiusAt(double heightAboveFloor) {
        double share = (height.metres() - heightAboveFloor) / (height.metres() - lowestBranch.metres());
        return widestRadius.metres() * Math.max(0, Math.min(1, share));
    }
}
