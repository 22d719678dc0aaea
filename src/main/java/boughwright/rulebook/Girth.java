package boughwright.rulebook;

import boughwright.brief.Fullness;
import boughwright.brief.Tree;
import boughwright.measure.Length;

/** How a tree that is wider or slimmer than usual changes quantities that are given for a usual one. */
public final class Girth {

    /** How far girth may be off the usual before it counts, as a share. */
    private static final double USUAL = 0.1;

    private Girth() {
    }

    /** The girth factor: 1 for a tree within a tenth of the usual, else its area over the nearer end of that band. */
    public static double of(Tree tree) {
        double ratio = areaOverMedium(tree);
        return ratio > 1 + USUAL ? ratio / (1 + USUAL) : ratio < 1 - USUAL ? ratio / (1 - USUAL) : 1;
    }

    /** Area of this tree over that of a medium tree of the same height. */
    private static double areaOverMedium(Tree tree) {
        Length usual = Tree.usualDiameter(tree.height(), Fullness.MEDIUM);
        Tree medium = new Tree(tree.height(), usual, Fullness.MEDIUM, tree.seenFrom(), tree.lit(), tree.real());
        return tree.form().cone().area() / medium.form().cone().area();
    }
}
