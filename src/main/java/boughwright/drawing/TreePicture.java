package boughwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The dressed tree, seen straight on from one side or from above, drawn to scale. One unit of the picture is one millimetre.
 *
 * <p>The text is SVG 1.1 without scripts, styles or outside references. Every piece is a group with {@code data-piece}
 * and, but for bulbs, a title, inside groups with {@code data-layer}, of which a layer has one in each slice of depth; a page hides a
 * layer by hiding those groups. Equal arguments give equal text.
 */
public final class TreePicture {

    private static final int SLICES = 12;
    /** Height over width of the room that a picture is usually given. */
    private static final double TALLEST = 1.4;

    private record Item(String layer, double order, boolean tucked, Placing placing, Sprite sprite, Band band, Strip strip) { }

    private final Scene scene;
    private final Options options;
    private final Projection eye;
    private final Studio studio;
    private final Pieces pieces;
    private final RibbonPainter ribbons;
    private final Svg svg = new Svg(260_000);

    private TreePicture(Scene scene, View view, Options options) {
        this.scene = scene;
        this.options = options;
        eye = new Projection(view);
        studio = new Studio(options.idPrefix(), options.evening());
        pieces = new Pieces(studio);
        ribbons = new RibbonPainter(studio);
    }

    /** The picture as SVG text. */
    public static String svg(Scene scene, View view, Options options) {
        return view == View.ABOVE ? AbovePicture.svg(scene, options) : new TreePicture(scene, view, options).draw();
    }

    private String draw() {
        TreeShape tree = scene.tree();
        double reach = tree.widestRadius() * 1.17 + 0.03;
        double top = tree.height() + 0.06;
        for (Sprite s : scene.sprites()) {
            double extent = s.form().hold() == Form.Hold.GROWS
                    ? Pieces.length(s.form(), s.width() * 1000, s.length() * 1000) / 1000 : s.width() / 2;
            double r = Math.hypot(s.x(), s.z());
            reach = Math.max(reach, r < 0.06 ? extent * 0.7 : r + Math.min(extent, 0.35) * 0.75);
            top = Math.max(top, s.y() + extent + 0.04);
        }
        for (Band band : scene.bands()) {
            for (double[] point : band.points()) {
                reach = Math.max(reach, Math.abs(eye.right(point)) + band.baseWidth() * 0.55);
            }
        }
        double inner = 2 * reach * 1000;
        double margin = options.ruler() == Ruler.NONE ? 0 : 52;
        double usual = inner / Math.max(0.3, 1 - margin / options.widthPx());
        double height = top * 1000 * 1.02 + Math.max(26 * usual / options.widthPx(), tree.widestRadius() * 170);
        // A tall narrow picture is fitted by its height, and its words must still be read.
        double px = Math.max(usual, height / TALLEST) / options.widthPx();
        double width = Math.max(usual, inner + margin * px);
        double left = -reach * 1000;
        double up = -top * 1000 * 1.02;

        Setting setting = new Setting(tree, studio);
        if (options.background()) {
            setting.ground(svg, left, up, width, height);
        }
        if (options.evening() && shows("lights")) {
            setting.dusk(svg);
        }
        if (options.floor()) {
            setting.floor(svg);
        }
        setting.trunk(svg);
        Foliage foliage = new Foliage(tree, eye, studio, scene.seed());
        foliage.paintUnder(svg);
        List<Item> items = items();
        List<Item> tucked = items.stream().filter(Item::tucked).toList();
        slices(tucked);
        foliage.paintOver(svg, brows(tucked));
        slices(items.stream().filter(i -> !i.tucked()).toList());
        if (options.evening()) {
            halos(items);
        }
        setting.ruler(svg, options.ruler(), reach * 1000 + 2 * px, px, options.floorLabel());
        return Frame.of(new double[] {left, up, width, height}, options.widthPx(), options.idPrefix(), options.title(),
                options.description(), studio, svg);
    }

    private boolean shows(String layer) {
        return options.layers() == null || options.layers().contains(layer);
    }

