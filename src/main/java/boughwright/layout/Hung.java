package boughwright.layout;

import boughwright.kit.KitLine;
import java.util.List;

/**
 * What is set on the tree as one: a single piece, or the stems of a cluster bound together.
 *
 * @param id of the piece, or of the cluster: {@code cluster-3}
 * @param depth 0 at the trunk, 1 at the branch tips
 * @param radius of the room that it takes, metres
 * @param from the slant above which no branch bears it
 */
record Hung(String id, Zone zone, double slant, double angle, double depth, double radius, double from, List<Part> parts) {

    /**
     * One piece of it.
     *
     * @param down metres down the slant from the middle of what it is bound into
     * @param aside metres sideways from there, + toward 3 o'clock
     * @param radius of its own room, metres
     */
    record Part(String id, KitLine line, double down, double aside, double radius) {
    }

    Hung {
        parts = List.copyOf(parts);
    }

    static Hung single(String id, KitLine line, Zone zone, Places.Place at, double depth, double radius, double from) {
        return new Hung(id, zone, at.slant(), at.angle(), depth, radius, from, List.of(new Part(id, line, 0, 0, radius)));
    }

    boolean cluster() {
        return id.startsWith(CLUSTER);
    }

    static final String CLUSTER = "cluster-";

    Hung at(double otherSlant, double otherAngle) {
        return new Hung(id, zone, otherSlant, otherAngle, depth, radius, from, parts);
    }

    Point point(Surface surface) {
        return surface.point(slant, angle, depth);
    }
}
