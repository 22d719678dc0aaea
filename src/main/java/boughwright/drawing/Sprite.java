package boughwright.drawing;

/**
 * One piece on the tree. Axes in metres with the origin on the floor at the trunk: x to the right of the front's viewer,
 * y up, z toward that viewer.
 *
 * @param id           unique in the scene; becomes {@code data-piece}
 * @param unit         what a hand moves when it takes hold of it: its own id or that of its cluster; empty when it is not moved
 * @param title        what a pointer or a screen reader says of it
 * @param layer        the layer that shows or hides it; becomes {@code data-layer}
 * @param role         what it does in its layer; {@code height-stem}, {@code texture-stem} and {@code face-flower} above
 *                     the tip form the bouquet
 * @param form         its shape
 * @param surface      its finish
 * @param colour       main colour, {@code #rrggbb}
 * @param secondColour centre, cap, roof or reverse, {@code #rrggbb}; null lets the form choose
 * @param width        head width of flower or spray, diameter of ball, breadth of ornament, width of ribbon, metres
 * @param length       visible length of a spray, drop of an ornament or tail; 0 takes the form's usual proportion, metres
 * @param x            metres
 * @param y            metres above the floor
 * @param z            metres
 * @param depth        0 at the trunk .. 1 at the branch tips; below 0.75 the front needles partly cover it
 * @param lean         radians from straight up, positive to the right of a viewer whom the piece faces
 */
public record Sprite(String id, String unit, String title, String layer, String role, Form form, Surface surface, String colour,
                     String secondColour, double width, double length, double x, double y, double z, double depth,
                     double lean) {

    public Sprite {
        Tint.check(colour);
        if (secondColour != null) {
            Tint.check(secondColour);
        }
        if (form == null || surface == null || id == null || title == null || layer == null) {
            throw new IllegalArgumentException("a piece needs id, title, layer, form and surface");
        }
        if (!(width > 0) || !(length >= 0)) {
            throw new IllegalArgumentException("piece " + id + ": width " + width + " m, length " + length + " m");
        }
    }
}
