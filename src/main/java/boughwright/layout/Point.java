package boughwright.layout;

/**
 * A place in the room, metres. The origin is on the floor at the trunk's axis; x runs to the right of a viewer in front, y up, z
 * toward that viewer.
 */
public record Point(double x, double y, double z) {

    public double distance(Point other) {
        double dx = x - other.x;
        double dy = y - other.y;
        double dz = z - other.z;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
