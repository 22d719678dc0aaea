package boughwright.quote;

/**
 * One product that stands in for another that the customer had seen before.
 *
 * @param role what both do on the tree, as {@code Role} words it
 * @param was name of the one that was there
 * @param is name of the one that is there now; empty when nothing took its place
 */
public record Substitution(String role, String was, String is) {
}
