package boughwright.layout;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.layout.GapFinder.Filled;
import boughwright.layout.Patterns.Wished;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Spot;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Dresses one tree: places every piece of a kit on the seen part of its cone.
 *
 * <p>Pure and deterministic: the same kit, tree, seed and moves give the same layout. Everything is kept in the order in which it would
 * go on the tree. Clusters zigzag down and single flowers cross them; runs of ribbon go round the clusters; sprays follow
 * diagonals; filler balls lie deep, larger ones deeper and lower; feature ornaments hang at the tips; accents fill the largest
 * gaps that are left. Within each zone pieces start from their pattern and are spread until each has its room ({@link Spread}),
 * like ones apart ({@link Styles}), and none where no branch bears it ({@link Bearing}).
 */
public final class Dressing {

    /** Radius of a string's plug, metres. */
    private static final double PLUG = 0.01;
    /** Of a run's ribbon about half faces the viewer; the rest curls away or lies under the loops. */
    private static final double RIBBON_SHOWN = 0.5;

    private final Brief brief;
    private final Needs needs;
    private final Kit kit;
    private final Catalogue catalogue;
    private final long seed;
    private final Map<String, Spot> moved;
    private final Surface surface;
    private final Load load;
    private final List<Placement> pieces = new ArrayList<>();

    private Dressing(Brief brief, Needs needs, Kit kit, Catalogue catalogue, long seed, Map<String, Spot> moved) {
        this.brief = brief;
        this.needs = needs;
        this.kit = kit;
        this.catalogue = catalogue;
        this.seed = seed;
        this.moved = new TreeMap<>(moved);
        this.surface = new Surface(brief.tree());
        this.load = new Load(surface, catalogue);
    }

    public static Layout of(Brief brief, Needs needs, Kit kit, Catalogue catalogue, long seed) {
        return of(brief, needs, kit, catalogue, seed, Map.of());
    }

    /**
     * @param catalogue the one that the kit was chosen from
     * @param seed chooses among equals, such as which run of ribbon gets a small loop
     * @param moved where hands have put a piece, a cluster or a run, by its id; ids that this layout does not have are passed over
     */
    public static Layout of(Brief brief, Needs needs, Kit kit, Catalogue catalogue, long seed, Map<String, Spot> moved) {
        return new Dressing(brief, needs, kit, catalogue, seed, moved).dress();
    }

    private Layout dress() {
        List<Point> bulbs = windLights();
        setTopper();
        Florals florals = new Florals(load);
        florals.setFlowers(Stream.of(Role.HEIGHT_STEM, Role.TEXTURE_STEM, Role.FACE_FLOWER).flatMap(r -> lines(Layer.FLORALS, r).stream()).toList(),
                lines(Layer.FLORALS, Role.SINGLE_FLOWER));
        florals.setSprays(lines(Layer.FLORALS, Role.SPRAY));
        Ornaments ornaments = new Ornaments(load, new Bearing(brief.tree()));
        ornaments.tuckBalls(lines(Layer.ORNAMENTS, Role.FILLER_BALL));
        ornaments.hangFeatures(lines(Layer.ORNAMENTS, Role.FEATURE_ORNAMENT));
        List<Hung> hung = load.hung();
        List<Hung> asHung = hung.stream().filter(Hung::cluster).toList();
        MakingRoom room = new MakingRoom(surface, moved);
        Map<String, Hung> settled = new HashMap<>();
        for (Zone zone : Zone.values()) {
            room.of(hung.stream().filter(h -> h.zone() == zone).toList()).forEach(h -> settled.put(h.id(), h));
        }
        hung.replaceAll(h -> settled.get(h.id()));
        hung.forEach(this::place);
        List<Hung> clusters = hung.stream().filter(Hung::cluster).toList();
        // Runs go round clusters where these would hang: ribbon that sprang aside from a moved flower would surprise its mover.
        RibbonRuns.Laid ribbon = runRibbon(asHung);
        List<Clash> clashes = new ArrayList<>(room.clashes());
        clashes.addAll(runsAcross(ribbon.runs(), clusters));
        GapFinder finder = new GapFinder(surface, filled(ribbon.runs()));
        Accents.Filling accents = fillGaps(finder);
        List<RollCuts> cuts = new ArrayList<>(ribbon.cuts());
        cuts.addAll(accents.cuts());
        TreeMap<String, Spot> middles = new TreeMap<>();
        clusters.forEach(c -> middles.put(c.id(), new Spot(surface.height(c.slant()), Surface.clock(c.angle()))));
        return new Layout(pieces, middles, bulbs, ribbon.runs(), cuts, accents.gaps(), accents.stop(),
                new Evenness(surface, pieces, hung).measures(finder.largest().diameter(), coverage(ribbon.runs(), accents.gaps()), ribbon.runs(),
                        accents.gaps().size()),
                load.unplaced(), ornaments.strained(), clashes, seed);
    }

