package boughwright.drawing;

import boughwright.layout.Bough;
import boughwright.layout.Boughs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The dressed tree seen straight down, to scale, 6 o'clock at the foot, inside a clock face by which places are read. What is
 * lower is painted first. The same conventions as {@link TreePicture}; one unit is one millimetre.
 */
final class AbovePicture {

    private static final String[] BODY = {"#0d2219", "#163524", "#1e4630", "#285639", "#336848"};
    private static final String[] LIT = {"#143021", "#21492f", "#2c5b3c", "#3a6e4c", "#4d8560"};
    /** A ring this much wider than the tree carries the hours. */
    private static final double RING = 1.22;

    private record Item(String layer, double height, Sprite sprite, Band band, Strip strip) { }

    private final Scene scene;
    private final Options options;
    private final Studio studio;
    private final Pieces pieces;
    private final RibbonPainter ribbons;
    private final Svg svg = new Svg(260_000);

    private AbovePicture(Scene scene, Options options) {
        this.scene = scene;
        this.options = options;
        this.studio = new Studio(options.idPrefix(), options.evening());
        this.pieces = new Pieces(studio);
        this.ribbons = new RibbonPainter(studio);
    }

    static String svg(Scene scene, Options options) {
        return new AbovePicture(scene, options).draw();
    }

    private String draw() {
        TreeShape tree = scene.tree();
        double reach = 1000 * Math.max(tree.widestRadius() * RING, widest() + 0.06);
        double edge = reach * 1.13;
        if (options.background()) {
            new Setting(tree, studio).ground(svg, -edge, -edge, 2 * edge, 2 * edge);
        }
        if (options.floor()) {
            Shade.pool(svg, studio.evening() ? "#08060b" : "#51492f", studio.evening() ? 0.1 : 0.042, 0, 0, tree.widestRadius() * 1120,
                    tree.widestRadius() * 1120);
        }
        clock(reach, edge);
        boughs(tree);
        List<Item> items = items();
        items.sort(Comparator.comparingDouble(Item::height));
        String open = null;
        for (Item item : items) {
            if (!item.layer.equals(open)) {
                svg.raw(open == null ? "" : "</g>");
                open = item.layer;
                svg.raw("<g").attr("data-layer", open).raw(">");
            }
            paint(item);
        }
        svg.raw(open == null ? "" : "</g>");
        return Frame.of(new double[] {-edge, -edge, 2 * edge, 2 * edge}, options.widthPx(), options.idPrefix(), options.title(),
                options.description(), studio, svg);
    }

    /** Metres from the axis to the farthest ribbon or ornament. */
    private double widest() {
        double widest = 0;
        for (Sprite s : scene.sprites()) {
            widest = Math.max(widest, Math.hypot(s.x(), s.z()) + Math.min(0.2, Math.max(s.width(), s.length()) / 2));
        }
        for (Band band : scene.bands()) {
            for (double[] p : band.points()) {
                widest = Math.max(widest, Math.hypot(p[0], p[2]));
            }
        }
        return widest;
    }

    private boolean shows(String layer) {
        return options.layers() == null || options.layers().contains(layer);
    }

    /** The clock face: an hour at each twelfth, the hours at the quarters larger. */
    private void clock(double reach, double edge) {
        String ink = studio.evening() ? "#b9a98a" : "#8b836c";
        String word = studio.evening() ? "#d8c9a8" : "#6d6a5a";
        double px = 2 * edge / options.widthPx();
        Path marks = Path.fine();
        for (int hour = 1; hour <= 12; hour++) {
            double angle = Math.PI * (6 - hour) / 6;
            double in = hour % 3 == 0 ? 0.95 : 0.975;
            marks.m(Math.sin(angle) * reach * in, Math.cos(angle) * reach * in).l(Math.sin(angle) * reach, Math.cos(angle) * reach);
        }
        svg.raw("<g aria-hidden=\"true\">").stroke(ink, px, Path.fine().ellipse(0, 0, reach, reach)).stroke(ink, 1.5 * px, marks);
        svg.raw("<g text-anchor=\"middle\" font-family=\"Figtree, Helvetica, Arial, sans-serif\" fill=\"").raw(word).raw("\">");
        for (int hour = 1; hour <= 12; hour++) {
            double angle = Math.PI * (6 - hour) / 6;
            double size = (hour % 3 == 0 ? 15 : 11) * px;
            svg.raw("<text").attr("font-size", size).attr("x", Math.sin(angle) * (reach + 10.5 * px))
                    .attr("y", Math.cos(angle) * (reach + 10.5 * px) + size * 0.36).raw(">").raw(Integer.toString(hour)).raw("</text>");
        }
        svg.raw("</g></g>");
    }

