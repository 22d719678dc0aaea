package boughwright.needs;

/**
 * How thickly a tree is set with stems, as a fact for the house's rules.
 *
 * @param stems in topper and body together
 * @param feet height of the tree
 */
public record Density(int stems, double feet) {

    public double stemsPerFoot() {
        return stems / feet;
    }
}
