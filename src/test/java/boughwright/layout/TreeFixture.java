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

    /**
     * Metres of a stem until it comes out at the far side, followed millimetre by millimetre at 20° below level; level where it would
     * come out beneath the lowest branches, by more than the last millimetre sinks.
     */
    static double through(Proposal p, double height) {
        double whole = p.brief().tree().height().metres();
        double x = radius(p, height);
        double y = height;
        double way = 0;
        while (x > 0 || -x < radius(p, y)) {
            way += 0.001;
            x -= 0.001 * Math.cos(Math.toRadians(20));
            y -= 0.001 * Math.sin(Math.toRadians(20));
            if (y < 0.08 * whole - 0.001 * Math.sin(Math.toRadians(20))) {
                return 2 * radius(p, height);
            }
        }
        return way;
    }
}
