package boughwright.drawing;

import boughwright.colour.Lab;
import boughwright.palette.Tone;
import java.util.Comparator;
import java.util.List;

/**
 * Colours by how light they are (CIE L*, 0 black at the foot, 100 white at the head): the palette's members to the left of a strip of
 * greys, products to the right, each at its own height and its name beside it.
 */
public final class LightnessLadder {

    private static final double WIDTH = 380;
    private static final double HEIGHT = 350;
    private static final double TOP = 14;
    private static final double BOTTOM = 336;
    private static final double LEFT = 118;
    private static final double RIGHT = 146;
    private static final int GREYS = 25;
    private static final double LABEL_STEP = 15.5;
    /** As many products as there is room to name; those of which most is seen. */
    private static final int MOST = 21;
    private static final double NAMES = 208;

    private LightnessLadder() { }

    /** @param products may be none */
    public static String svg(List<Tone> members, List<Tone> products, String id, String title, String description) {
        Svg svg = new Svg(12_000);
        for (int i = 0; i < GREYS; i++) {
            double from = BOTTOM - (BOTTOM - TOP) * i / GREYS;
            double to = BOTTOM - (BOTTOM - TOP) * (i + 1) / GREYS;
            svg.fill(new Lab(100 * (i + 0.5) / GREYS, 0, 0).toLinear().toSrgb().hex(), Path.fine().m(LEFT, from).l(RIGHT, from).l(RIGHT, to - 0.3).l(LEFT, to - 0.3).z());
        }
        svg.stroke(Chart.SOFT, 0.8, Path.fine().m(LEFT, TOP).l(RIGHT, TOP).l(RIGHT, BOTTOM).l(LEFT, BOTTOM).z());
        members(svg, members);
        products(svg, products.stream().sorted(Comparator.comparingDouble(t -> -t.share())).limit(MOST).toList());
        return Frame.of(new double[] {0, 0, WIDTH, HEIGHT}, WIDTH, id, title, description, new Studio(id, false), svg);
    }

    private static void members(Svg svg, List<Tone> members) {
        double[] places = Chart.spread(members.stream().mapToDouble(m -> y(m)).toArray(), LABEL_STEP, TOP + 2, BOTTOM - 2);
        for (int i = 0; i < members.size(); i++) {
            Tone member = members.get(i);
            Chart.line(svg, Chart.SOFT, 0.9, LEFT - 6, y(member), 98, places[i]);
            Chart.dot(svg, member.colour().hex(), LEFT - 1, y(member), 5.5, member.name());
            patch(svg, member, 85, places[i], 13);
            Chart.words(svg, 79, places[i] + 4.5, "end", Chart.INK, true, member.name() + " " + light(member));
        }
    }

    private static void products(Svg svg, List<Tone> products) {
        double[] places = Chart.spread(products.stream().mapToDouble(p -> y(p)).toArray(), LABEL_STEP, TOP + 2, BOTTOM - 2);
        for (int i = 0; i < products.size(); i++) {
            Tone product = products.get(i);
            svg.stroke(Chart.SOFT, 0.7, 0.7, Path.fine().m(RIGHT + 5, y(product)).l(165, places[i]));
            Chart.dot(svg, product.colour().hex(), RIGHT + 2, y(product), 4, product.name());
            patch(svg, product, 165, places[i], 10);
            Chart.words(svg, 181, places[i] + 4, "start", Chart.INK, false, Chart.fitting(product.shortName(), NAMES - 22) + " " + light(product));
        }
    }

    /** A square of the colour beside its name, since dots at one height hide one another. */
    private static void patch(Svg svg, Tone tone, double x, double y, double side) {
        svg.raw("<rect").attr("x", x).attr("y", y - side / 2).attr("width", side).attr("height", side).attr("rx", 2.0).attr("fill", tone.colour().hex())
                .attr("stroke", Chart.SOFT).attr("stroke-width", 0.6).raw("/>");
    }

    private static long light(Tone tone) {
        return Math.round(tone.lab().l());
    }

    private static double y(Tone tone) {
        return BOTTOM - (BOTTOM - TOP) * tone.lab().l() / 100;
    }
}