    private List<KitLine> lines(Layer layer, Role role) {
        return kit.lines().stream().filter(l -> l.layer() == layer && l.role() == role && l.quantity() > 0).toList();
    }

    private List<Point> windLights() {
        List<Point> bulbs = new ArrayList<>();
        List<KitLine> lines = lines(Layer.LIGHTS, Role.LIGHT_STRING);
        int all = lines.stream().mapToInt(l -> l.quantity() * perString(l)).sum();
        // Strings of several makes follow one another on one winding.
        List<Wished> winding = Patterns.spiral(surface, all, 0.13);
        for (int i = 0; i < winding.size(); i++) {
            Wished at = winding.get(i);
            bulbs.add(surface.point(at.slant(), at.angle(), 0.7 + 0.25 * (i * Patterns.GOLDEN * 3 % 1)));
        }
        int begin = 0;
        for (KitLine line : lines) {
            for (int string = 0; string < line.quantity(); string++) {
                load.hang(line, Zone.MIDDLE, winding.get(begin), Zone.MIDDLE.depth(), PLUG, load.anywhere());
                begin += perString(line);
            }
        }
        return bulbs;
    }

    private int perString(KitLine line) {
        return load.product(line).lights().orElseThrow().bulbs();
    }

    private void setTopper() {
        Crown crown = new Crown(surface, load::width);
        List<Crown.Stem> stems = new ArrayList<>();
        stems.addAll(crown.ring(lines(Layer.TOPPER, Role.HEIGHT_STEM), surface.cone().slant() * 0.02, 0.05, 0.10));
        stems.addAll(crown.ring(lines(Layer.TOPPER, Role.TEXTURE_STEM), surface.top() * 0.15, 0.55, 0.37));
        stems.addAll(crown.rows(lines(Layer.TOPPER, Role.FACE_FLOWER), 0.9));
        for (Crown.Stem stem : stems) {
            pieces.add(new Placement(load.nextId(stem.line()), stem.line().needId(), stem.line().sku(), stem.line().layer(), stem.line().role(), Zone.CROWN,
                    "grouping-" + stem.number(), surface.height(stem.slant()), Surface.clock(stem.angle()), stem.depth(),
                    surface.point(stem.slant(), stem.angle(), stem.depth()), load.width(stem.line()) / 2, OptionalDouble.empty()));
        }
    }

    private RibbonRuns.Laid runRibbon(List<Hung> clusters) {
        Optional<KitLine> base = lines(Layer.RIBBON, Role.BASE_RIBBON).stream().findFirst();
        Optional<KitLine> overlay = lines(Layer.RIBBON, Role.OVERLAY_RIBBON).stream().findFirst();
        return new RibbonRuns(surface, needs.ribbon(), seed, clusters, moved).lay(base.map(load::product), base.map(KitLine::quantity).orElse(0),
                overlay.map(load::product), overlay.map(KitLine::quantity).orElse(0));
    }

