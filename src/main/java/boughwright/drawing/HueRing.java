package boughwright.drawing;

import boughwright.colour.HueTemplate;
import boughwright.colour.Oklab;
import boughwright.colour.Oklch;
import boughwright.colour.Srgb;
import boughwright.palette.Tone;
import java.util.Comparator;
import java.util.List;

/**
 * Colours on the ring of hues of OKLCH: the angle is the hue, 0° to the right and counted against the clock, the distance from the
 * middle the chroma, the size of a dot its share. The palette's members are large and named, products small; sectors of a hue template
 * are shaded.
 */
public final class HueRing {

    private static final double WIDTH = 380;
    private static final double HEIGHT = 300;
    private static final double RADIUS = 118;
    private static final double BAND = 10;
    /** Chroma at the inner edge of the band; few fabrics and balls have more, and those stand at the edge. */
    private static final double STRONGEST = 0.17;
    /** Lightness and chroma of the band: the strongest at which sRGB has every hue. */
    private static final double BAND_L = 0.76;
    private static final double BAND_C = 0.115;
    private static final int STEPS = 72;
    private static final double LABEL_STEP = 36;

    private final List<Tone> members;
    private final List<Tone> products;
    private final List<HueTemplate.Sector> sectors;

    /** @param products may be none @param sectors may be none */
    public HueRing(List<Tone> members, List<Tone> products, List<HueTemplate.Sector> sectors) {
        this.members = List.copyOf(members);
        this.products = List.copyOf(products);
        this.sectors = List.copyOf(sectors);
    }

    /** With the members' names and shares beside the ring, about 380 px wide. */
    public String labelled(String id, String title, String description) {
        Svg svg = new Svg(24_000);
        ring(svg);
        labels(svg);
        return Frame.of(new double[] {0, 0, WIDTH, HEIGHT}, WIDTH, id, title, description, new Studio(id, false), svg);
    }

    /** The ring alone, for a small place. */
    public String small(String id, String title, String description) {
        Svg svg = new Svg(24_000);
        ring(svg);
        double side = 2 * (RADIUS + BAND + 4);
        return Frame.of(new double[] {WIDTH / 2 - side / 2, HEIGHT / 2 - side / 2, side, side}, side, id, title, description, new Studio(id, false), svg);
    }

    private void ring(Svg svg) {
        svg.ellipse(Chart.CARD, 1, WIDTH / 2, HEIGHT / 2, RADIUS, RADIUS);
        for (HueTemplate.Sector sector : sectors) {
            double from = sector.middle() - sector.width() / 2;
            svg.fill(Chart.LEAF, 0.13, wedge(from, sector.width(), 0, RADIUS));
        }
        for (double chroma : new double[] {0.05, 0.10, 0.15}) {
            svg.raw("<circle fill=\"none\" stroke=\"").raw(Chart.LINE).raw("\" stroke-width=\".8\"").attr("cx", WIDTH / 2).attr("cy", HEIGHT / 2)
                    .attr("r", RADIUS * chroma / STRONGEST).raw("/>");
        }
        double step = 360.0 / STEPS;
        for (int i = 0; i < STEPS; i++) {
            // Each a little longer than its step, so that no seam shows.
            svg.fill(new Oklch(BAND_L, BAND_C, (i + 0.5) * step).mapped().hex(), wedge(i * step - 0.2, step + 0.4, RADIUS, RADIUS + BAND));
        }
        for (HueTemplate.Sector sector : sectors) {
            double from = sector.middle() - sector.width() / 2;
            svg.fill(Chart.LEAF, wedge(from, sector.width(), RADIUS - 2, RADIUS));
        }
        for (Tone member : members.stream().sorted(Comparator.comparingDouble(t -> -t.share())).toList()) {
            double[] at = at(member.colour());
            svg.raw("<circle").attr("cx", at[0]).attr("cy", at[1]).attr("r", size(member) + 2.2).attr("fill", Chart.CARD).attr("stroke", Chart.INK)
                    .raw(" stroke-width=\"1.4\"");
            if (member.share() < 0.005) {
                svg.raw(" stroke-dasharray=\"3 2.4\"");
            }
            svg.raw("/>").ellipse(member.colour().hex(), 1, at[0], at[1], size(member), size(member));
        }
        for (Tone product : products.stream().sorted(Comparator.comparingDouble(t -> -t.share())).toList()) {
            double[] at = at(product.colour());
            double r = 2.6 + 6 * Math.sqrt(product.share());
            // A light rim within a dark one shows on the white middle and on a member of its own colour.
            svg.circle(Chart.CARD, at[0], at[1], r + 1.4);
            Chart.dot(svg, product.colour().hex(), at[0], at[1], r, product.name());
        }
    }

    private void labels(Svg svg) {
        for (boolean left : new boolean[] {true, false}) {
            List<Tone> side = members.stream().filter(m -> at(m.colour())[0] < WIDTH / 2 == left).toList();
            double[] places = Chart.spread(side.stream().mapToDouble(m -> at(m.colour())[1]).toArray(), LABEL_STEP, 18, HEIGHT - 26);
            for (int i = 0; i < side.size(); i++) {
                Tone member = side.get(i);
                double[] at = at(member.colour());
                double x = left ? 2 : WIDTH - 2;
                double lineX = left ? 50 : WIDTH - 50;
                double away = Math.hypot(lineX - at[0], places[i] - at[1]);
                double reach = (size(member) + 2.5) / Math.max(1, away);
                Chart.line(svg, Chart.SOFT, 0.9, lineX, places[i], at[0] + (lineX - at[0]) * reach, at[1] + (places[i] - at[1]) * reach);
                String anchor = left ? "start" : "end";
                Chart.words(svg, x, places[i] - 2, anchor, Chart.INK, true, member.name());
                Chart.words(svg, x, places[i] + 13, anchor, Chart.SOFT, false, Math.round(100 * member.share()) + " %");
            }
        }
    }

    /** Its area stands for the share; a member that the kit lacks is still seen. */
    private static double size(Tone member) {
        return 6 + 13 * Math.sqrt(member.share());
    }

    private static double[] at(Srgb colour) {
        Oklab lab = Oklab.of(colour);
        double out = RADIUS * Math.min(lab.chroma(), STRONGEST) / STRONGEST;
        return polar(lab.hue(), out);
    }

    private static double[] polar(double degrees, double out) {
        return new double[] {WIDTH / 2 + out * Math.cos(Math.toRadians(degrees)), HEIGHT / 2 - out * Math.sin(Math.toRadians(degrees))};
    }

    /** A part of the ring between two radii. */
    private static Path wedge(double from, double width, double inner, double outer) {
        int pieces = (int) Math.max(1, Math.ceil(width / 4));
        Path path = Path.fine();
        for (int i = 0; i <= pieces; i++) {
            double[] p = polar(from + width * i / pieces, outer);
            if (i == 0) {
                path.m(p[0], p[1]);
            } else {
                path.l(p[0], p[1]);
            }
        }
        for (int i = pieces; i >= 0; i--) {
            double[] p = polar(from + width * i / pieces, inner);
            path.l(p[0], p[1]);
            if (inner == 0) {
                break;
            }
        }
        return path.z();
    }
}
