package boughwright.layout;

/**
 * One bough of a tree, from the trunk to its tip.
 *
 * @param tier from 0, the lowest
 * @param around angle about the trunk, radians, 0 toward the viewer and growing toward 3 o'clock
 * @param reach of its needles from the trunk's axis, metres
 * @param tip height of the tip above the floor, metres
 * @param root height at which it leaves the trunk, metres
 * @param size of its sprigs over the longest of the tree, (0, 1]
 */
public record Bough(int tier, double around, double reach, double tip, double root, double size) {
}
