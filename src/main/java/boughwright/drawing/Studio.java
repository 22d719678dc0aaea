package boughwright.drawing;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * The shared definitions of one picture: gradients and shapes drawn once and placed often, and the light they stand in.
 * Ids are the prefix followed by a running number in order of first use, so a scene always gives the same text.
 */
final class Studio {

    private static final String DUSK = "#171021";

    private static final String LAMP = "#c8742a";

    private final String prefix;
    private final boolean evening;
    private final Svg defs = new Svg(60_000);
    private final Map<String, String> ids = new HashMap<>();
    private boolean dim;

    Studio(String prefix, boolean evening) {
        this.prefix = prefix;
        this.evening = evening;
    }

    boolean evening() {
        return evening;
    }

    /** From here on colours are those of pieces that turn away from the viewer into the foliage. */
    Studio dim(boolean on) {
        dim = on;
        return this;
    }

    boolean dimmed() {
        return dim;
    }

    /** The colour as it looks in this light. */
    String tone(String colour) {
        String seen = dim ? Tint.mix(colour, "#16301f", 0.34) : colour;
        return evening ? Tint.mix(Tint.mix(seen, LAMP, 0.1), DUSK, 0.34) : seen;
    }

    String url(String id) {
        return "url(#" + id + ")";
    }

    String ref(String id) {
        return "#" + id;
    }

    /** The id of a shape; drawn by the given hand the first time that the key is met. */
    String shape(String key, Consumer<Svg> hand) {
        String full = dim ? key + "~" : key;
        String known = ids.get(full);
        if (known != null) {
            return known;
        }
        Svg svg = new Svg(1500);
        hand.accept(svg);
        String id = take(full);
        defs.raw("<g id=\"").raw(id).raw("\">").raw(svg.builder()).raw("</g>");
        return id;
    }

    /** The id of an outline without paint, to be filled by those who use it. */
    String outline(Path path) {
        String id = prefix + Integer.toString(ids.size(), 36);
        ids.put("outline " + id, id);
        defs.raw("<path id=\"").raw(id).raw("\" d=\"").raw(path.d()).raw("\"/>");
        return id;
    }

    /** A paint for a round body in this finish, following the box of whatever it fills. */
    String volume(Surface surface, String colour) {
        String c = tone(colour);
        String key = "v" + surface + c;
        String known = ids.get(key);
        if (known == null) {
            known = take(key);
            Volume.define(defs, known, surface, c);
        }
        return url(known);
    }

    /** A radial paint about the origin of the shape, in its own units. */
    String radial(double radius, Stop... stops) {
        if (stops[0].at() > 0) {
            // Some printers stretch the stops to the whole radius unless one stands at the centre.
            Stop[] full = new Stop[stops.length + 1];
            full[0] = new Stop(0, stops[0].colour(), stops[0].opacity());
            System.arraycopy(stops, 0, full, 1, stops.length);
            return radial(radius, full);
        }
        String key = "r" + radius + Arrays.toString(stops);
        String known = ids.get(key);
        if (known == null) {
            known = take(key);
            defs.raw("<radialGradient id=\"").raw(known).raw("\" gradientUnits=\"userSpaceOnUse\" cx=\"0\" cy=\"0\"")
                    .attr("r", radius).raw(">");
            Stop.write(defs, stops);
            defs.raw("</radialGradient>");
        }
        return url(known);
    }

    /** A straight paint between two points of the shape's own units. */
    String linear(double x1, double y1, double x2, double y2, Stop... stops) {
        String key = "l" + x1 + ',' + y1 + ',' + x2 + ',' + y2 + Arrays.toString(stops);
        String known = ids.get(key);
        if (known == null) {
            known = take(key);
            defs.raw("<linearGradient id=\"").raw(known).raw("\" gradientUnits=\"userSpaceOnUse\"").attr("x1", x1)
                    .attr("y1", y1).attr("x2", x2).attr("y2", y2).raw(">");
            Stop.write(defs, stops);
            defs.raw("</linearGradient>");
        }
        return url(known);
    }

    /** Random numbers for a shape, the same wherever that shape is drawn. */
    static SplittableRandom randomFor(String key) {
        long h = 1125899906842597L;
        for (int i = 0; i < key.length(); i++) {
            h = 31 * h + key.charAt(i);
        }
        return new SplittableRandom(h);
    }

    CharSequence definitions() {
        return defs.builder();
    }

    private String take(String key) {
        String id = prefix + Integer.toString(ids.size(), 36);
        ids.put(key, id);
        return id;
    }
}
