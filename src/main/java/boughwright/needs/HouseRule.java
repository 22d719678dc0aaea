package boughwright.needs;

/** A demand on the kit and the rule that makes it. */
public record HouseRule(Demand demand, Reason reason) {
}
