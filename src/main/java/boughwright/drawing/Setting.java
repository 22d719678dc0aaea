package boughwright.drawing;

import boughwright.text.Text;

/** What stands round the tree: the ground, the shadow on the floor, trunk and stand, and the ruler. Units are mm. */
final class Setting {

    private final TreeShape tree;
    private final Studio studio;

    Setting(TreeShape tree, Studio studio) {
        this.tree = tree;
        this.studio = studio;
    }

    void ground(Svg svg, double x, double y, double width, double height) {
        String paint = studio.evening()
                ? studio.linear(0, y, 0, y + height, Stop.of(0, "#1c1726"), Stop.of(0.62, "#2c2128"), Stop.of(1, "#3b2a24"))
                : studio.linear(0, y, 0, y + height, Stop.of(0, "#fcfaf2"), Stop.of(0.6, "#f7f0e2"), Stop.of(1, "#efe3cd"));
        svg.raw("<rect fill=\"").raw(paint).raw("\"").attr("x", x).attr("y", y).attr("width", width)
                .attr("height", height).raw("/>");
    }

    /** The warm air round a lit tree in the evening. */
    void dusk(Svg svg) {
        double h = tree.height() * 1000;
        double r = h * 0.62;
        String glow = studio.radial(r, Stop.of(0, "#f2b765").fade(0.34), Stop.of(0.55, "#d98b4b").fade(0.14),
                Stop.of(1, "#d98b4b").fade(0));
        svg.raw("<g data-layer=\"lights\" transform=\"translate(0 ").num(-h * 0.42).raw(")\"><circle fill=\"").raw(glow).raw("\"")
                .attr("r", r)
                .raw("/></g>");
    }

    void floor(Svg svg) {
        double r = tree.widestRadius() * 1000;
        String dark = studio.evening() ? "#08060b" : "#51492f";
        double strength = studio.evening() ? 0.1 : 0.042;
        Shade.pool(svg, dark, strength, r * 0.05, r * 0.02, r * 1.12, r * 0.145);
    }

    void trunk(Svg svg) {
        double base = Math.max(24, tree.height() * 17);
        double top = -(tree.height() * 1000 * 0.93);
        String bark = studio.linear(-base, 0, base, 0, Stop.of(0, studio.tone("#6b4a33")),
                Stop.of(0.4, studio.tone("#5a3c29")), Stop.of(1, studio.tone("#2e1e15")));
        svg.fill(bark, Path.coarse().m(-base, -base * 0.4).l(-base * 0.25, top).l(base * 0.25, top).l(base, -base * 0.4).z());
        double leg = Math.min(tree.widestRadius() * 420, tree.height() * 95);
        double rise = Math.min(tree.lowestBranch() * 420, base * 2.4);
        String iron = studio.tone("#2b302a");
        String lit = studio.tone("#59614f");
        Path legs = Path.coarse();
        for (double to : new double[] {-1, -0.38, 0.38, 1}) {
            legs.m(0, -rise * 0.7).q(leg * to * 0.5, -rise * 0.62, leg * to, 4 + 10 * (1 - Math.abs(to)));
        }
        svg.raw("<g stroke-linecap=\"round\" stroke-linejoin=\"round\">");
        svg.stroke(iron, base * 0.4, legs).stroke(lit, base * 0.1, legs);
        svg.fill(studio.linear(-base * 1.5, 0, base * 1.5, 0, Stop.of(0, lit), Stop.of(0.35, iron), Stop.of(1, studio.tone("#171a16"))),
                Path.coarse().m(-base * 1.35, -rise).l(base * 1.35, -rise).l(base * 1.2, -rise * 0.35).l(-base * 1.2, -rise * 0.35).z());
        svg.raw("</g>");
    }

    /**
     * A ruler from the floor to the tip.
     *
     * @param at   left end of the marks, mm
     * @param px   mm that one px of the picture stands for
     * @param foot word at the floor
     */
    void ruler(Svg svg, Ruler ruler, double at, double px, String foot) {
        if (ruler == Ruler.NONE) {
            return;
        }
        String ink = studio.evening() ? "#b9a98a" : "#8b836c";
        String word = studio.evening() ? "#d8c9a8" : "#6d6a5a";
        double top = tree.height() * 1000;
        double mark = ruler == Ruler.FEET ? 304.8 : 500;
        Path line = Path.fine().m(at, 0).l(at, -top);
        for (int i = 0; i * mark <= top + 1; i++) {
            line.m(at, -i * mark).l(at + 10 * px, -i * mark);
            double half = (i + 0.5) * mark;
            if (half <= top) {
                line.m(at, -half).l(at + 5 * px, -half);
            }
        }
        svg.raw("<g aria-hidden=\"true\">").stroke(ink, px, line);
        svg.raw("<g font-family=\"Figtree, Helvetica, Arial, sans-serif\" fill=\"").raw(word).raw("\"")
                .attr("font-size", 12 * px).raw(">");
        int every = Math.max(1, (int) Math.ceil(20 * px / mark));
        for (int i = 0; i * mark <= top + 1; i += every) {
            svg.raw("<text").attr("x", at + 14 * px).attr("y", -i * mark + 4 * px).raw(">");
            if (i == 0) {
                svg.text(foot);
            } else if (ruler == Ruler.FEET) {
                svg.text(Text.of("drawing.ruler.feet", i));
            } else {
                svg.text(Text.of("length.metres", Text.number(i / 2.0, i % 2)));
            }
            svg.raw("</text>");
        }
        svg.raw("</g></g>");
    }
}
