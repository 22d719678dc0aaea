package boughwright.needs;

/**
 * What the house puts into a gap of a size.
 *
 * @param leastGap diameter in metres from which this accent is chosen; the choice with the greatest such diameter wins
 * @param ribbon metres of the accent ribbon that one takes
 */
public record AccentChoice(AccentKind kind, double leastGap, double ribbon) {
}
