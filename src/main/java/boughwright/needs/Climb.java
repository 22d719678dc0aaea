package boughwright.needs;

/**
 * How high somebody has to work, as a fact for the house's cautions.
 *
 * @param workHeight highest point to be reached, metres above the floor
 * @param ladderFeet size of the stepladder that reaches it; 0 when none is needed
 * @param beyondLadder higher than a 12 ft stepladder lets a person reach
 */
public record Climb(double workHeight, int ladderFeet, boolean beyondLadder) {
}
