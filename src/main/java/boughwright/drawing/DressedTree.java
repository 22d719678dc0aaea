package boughwright.drawing;

import boughwright.brief.Brief;
import boughwright.brief.TreeForm;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Pattern;
import boughwright.catalogue.Traits.Shape;
import boughwright.colour.Srgb;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.layout.Gap;
import boughwright.layout.Layout;
import boughwright.layout.Placement;
import boughwright.layout.Point;
import boughwright.layout.RibbonRun;
import boughwright.layout.Stems;
import boughwright.layout.Zone;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the scene of a dressed tree out of its kit and layout, each product with its own shape, finish, colours and size. */
public final class DressedTree {

    /** As many bulbs as a picture can show without turning to snow; they are thinned evenly beyond that. */
    private static final int MOST_BULBS = 320;
    /** An accent's tail, 8 in; low on a small tree it is tucked back in, so that it ends above the floor. Metres. */
    private static final double TAIL = 0.2032;
    private static final double LEAST_TAIL = 0.05;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Warm white, for a tree that brings its own lights. */
    private static final String WARM = "#ffd98a";

    private final Brief brief;
    private final Kit kit;
    private final Layout layout;
    private final Catalogue catalogue;
    private final List<Sprite> sprites = new ArrayList<>();

    private DressedTree(Brief brief, Kit kit, Layout layout, Catalogue catalogue) {
        this.brief = brief;
        this.kit = kit;
        this.layout = layout;
        this.catalogue = catalogue;
    }

    /** @param catalogue holds every product of the kit */
    public static Scene scene(Brief brief, Kit kit, Layout layout, Catalogue catalogue) {
        DressedTree tree = new DressedTree(brief, kit, layout, catalogue);
        tree.lights();
        tree.pieces();
        tree.accents();
        return new Scene(shape(brief), tree.sprites, tree.bands(), layout.seed());
    }

    /** The bare tree of a brief. */
    public static TreeShape shape(Brief brief) {
        TreeForm form = brief.tree().form();
        return new TreeShape(form.height().metres(), form.widestRadius().metres(), form.lowestBranch().metres(), brief.tree().fullness());
    }

    private Product product(String sku) {
        return catalogue.product(sku).orElseThrow(() -> new IllegalStateException("not in the catalogue: " + sku));
    }

    private void lights() {
        Optional<KitLine> line = kit.lines().stream().filter(l -> l.role() == Role.LIGHT_STRING).findFirst();
        String colour = line.map(l -> product(l.sku()).colour().hex()).orElse(WARM);
        String title = line.map(KitLine::name).orElse(Text.of("drawing.own-lights"));
        List<Point> bulbs = line.isPresent() ? layout.bulbs() : brief.tree().lit() ? ownBulbs() : List.of();
        double step = Math.max(1, (double) bulbs.size() / MOST_BULBS);
        for (int i = 0; (int) (i * step) < bulbs.size(); i++) {
            Point at = bulbs.get((int) (i * step));
            sprites.add(new Sprite("bulb-" + (i + 1), "", title, Layer.LIGHTS.word(), Role.LIGHT_STRING.word(), Form.LIGHT, Surface.SHINY, colour, null,
                    0.012, 0, at.x(), at.y(), at.z(), 0.9, 0));
        }
    }

    /** Bulbs of a tree that came with lights, spread over its whole surface; nobody knows where its maker put them. */
    private List<Point> ownBulbs() {
        TreeForm form = brief.tree().form();
        List<Point> bulbs = new ArrayList<>();
        for (int i = 0; i < MOST_BULBS; i++) {
            double down = Math.sqrt((i + 0.5) / MOST_BULBS);
            double y = form.height().metres() - down * (form.height().metres() - form.lowestBranch().metres());
            double angle = 2 * Math.PI * (i * GOLDEN % 1);
            double out = 0.92 * form.radiusAt(y);
            bulbs.add(new Point(out * Math.sin(angle), y, out * Math.cos(angle)));
        }
        return bulbs;
    }

