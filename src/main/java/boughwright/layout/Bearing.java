package boughwright.layout;

import boughwright.brief.Tree;
import boughwright.catalogue.Product;

/**
 * What a branch bears, and what a piece weighs.
 *
 * <p>A branch is taken for a cantilever from the trunk. A weight W at the distance x from its foot turns it there by W·x²/(2·S),
 * S being its bending stiffness (textbook, end load on a cantilever); the most that it may turn is fixed, so that what it bears
 * falls with the square of the distance. Stiffness grows with the cube of a branch's reach, since longer branches are thicker; at the
 * tip a branch therefore bears in proportion to its reach. The anchor, {@link #AT_TIP} at the tip of a branch of
 * {@link #ANCHOR_REACH}, and the factors by tree are common practice, no published source: makers' own limits go before.
 */
final class Bearing {

    /** Kilograms that the tip of a branch bears on a medium artificial tree where the branch reaches {@link #ANCHOR_REACH} metres. */
    private static final double AT_TIP = 0.25;
    private static final double ANCHOR_REACH = 0.7;
    /** The least that any branch bears: what hangs on a wire at the very top. */
    private static final double LEAST = 0.04;
    /** Wall of a hollow ornament, metres, and kilograms of a cubic metre of what it is made of (rounded, from memory). */
    private static final double SHELL = 0.001;
    /** A flat shape's thickness over its width. */
    private static final double FLAT = 0.06;

    private final Tree tree;
    private final double widest;

    Bearing(Tree tree) {
        this.tree = tree;
        this.widest = tree.form().widestRadius().metres();
    }

    /** Stiffness of this tree's branches over those of a medium artificial one: cut branches bend more, dense ones lean on others. */
    private double stiffness() {
        double wood = tree.real() ? 0.8 : 1;
        return wood * switch (tree.fullness()) {
            case SPARSE -> 0.85;
            case MEDIUM -> 1;
            case FULL -> 1.15;
        };
    }

    /** Kilograms that a branch bears at a depth where the tree has a radius. */
    double bears(double radius, double depth) {
        double reach = Math.min(widest, radius);
        double out = Math.max(0.3, Math.min(1, depth));
        return Math.max(LEAST, AT_TIP * stiffness() * reach / ANCHOR_REACH / (out * out));
    }

    /** About what one piece weighs, kilograms, by its shape, size and material; a stem's weight lies at its foot, deep in the tree. */
    static double weight(Product product) {
        double width = product.width().metres();
        double drop = Math.max(width, product.length().metres());
        double density = switch (product.material()) {
            case GLASS -> 2500;
            case METAL -> 2700;
            case SHATTERPROOF, PLASTIC -> 1050;
            case WOOD -> 600;
            case PAPER, DRIED -> 300;
            case FABRIC, FEATHER, WIRE -> 200;
        };
        return switch (product.shape()) {
            case BALL, DROP, FINIAL, BELL, ACORN, ICICLE -> density * SHELL * Math.PI * width * (0.5 * width + 0.5 * drop);
            case STAR, SNOWFLAKE -> density * FLAT * width * width * width * 0.5;
            case BIRD, PINECONE, HOUSE -> density * 0.3 * width * width * drop * 0.4;
            default -> 0.02;
        };
    }

    /** The radius of the tree from which on a branch bears a weight at a depth, metres. */
    double leastRadius(double weight, double depth) {
        double out = Math.max(0.3, Math.min(1, depth));
        return weight <= LEAST ? 0 : weight * ANCHOR_REACH * out * out / (AT_TIP * stiffness());
    }
}
