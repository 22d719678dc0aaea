package boughwright.drawing;

/** A soft shadow on the floor, built of thin layers: printers draw flattened see-through gradients with a hard edge. */
final class Shade {

    private static final int LAYERS = 12;

    private Shade() { }

    /** An elliptic pool, each layer of the given opacity, at least 0.03 lest rounding tints it, darkest in the middle. */
    static void pool(Svg svg, String colour, double layer, double x, double y, double rx, double ry) {
        for (int i = 0; i < LAYERS; i++) {
            double k = 1 - 0.78 * i / LAYERS;
            svg.ellipse(colour, layer, x, y, rx * k, ry * k);
        }
    }
}
