package boughwright.drawing;

import java.util.List;

/** The bare tree in its room, drawn to one scale with the ceiling and a person, for the interview. */
public final class RoomPicture {

    private RoomPicture() { }

    /**
     * What the room picture says and how large it is.
     *
     * @param widthPx      px
     * @param heightPx     px
     * @param ceilingLabel beside the ceiling line, such as "ceiling 10 ft, 12 in to spare"; null for none
     * @param personLabel  above the person, such as "5 ft 9 in"; null leaves the person out
     * @param treeKnown    false draws the tree as a dotted outline with a faint tree in it, for a height not yet told
     * @param background   whether the paper ground is painted
     * @param title        short text for screen readers
     * @param description  longer text for screen readers
     * @param idPrefix     letters and digits before every id
     * @param seed         of the branches; the dressed picture of the same seed shows the same tree
     */
    public record Room(double widthPx, double heightPx, String ceilingLabel, String personLabel, boolean treeKnown,
                       boolean background, String title, String description, String idPrefix, long seed) {

        public Room {
            if (!(widthPx > 0) || !(heightPx > 0)) {
                throw new IllegalArgumentException("a room picture needs a size, not " + widthPx + " x " + heightPx);
            }
        }

        /** 500 x 650 px with a person, on paper, ids prefixed "r", seed 1. */
        public static Room of(String ceilingLabel, String personLabel, String title) {
            return new Room(500, 650, ceilingLabel, personLabel, true, true, title, "", "r", 1);
        }

        public Room withTreeKnown(boolean known) {
            return new Room(widthPx, heightPx, ceilingLabel, personLabel, known, background, title, description, idPrefix, seed);
        }

        public Room withSize(double width, double height) {
            return new Room(width, height, ceilingLabel, personLabel, treeKnown, background, title, description, idPrefix, seed);
        }

        public Room withGround(boolean paper) {
            return new Room(widthPx, heightPx, ceilingLabel, personLabel, treeKnown, paper, title, description, idPrefix, seed);
        }

        public Room withIdPrefix(String prefix) {
            return new Room(widthPx, heightPx, ceilingLabel, personLabel, treeKnown, background, title, description, prefix, seed);
        }

        public Room withSeed(long other) {
            return new Room(widthPx, heightPx, ceilingLabel, personLabel, treeKnown, background, title, description, idPrefix, other);
        }
    }

    /**
     * The picture as SVG text. The scale is the largest at which tree, ceiling and person all fit.
     *
     * @param ceilingHeight metres; null when it is not known, which leaves the line out
     */
    public static String svg(TreeShape tree, Double ceilingHeight, Room room) {
        Studio studio = new Studio(room.idPrefix(), false);
        boolean person = room.personLabel() != null;
        double tallest = Math.max(tree.height(), person ? Person.HEIGHT + 0.16 : 0);
        if (ceilingHeight != null) {
            tallest = Math.max(tallest, ceilingHeight);
        }
        double treeHalf = tree.widestRadius() * 1000 * 1.17;
        double personRoom = person ? 640 : 0;
        double across = treeHalf * 2 + personRoom;
        double px = Math.max(tallest * 1000 * 1.0 / (room.heightPx() - 84), across * 1.06 / room.widthPx());
        double width = room.widthPx() * px;
        double height = room.heightPx() * px;
        double top = -height + 46 * px;
        double left = -treeHalf - (width - across) / 2;

        Svg svg = new Svg(120_000);
        Setting setting = new Setting(tree, studio);
        if (room.background()) {
            setting.ground(svg, left, top, width, height);
        }
        if (ceilingHeight != null) {
            ceiling(svg, -ceilingHeight * 1000, left, width, px, room.ceilingLabel());
        }
        setting.floor(svg);
        if (room.treeKnown()) {
            bareTree(svg, tree, studio, room.seed());
        } else {
            svg.raw("<g opacity=\".16\">");
            bareTree(svg, tree, studio, room.seed());
            svg.raw("</g>");
            outline(svg, tree, px);
        }
        if (person) {
            double at = treeHalf + personRoom * 0.5;
            Person.draw(svg, studio, at);
            label(svg, at, -Person.HEIGHT * 1000 - 10 * px, px, "middle", room.personLabel());
        }
        return Frame.of(new double[] {left, top, width, height}, room.widthPx(), room.idPrefix(), room.title(),
                room.description(), studio, svg);
    }

    private static void bareTree(Svg svg, TreeShape tree, Studio studio, long seed) {
        new Setting(tree, studio).trunk(svg);
        Foliage foliage = new Foliage(tree, new Projection(View.FRONT), studio, seed);
        foliage.paintUnder(svg);
        foliage.paintOver(svg, List.of());
    }

    private static void outline(Svg svg, TreeShape tree, double px) {
        double h = tree.height() * 1000;
        double low = tree.lowestBranch() * 1000;
        double r = tree.widestRadius() * 1090;
        Path path = Path.coarse().m(0, -h);
        int steps = 5;
        for (int side = 1; side >= -1; side -= 2) {
            for (int i = 1; i <= steps; i++) {
                double at = side > 0 ? i : steps - i;
                double y = -h + (h - low) * at / steps;
                double x = side * r * at / steps;
                if (side > 0) {
                    path.q(x * 0.8, y - (h - low) / steps * 0.34, x, y);
                    if (i < steps) {
                        path.l(x * 0.8, y - 4 * px);
                    }
                } else {
                    if (i == 1) {
                        path.q(0, -low + 16 * px, -r, -low);
                    } else {
                        path.l(side * r * (at + 1) / steps, -h + (h - low) * (at + 1) / steps);
                    }
                    double nx = at == 0 ? 0 : x * 0.8;
                    double ox = side * r * (at + 1) / steps;
                    path.q(ox * 0.8, -h + (h - low) * (at + 1) / steps - (h - low) / steps * 0.34, nx, y);
                }
            }
        }
        svg.raw("<path fill=\"none\" stroke=\"#2d5b43\" stroke-linecap=\"round\" stroke-linejoin=\"round\"")
                .attr("stroke-width", 2 * px).raw(" stroke-dasharray=\"").num(0.1).raw(" ").num(6 * px).raw("\" d=\"")
                .raw(path.d()).raw("z\"/>");
    }

    private static void ceiling(Svg svg, double y, double left, double width, double px, String text) {
        svg.raw("<path fill=\"none\" stroke=\"#a39a80\"").attr("stroke-width", 1.6 * px).raw(" stroke-dasharray=\"").num(8 * px)
                .raw(" ").num(6 * px).raw("\" d=\"M").num(left + 20 * px).raw(" ").num(y).raw("h").num(width - 40 * px).raw("\"/>");
        if (text != null) {
            label(svg, left + 24 * px, y + 19 * px, px, "start", text);
        }
    }

    private static void label(Svg svg, double x, double y, double px, String anchor, String text) {
        svg.raw("<text font-family=\"Figtree, Helvetica, Arial, sans-serif\" fill=\"#5f5c4d\" text-anchor=\"").raw(anchor)
                .raw("\"").attr("font-size", 14 * px).attr("x", x).attr("y", y).raw(">").text(text).raw("</text>");
    }
}