    private void pieces() {
        int fan = 0;
        for (Placement piece : layout.pieces()) {
            if (piece.layer() == Layer.LIGHTS) {
                continue;
            }
            Product product = product(piece.sku());
            double lean = 0;
            if (piece.layer() == Layer.TOPPER && !piece.role().flower()) {
                lean = fan(fan++);
            } else if (piece.role().stem() && !piece.role().flower()) {
                lean = 0.35 * Math.sin(piece.height() * 17 + piece.clock());
            }
            sprites.add(new Sprite(piece.id(), unit(piece), product.name(), piece.layer().word(), piece.role().word(), form(product), surface(product),
                    product.colour().hex(), product.secondColour().map(Srgb::hex).orElse(null), product.width().metres(), shown(piece, product),
                    piece.at().x(), piece.at().y(), piece.at().z(), piece.depth(), lean));
        }
    }

    /** What a hand may move is single or a cluster; the bouquet at the tip is not moved stem by stem. */
    private static String unit(Placement piece) {
        return piece.zone() == Zone.CROWN ? "" : piece.group().isEmpty() ? piece.id() : piece.group();
    }

    /** Topper stems open like a fan from the middle out: upright, left, right, further left, … */
    private static double fan(int index) {
        int out = (index + 1) / 2;
        return (index % 2 == 0 ? 1 : -1) * Math.min(1.05, out * 0.2);
    }

    /** What is seen of a piece's length, metres: of a stem its head, of an ornament all of its drop. */
    private double shown(Placement piece, Product product) {
        return piece.role().stem() ? Stems.shown(piece, product, brief) : product.length().metres();
    }

    private void accents() {
        Optional<KitLine> ribbon = kit.lines().stream().filter(l -> l.role() == Role.ACCENT_RIBBON).findFirst();
        if (ribbon.isEmpty()) {
            return;
        }
        Product product = product(ribbon.get().sku());
        for (Gap gap : layout.gaps()) {
            Form form = switch (gap.accent()) {
                case TAILS -> Form.TAILS;
                case ONE_LOOP_BOW -> Form.ONE_LOOP_BOW;
                case TWO_LOOP_BOW -> Form.TWO_LOOP_BOW;
            };
            sprites.add(new Sprite(gap.id(), "", product.name(), Layer.ACCENTS.word(), Role.GAP_ACCENT.word(), form, surface(product),
                    product.colour().hex(), product.secondColour().map(Srgb::hex).orElse(null), product.width().metres(), Math.min(TAIL, Math.max(LEAST_TAIL, gap.at().y() - LEAST_TAIL / 2)),
                    gap.at().x(), gap.at().y(), gap.at().z(), 1, 0));
        }
    }

    private List<Band> bands() {
        List<Band> bands = new ArrayList<>();
        for (RibbonRun run : layout.ribbonRuns()) {
            Optional<Product> base = run.baseSku().isEmpty() ? Optional.empty() : Optional.of(product(run.baseSku()));
            Optional<Product> overlay = run.overlaySku().isEmpty() ? Optional.empty() : Optional.of(product(run.overlaySku()));
            Product under = base.or(() -> overlay).orElseThrow();
            Product over = overlay.orElse(under);
            bands.add(new Band(run.id(), over.name(), Layer.RIBBON.word(),
                    run.points().stream().map(p -> new double[] {p.x(), p.y(), p.z()}).toList(),
                    under.width().metres(), under.colour().hex(), base.isPresent() && overlay.isPresent() ? over.width().metres() : 0,
                    over.colour().hex(), RibbonPattern.valueOf(over.pattern().orElse(Pattern.PLAIN).name())));
        }
        return bands;
    }

    static Form form(Product product) {
        return product.shape() == Shape.STRING ? Form.LIGHT : product.shape() == Shape.RIBBON ? Form.TAILS : Form.valueOf(product.shape().name());
    }

    static Surface surface(Product product) {
        Finish finish = product.finish();
        return Surface.valueOf(finish.name());
    }

    /** A little picture of one product, on a transparent ground. */
    public static String swatch(Product product, int px) {
        String id = "p" + product.sku().replaceAll("[^A-Za-z0-9]", "");
        if (product.shape() == Shape.RIBBON) {
            return ProductPicture.swatch(new ProductPicture.Ribbon(product.name(), product.colour().hex(),
                    RibbonPattern.valueOf(product.pattern().orElse(Pattern.PLAIN).name()), product.width().metres(), id), px);
        }
        return ProductPicture.swatch(new ProductPicture.Product(product.name(), form(product), surface(product), product.colour().hex(),
                product.secondColour().map(Srgb::hex).orElse(null), product.width().metres(), product.length().metres(), id), px);
    }
}
