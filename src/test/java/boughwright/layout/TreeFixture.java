package boughwright.layout;

import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.proposal.Proposal;

/** Trees to try the geometry on, and where a piece is by plain trigonometry, without the code under test. */
final class TreeFixture {

    private TreeFixture() {
    }

    static Surface surface(double feet, SeenFrom seenFrom) {
        Length height = Length.ofFeet(feet);
        return new Surface(new Tree(height, Tree.usualDiameter(height, Fullness.MEDIUM), Fullness.MEDIUM, seenFrom, false, false));
    }

    /** Radians to the right of 6 o'clock as the viewer in front sees it: 3 o'clock is a quarter turn to the right. */
    static double angle(double clock) {
        return Math.IEEEremainder((6 - clock) * Math.PI / 6, 2 * Math.PI);
    }

    /** Radius of the proposal's tree at a height, metres: a cone from the lowest branches, at 8 % of the height, to the tip. */
    static double radius(Proposal p, double height) {
        double whole = p.brief().tree().height().metres();
        return p.brief().tree().widestDiameter().metres() / 2 * (whole - height) / (0.92 * whole);
    }
}
