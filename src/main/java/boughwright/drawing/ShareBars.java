package boughwright.drawing;

import boughwright.colour.Srgb;
import java.util.List;

/** Shares of what is seen as bars of equal length, one above the other: as they fall and as they are wanted. */
public final class ShareBars {

    private static final double WIDTH = 380;
    private static final double HIGH = 30;
    private static final double ROW = 54;

    /** @param share 0..1 */
    public record Part(Srgb colour, double share) {
    }

    /** @param parts from left to right; their shares add up to about 1 */
    public record Bar(String name, List<Part> parts) {

        public Bar {
            parts = List.copyOf(parts);
        }
    }

    private ShareBars() { }

    public static String svg(List<Bar> bars, String id, String title, String description) {
        Svg svg = new Svg(4000);
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            double top = i * ROW;
            Chart.words(svg, 0, top + 12, "start", Chart.SOFT, false, bar.name());
            double x = 0;
            for (Part part : bar.parts()) {
                double wide = WIDTH * part.share();
                if (wide > 0.2) {
                    svg.raw("<rect").attr("x", x + 0.5).attr("y", top + 18).attr("width", Math.max(0.2, wide - 1)).attr("height", HIGH).attr("rx", 3.0)
                            .attr("fill", part.colour().hex()).attr("stroke", Chart.SOFT).attr("stroke-width", 0.6).raw("/>");
                }
                // A number that does not fit stands in the table below alone.
                if (wide >= 26) {
                    Chart.words(svg, x + wide / 2, top + 18 + HIGH / 2 + 4.5, "middle", Chart.readable(part.colour()), true,
                            String.valueOf(Math.round(100 * part.share())));
                }
                x += wide;
            }
        }
        return Frame.of(new double[] {0, 0, WIDTH, ROW * bars.size() - 4}, WIDTH, id, title, description, new Studio(id, false), svg);
    }
}