    private List<Item> items() {
        List<Item> out = new ArrayList<>();
        for (Sprite s : scene.sprites()) {
            Placing placing = new Placing(s, scene.tree(), eye);
            if (shows(s.layer()) && !placing.hidden()) {
                out.add(new Item(s.layer(), placing.order(), placing.tucked(), placing, s, null, null));
            }
        }
        for (Band band : scene.bands()) {
            if (!shows(band.layer())) {
                continue;
            }
            for (Strip strip : new RunShape(band, scene.tree(), eye).strips()) {
                double y = -strip.y()[strip.samples() / 2] / 1000;
                if (strip.near() > -0.12 * scene.tree().radiusAt(y)) {
                    out.add(new Item(band.layer(), strip.near() - 0.02, strip.near() < 0, null, null, band, strip));
                }
            }
        }
        return out;
    }

    /** Where a sprig is laid over the brow of what sits deep: {x, y, radius} in mm. */
    private static List<double[]> brows(List<Item> tucked) {
        List<double[]> out = new ArrayList<>();
        for (Item item : tucked) {
            if (item.sprite != null && item.sprite.form() == Form.BALL) {
                out.add(new double[] {item.placing.x(), item.placing.y(), item.sprite.width() * 500});
            }
        }
        return out;
    }

    /** Back to front in slices of depth; within a slice a layer stays together where nothing nearer comes between. */
    private void slices(List<Item> items) {
        if (items.isEmpty()) {
            return;
        }
        double far = items.stream().mapToDouble(Item::order).min().orElse(0);
        double close = items.stream().mapToDouble(Item::order).max().orElse(1);
        double thick = Math.max(1e-6, (close - far) / SLICES);
        List<Item> sorted = new ArrayList<>(items);
        sorted.sort(Comparator.comparingInt((Item i) -> (int) Math.min(SLICES - 1, (i.order - far) / thick))
                .thenComparingInt(i -> rank(i)).thenComparing(Item::layer).thenComparingDouble(Item::order));
        String open = null;
        for (Item item : sorted) {
            if (!item.layer.equals(open)) {
                if (open != null) {
                    svg.raw("</g>");
                }
                open = item.layer;
                svg.raw("<g").attr("data-layer", open).raw(">");
            }
            piece(item);
        }
        svg.raw("</g>");
    }

    private static int rank(Item item) {
        if (item.band != null) {
            return 1;
        }
        return switch (item.sprite.form().hold()) {
            case CENTRE -> item.sprite.form() == Form.LIGHT ? 0 : 2;
            case GROWS -> 3;
            case TIED -> 4;
            case FACES -> 5;
            case HANGS, PERCHES -> 6;
        };
    }

    private void piece(Item item) {
        if (item.band != null) {
            svg.raw("<g").attr("data-piece", item.band.id()).attr("data-unit", item.band.id()).raw("><title>").text(item.band.title()).raw("</title>");
            studio.dim(item.strip.near() < 0);
            int middle = item.strip.samples() / 2;
            double cone = scene.tree().radiusAt(-item.strip.y()[middle] / 1000) * 1000;
            ribbons.paint(svg, item.band, item.strip, Math.abs(item.strip.x()[middle]) < cone * 0.82);
            studio.dim(false);
            svg.raw("</g>");
            return;
        }
        Sprite s = item.sprite;
        studio.dim(item.placing.dim());
        String id = pieces.shape(s.form(), s.surface(), s.colour(), s.secondColour(), s.width(), s.length(), item.placing.spin() >> 8);
        studio.dim(false);
        svg.raw("<g").attr("data-piece", s.id());
        if (s.unit().isEmpty() && s.form() != Form.LIGHT) {
            svg.raw(" data-still=\"\"");
        } else if (!s.unit().isEmpty() && !s.unit().equals(s.id())) {
            svg.attr("data-unit", s.unit());
        }
        svg.raw(">");
        if (s.form() != Form.LIGHT) {
            // Hundreds of bulbs that all say the same would only swell the picture.
            svg.raw("<title>").text(s.title()).raw("</title>");
        }
        svg.raw("<use xlink:href=\"#").raw(id).raw("\" transform=\"");
        item.placing.transform(svg.builder());
        svg.raw("\"/></g>");
    }

    private void halos(List<Item> items) {
        svg.raw("<g data-layer=\"lights\" aria-hidden=\"true\">");
        for (Item item : items) {
            if (item.sprite != null && item.sprite.form() == Form.LIGHT) {
                svg.raw("<use xlink:href=\"#").raw(pieces.halo(item.sprite.colour())).raw("\" transform=\"");
                item.placing.transform(svg.builder());
                svg.raw("\"/>");
            }
        }
        svg.raw("</g>");
    }
}
