package boughwright.needs;

/**
 * Where a hand has put something on the tree.
 *
 * @param height above the floor, metres, above 0
 * @param clock position read from above, (0, 12]; 6 faces the viewer
 */
public record Spot(double height, double clock) {

    public Spot {
        if (!(height > 0) || !(height < 100) || !(clock > 0) || !(clock <= 12)) {
            throw new IllegalArgumentException("not a place on a tree: " + height + " m up, at " + clock + " o'clock");
        }
    }
}
