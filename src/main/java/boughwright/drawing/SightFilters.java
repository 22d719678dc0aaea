package boughwright.drawing;

import boughwright.colour.Sight;
import java.util.Locale;
import java.util.Map;

/** SVG filters that show a whole picture as some eyes, or lamplight, would: one matrix each, on linear light. */
public final class SightFilters {

    private SightFilters() { }

    /** An SVG that shows nothing and holds a filter for each id. @param sights in the order in which they shall stand there */
    public static String svg(Map<String, Sight> sights) {
        Svg svg = new Svg(2000);
        // Not display: none, under which some browsers let go of the filters.
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0\" height=\"0\" aria-hidden=\"true\" focusable=\"false\" style=\"position:absolute\"><defs>");
        sights.forEach((id, sight) -> {
            svg.raw("<filter").attr("id", id).raw(" x=\"0\" y=\"0\" width=\"1\" height=\"1\" color-interpolation-filters=\"linearRGB\"><feColorMatrix type=\"matrix\" values=\"");
            double[] m = sight.matrix();
            for (int row = 0; row < 3; row++) {
                for (int column = 0; column < 3; column++) {
                    svg.raw(String.format(Locale.ROOT, "%.6f ", m[3 * row + column]));
                }
                svg.raw("0 0 ");
            }
            svg.raw("0 0 0 1 0\"/></filter>");
        });
        return svg.raw("</defs></svg>").toString();
    }
}