    /** Boughs from the lowest tier up, each as a fan of sprigs pointing outward, lit from the upper left. */
    private void boughs(TreeShape tree) {
        Boughs boughs = Boughs.grow(tree.height(), tree.widestRadius(), tree.lowestBranch(), tree.fullness(), scene.seed());
        Sprigs sprigs = new Sprigs(studio, boughs.sprig() * 1000, tree.fullness(), scene.seed());
        SplittableRandom random = new SplittableRandom(scene.seed() ^ 0xab0feL);
        double length = boughs.sprig() * 1000;
        svg.fill(studio.tone("#0c1f16"), Path.coarse().ellipse(0, 0, tree.widestRadius() * 780, tree.widestRadius() * 780));
        svg.raw("<g stroke-linecap=\"round\"").attr("stroke-width", length * 0.026).raw(">");
        for (Bough bough : boughs.all()) {
            SplittableRandom own = random.split();
            double sin = Math.sin(bough.around());
            double cos = Math.cos(bough.around());
            int rows = bough.reach() < boughs.sprig() ? 1 : 2;
            for (int row = 0; row < rows; row++) {
                double foot = 1000 * Math.max(0, bough.reach() - boughs.sprig() * bough.size() * (0.82 + 0.55 * row));
                double turn = Math.toDegrees(Math.atan2(cos, sin)) + 24 * (own.nextDouble() - 0.5);
                // The tip is higher and brighter than what lies beneath it.
                double light = 1.7 + (bough.tier() % 2 == 0 ? 0.5 : -0.5) - row * 0.9 - 0.9 * sin - 0.7 * cos + 1.2 * (own.nextDouble() - 0.5);
                int shade = (int) Math.max(0, Math.min(BODY.length - 1, Math.round(light)));
                String id = row == 0 ? sprigs.fan(bough.size(), 0.4, own.nextInt(Sprigs.SHAPES)) : sprigs.id(bough.size(), own.nextInt(Sprigs.SHAPES));
                svg.raw("<g stroke=\"").raw(studio.tone(BODY[shade])).raw("\" fill=\"").raw(studio.tone(LIT[shade])).raw("\"><use xlink:href=\"#").raw(id)
                        .raw("\" transform=\"translate(");
                svg.builder().append(Math.round(sin * foot)).append(' ').append(Math.round(cos * foot)).append(") rotate(").append(Math.round(turn))
                        .append(")\"/></g>");
            }
        }
        svg.raw("</g>");
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (Sprite s : scene.sprites()) {
            // What is tucked deep lies under the boughs of the tier above.
            if (shows(s.layer()) && (s.depth() >= 0.75 || s.y() > scene.tree().height() * 0.8)) {
                items.add(new Item(s.layer(), s.y(), s, null, null));
            }
        }
        Projection eye = new Projection(View.ABOVE);
        for (Band band : scene.bands()) {
            if (shows(band.layer())) {
                for (Strip strip : new RunShape(band, scene.tree(), eye).strips()) {
                    items.add(new Item(band.layer(), strip.near(), null, band, strip));
                }
            }
        }
        return items;
    }

    private void paint(Item item) {
        if (item.band != null) {
            svg.raw("<g").attr("data-piece", item.band.id()).raw("><title>").text(item.band.title()).raw("</title>");
            ribbons.paint(svg, item.band, item.strip, true);
            svg.raw("</g>");
            return;
        }
        Sprite s = item.sprite;
        String id = pieces.shape(s.form(), s.surface(), s.colour(), s.secondColour(), s.width(), s.length(), Math.floorMod(s.id().hashCode(), 64));
        svg.raw("<g").attr("data-piece", s.id()).raw(">");
        if (s.form() != Form.LIGHT) {
            svg.raw("<title>").text(s.title()).raw("</title>");
        }
        svg.raw("<use xlink:href=\"#").raw(id).raw("\" transform=\"");
        transform(s);
        svg.raw("\"/></g>");
    }

    /** Outward from the trunk is down for what hangs and up for what grows. */
    private void transform(Sprite s) {
        double outward = Math.toDegrees(Math.atan2(s.x(), s.z()));
        boolean bouquet = s.y() > scene.tree().height() * 0.85 && s.form().hold() == Form.Hold.GROWS;
        StringBuilder out = svg.builder();
        out.append("translate(").append(Math.round(s.x() * 1000)).append(' ').append(Math.round(s.z() * 1000)).append(')');
        switch (s.form().hold()) {
            case CENTRE -> {
                if (s.form() == Form.BALL) {
                    scale(out, s.width() * 10, s.width() * 10);
                }
            }
            case FACES -> {
                out.append(" rotate(").append(Math.round(-outward)).append(')');
                // A head that faces outward is foreshortened along that way.
                scale(out, s.width() * 10, s.width() * 7);
            }
            case GROWS -> {
                double heading = bouquet ? Math.toDegrees(s.lean() * 2) + (s.lean() == 0 ? 0 : 90) : 180 - outward;
                out.append(" rotate(").append(Math.round(heading)).append(')');
                if (bouquet) {
                    scale(out, 0.6, 0.6);
                }
            }
            case HANGS, PERCHES, TIED -> {
                out.append(" rotate(").append(Math.round(-outward)).append(')');
                scale(out, 1, s.form().hold() == Form.Hold.TIED ? 0.8 : 0.55);
            }
        }
    }

    private static void scale(StringBuilder out, double across, double along) {
        out.append(" scale(");
        Svg.fine(out, across);
        out.append(' ');
        Svg.fine(out, along);
        out.append(')');
    }
}
