package boughwright.drawing;

/** One stop of a gradient: where in [0, 1], which colour, how opaque in [0, 1]. */
record Stop(double at, String colour, double opacity) {

    static Stop of(double at, String colour) {
        return new Stop(at, colour, 1);
    }

    Stop fade(double opacity) {
        return new Stop(at, colour, opacity);
    }

    static void write(Svg svg, Stop... stops) {
        for (Stop stop : stops) {
            svg.raw("<stop offset=\"");
            Svg.fine(svg.builder(), stop.at);
            svg.raw("\" stop-color=\"").raw(stop.colour);
            if (stop.opacity < 1) {
                svg.raw("\" stop-opacity=\"");
                Svg.fine(svg.builder(), stop.opacity);
            }
            svg.raw("\"/>");
        }
    }
}
