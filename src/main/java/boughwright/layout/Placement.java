package boughwright.layout;

import boughwright.needs.Layer;
import boughwright.needs.Role;
import java.util.OptionalDouble;

/**
 * One piece in its place.
 *
 * @param id unique within a layout
 * @param group pieces bound together share it: {@code cluster-3}, {@code grouping-1}; else empty
 * @param height metres above the floor
 * @param clock position read from above, (0, 12]; 6 faces the viewer
 * @param depth 0 at the trunk, 1 at the branch tips
 * @param at the same place in room coordinates, metres
 * @param radius of the room that the piece takes, metres; its cluster's when it is bound into one
 * @param foldAt where a stem is folded because the tree is not deep enough for it: metres from its head
 */
public record Placement(
        String id, String needId, String sku, Layer layer, Role role, Zone zone, String group, double height, double clock, double depth,
        Point at, double radius, OptionalDouble foldAt) {
}
