package boughwright.needs;

/**
 * How high the topper would stand, as a fact for the house's cautions.
 *
 * @param top of its tallest stem when it is set as usual, metres above the floor
 */
public record TopperReach(double top) {
}
