package boughwright.drawing;

import boughwright.colour.Srgb;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What our drawings of colours share: paper, ink, words, and words that keep out of one another's way. */
final class Chart {

    static final String CARD = "#fffdf7";
    static final String INK = "#20281f";
    static final String SOFT = "#646152";
    static final String LINE = "#ddd3bb";
    static final String LEAF = "#2d5b43";

    /** Height of small words, px; a drawing is shown at about its own size. */
    static final double WORDS = 12.5;
    /** Mean width of a letter as a share of its height, generous (measured on Figtree, regular). */
    private static final double LETTER = 0.56;

    private Chart() { }

    /** One line of words. @param anchor {@code start}, {@code middle} or {@code end} */
    static void words(Svg svg, double x, double y, String anchor, String fill, boolean strong, String text) {
        svg.raw("<text").attr("x", x).attr("y", y).attr("text-anchor", anchor).attr("fill", fill).attr("font-size", WORDS)
                .attr("font-family", "Figtree, Helvetica, Arial, sans-serif").attr("font-weight", strong ? "600" : "400").raw(">").text(text).raw("</text>");
    }

    /** The words, or so many of them as fit, with an ellipsis. @param width px */
    static String fitting(String text, double width) {
        int most = (int) (width / (WORDS * LETTER));
        return text.length() <= most ? text : text.substring(0, Math.max(1, most - 1)).strip() + "…";
    }

    static void line(Svg svg, String colour, double width, double x1, double y1, double x2, double y2) {
        svg.stroke(colour, width, Path.fine().m(x1, y1).l(x2, y2));
    }

    /** A dot with a light rim, so that it is seen on any ground, its name said on touch. */
    static void dot(Svg svg, String colour, double x, double y, double r, String title) {
        svg.raw("<circle").attr("cx", x).attr("cy", y).attr("r", r).attr("fill", colour).attr("stroke", INK).attr("stroke-width", 0.8).raw("><title>").text(title)
                .raw("</title></circle>");
    }

    /** Ink or card, whichever reads better on the colour. */
    static String readable(Srgb on) {
        Srgb ink = Srgb.read(INK).orElseThrow();
        Srgb card = Srgb.read(CARD).orElseThrow();
        return on.contrast(ink) >= on.contrast(card) ? INK : CARD;
    }

    /**
     * Where to put lines of words that each would like to stand at a height of their own: as near to it as can be in their order, at
     * least {@code step} apart, all within [{@code top}, {@code bottom}]; evenly spread where there is no room for that.
     */
    static double[] spread(double[] wanted, double step, double top, double bottom) {
        int n = wanted.length;
        double[] places = new double[n];
        if (n == 0) {
            return places;
        }
        double gap = n == 1 ? 0 : Math.min(step, (bottom - top) / (n - 1));
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble((Integer i) -> wanted[i]).thenComparing(i -> i));
        // Lines that touch form a block, which stands about the mean of what its lines want.
        List<double[]> blocks = new ArrayList<>();
        for (int i : order) {
            blocks.add(new double[] {wanted[i], 1});
            settle(blocks, gap, top, bottom);
        }
        int at = 0;
        for (double[] block : blocks) {
            double first = start(block, gap, top, bottom);
            for (int k = 0; k < block[1]; k++) {
                places[order.get(at++)] = first + k * gap;
            }
        }
        return places;
    }

    /** Joins the last blocks while they touch. */
    private static void settle(List<double[]> blocks, double gap, double top, double bottom) {
        while (blocks.size() > 1) {
            double[] last = blocks.get(blocks.size() - 1);
            double[] before = blocks.get(blocks.size() - 2);
            if (start(before, gap, top, bottom) + before[1] * gap <= start(last, gap, top, bottom) + 1e-9) {
                return;
            }
            blocks.remove(blocks.size() - 1);
            before[0] = (before[0] * before[1] + last[0] * last[1]) / (before[1] + last[1]);
            before[1] += last[1];
        }
    }

    private static double start(double[] block, double gap, double top, double bottom) {
        double length = (block[1] - 1) * gap;
        return Math.max(top, Math.min(bottom - length, block[0] - length / 2));
    }
}