    private List<Clash> runsAcross(List<RibbonRun> runs, List<Hung> clusters) {
        List<Clash> clashes = new ArrayList<>();
        for (RibbonRun run : runs) {
            for (Hung cluster : clusters) {
                boolean byHand = moved.containsKey(run.id()) || moved.containsKey(cluster.id());
                if (byHand && RunWays.crosses(surface, run.points(), cluster)) {
                    boolean runMoved = moved.containsKey(run.id());
                    clashes.add(new Clash(runMoved ? run.id() : cluster.id(), runMoved ? cluster.id() : run.id(), Clash.Kind.RUN_ACROSS));
                }
            }
        }
        return clashes;
    }

    private void place(Hung h) {
        for (Hung.Part part : h.parts()) {
            double slant = h.slant() + part.down();
            // A stem of a cluster by the edge is bound toward the room.
            double angle = surface.within(slant, h.angle() + part.aside() / Math.max(0.05, surface.radius(slant)), 0);
            KitLine line = part.line();
            pieces.add(new Placement(part.id(), line.needId(), line.sku(), line.layer(), line.role(), h.zone(), h.cluster() ? h.id() : "",
                    surface.height(slant), Surface.clock(angle), h.depth(), surface.point(slant, angle, h.depth()), part.radius(),
                    line.role().stem() ? Stems.fold(load.product(line).length().metres(), surface, slant) : OptionalDouble.empty()));
        }
    }

    private List<Filled> filled(List<RibbonRun> runs) {
        List<Filled> filled = new ArrayList<>();
        for (Placement piece : pieces) {
            if (piece.layer() != Layer.LIGHTS && piece.zone() != Zone.CROWN) {
                double out = piece.depth() <= 0 ? 1 : 1 / piece.depth();
                // What lies deep is seen between the branches, and fills half of what it would at the tips.
                filled.add(new Filled(new Point(piece.at().x() * out, piece.at().y(), piece.at().z() * out),
                        piece.zone() == Zone.DEEP ? piece.radius() / 2 : piece.radius()));
            }
        }
        for (RibbonRun run : runs) {
            for (int i = 0; i < run.points().size(); i += 3) {
                filled.add(new Filled(run.points().get(i), 0.05));
            }
        }
        return filled;
    }

    private Accents.Filling fillGaps(GapFinder finder) {
        Optional<KitLine> ribbon = lines(Layer.RIBBON, Role.ACCENT_RIBBON).stream().findFirst();
        if (ribbon.isEmpty() || needs.accents().isEmpty()) {
            return new Accents.Filling(List.of(), List.of(), GapStop.NO_ACCENTS);
        }
        return new Accents(surface, load.product(ribbon.get()), ribbon.get().quantity(), needs.accents())
                .fill(finder, needs.quantity(Layer.ACCENTS, Role.GAP_ACCENT));
    }

    private Map<Layer, Double> coverage(List<RibbonRun> runs, List<Gap> gaps) {
        double area = surface.area();
        Map<Layer, Double> coverage = new EnumMap<>(Layer.class);
        for (Layer layer : Layer.values()) {
            coverage.put(layer, 0.0);
        }
        pieces.forEach(p -> coverage.merge(p.layer(), Math.PI * p.radius() * p.radius() / area, Double::sum));
        for (RibbonRun run : runs) {
            double width = catalogue.product(run.baseSku().isEmpty() ? run.overlaySku() : run.baseSku()).orElseThrow().width().metres();
            coverage.merge(Layer.RIBBON, RIBBON_SHOWN * run.length() * width / area, Double::sum);
        }
        for (Gap gap : gaps) {
            double radius = Accents.FILLS * gap.diameter() / 2;
            coverage.merge(Layer.ACCENTS, Math.PI * radius * radius / area, Double::sum);
        }
        return coverage;
    }
}
