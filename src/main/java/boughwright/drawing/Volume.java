package boughwright.drawing;

/** The gradients by which each finish shows on a round body lit from the upper left. */
final class Volume {

    private Volume() { }

    static void define(Svg defs, String id, Surface surface, String colour) {
        // A pale body needs a deeper shade side than a dark one to look as round.
        boolean pale = Tint.light(colour) > 0.65 && surface != Surface.GLASS;
        String c = pale ? Tint.mix(colour, "#b98f5c", 0.2) : colour;
        double deep = pale ? 0.54 : 0.44;
        switch (surface) {
            case MATTE, NATURAL -> radial(defs, id, 0.36, 0.3, 0.82,
                    Stop.of(0, Tint.lighter(c, 0.14)), Stop.of(0.5, c), Stop.of(1, Tint.darker(c, deep)));
            case SATIN -> radial(defs, id, 0.36, 0.3, 0.8,
                    Stop.of(0, Tint.lighter(c, 0.52)), Stop.of(0.28, Tint.lighter(c, 0.24)), Stop.of(0.62, c),
                    Stop.of(1, Tint.darker(c, deep)));
            case SHINY -> radial(defs, id, 0.34, 0.28, 0.82,
                    Stop.of(0, Tint.lighter(c, 0.5)), Stop.of(0.22, Tint.lighter(c, 0.12)), Stop.of(0.5, c),
                    Stop.of(0.8, Tint.darker(c, 0.46)),
                    Stop.of(0.92, Tint.darker(c, 0.52)), Stop.of(1, Tint.darker(c, 0.2)));
            case METALLIC -> banded(defs, id,
                    Stop.of(0, Tint.darker(c, 0.34)), Stop.of(0.16, Tint.lighter(c, 0.06)), Stop.of(0.31, Tint.lighter(c, 0.74)),
                    Stop.of(0.44, Tint.lighter(c, 0.12)), Stop.of(0.58, Tint.darker(c, 0.4)), Stop.of(0.68, Tint.darker(c, 0.2)),
                    Stop.of(0.82, Tint.lighter(c, 0.36)), Stop.of(0.9, c), Stop.of(1, Tint.darker(c, 0.4)));
            case GLITTER -> radial(defs, id, 0.38, 0.3, 0.85,
                    Stop.of(0, Tint.lighter(c, 0.32)), Stop.of(0.5, Tint.darker(c, 0.04)), Stop.of(1, Tint.darker(c, 0.44)));
            case GLASS -> glass(defs, id, c);
        }
    }

    private static void radial(Svg defs, String id, double fx, double fy, double r, Stop... stops) {
        defs.raw("<radialGradient id=\"").raw(id).raw("\" cx=\"");
        Svg.fine(defs.builder(), fx + 0.04);
        defs.raw("\" cy=\"");
        Svg.fine(defs.builder(), fy + 0.04);
        defs.raw("\" r=\"");
        Svg.fine(defs.builder(), r);
        defs.raw("\" fx=\"");
        Svg.fine(defs.builder(), fx);
        defs.raw("\" fy=\"");
        Svg.fine(defs.builder(), fy);
        defs.raw("\">");
        Stop.write(defs, stops);
        defs.raw("</radialGradient>");
    }

    private static void banded(Svg defs, String id, Stop... stops) {
        defs.raw("<linearGradient id=\"").raw(id).raw("\" x1=\".36\" y1=\"0\" x2=\".6\" y2=\"1\">");
        Stop.write(defs, stops);
        defs.raw("</linearGradient>");
    }

    private static void glass(Svg defs, String id, String c) {
        String rim = Tint.darker(c, 0.18);
        defs.raw("<radialGradient id=\"").raw(id).raw("\" cx=\".5\" cy=\".5\" r=\".52\">"
                + "<stop offset=\"0\" stop-color=\"").raw(Tint.lighter(c, 0.5)).raw("\" stop-opacity=\".16\"/>"
                + "<stop offset=\".62\" stop-color=\"").raw(c).raw("\" stop-opacity=\".3\"/>"
                + "<stop offset=\".86\" stop-color=\"").raw(rim).raw("\" stop-opacity=\".62\"/>"
                + "<stop offset=\"1\" stop-color=\"").raw(Tint.lighter(c, 0.35)).raw("\" stop-opacity=\".92\"/>"
                + "</radialGradient>");
    }
}
