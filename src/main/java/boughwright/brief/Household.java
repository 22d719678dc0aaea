package boughwright.brief;

/** Who lives with the tree, so far as it bears on what may hang low. */
public record Household(boolean toddlers, boolean pets) {
}
