package boughwright.layout;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.kit.OwnFirst;
import boughwright.layout.GapFinder.Filled;
import boughwright.layout.Patterns.Wished;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

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
    /** Radius of a bound stem's own room over its cluster's: as far from the cluster's middle as it is set, it stays within. */
    private static final double BOUND = 0.48;
    /** Of a run's ribbon about half faces the viewer; the rest curls away or lies under the loops. */
    private static final double RIBBON_SHOWN = 0.5;
    /** How far the largest balls rank below the smallest, over the whole tree; features go strictly by size. */
    private static final double BALL_PULL = 0.36;
    private static final double FEATURE_PULL = 1;
    /** Depths of the largest and the smallest filler ball. */
    private static final double DEEPEST = 0.54;
    private static final double SHALLOWEST = 0.66;
    /** A piece too heavy for the whole tree hangs in its lowest part: below this share of the slant. */
    private static final double LOW = 0.75;
    /** Between floor and what hangs lowest, metres. */
    private static final double CLEAR_OF_FLOOR = 0.02;
    /** How far a piece may stray from its pattern, over what each has of the surface. */
    private static final double STRAY = 0.45;

    private final Brief brief;
    private final Needs needs;
    private final Kit kit;
    private final Catalogue catalogue;
    private final long seed;
    private final Map<String, Spot> moved;
    private final Surface surface;
    private final Bearing bearing;
    private final Map<Zone, Places> zones = new EnumMap<>(Zone.class);
    private final List<Hung> hung = new ArrayList<>();
    private final List<Placement> pieces = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private final List<String> strained = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    private Dressing(Brief brief, Needs needs, Kit kit, Catalogue catalogue, long seed, Map<String, Spot> moved) {
        this.brief = brief;
        this.needs = needs;
        this.kit = kit;
        this.catalogue = catalogue;
        this.seed = seed;
        this.moved = new TreeMap<>(moved);
        this.surface = new Surface(brief.tree());
        this.bearing = new Bearing(brief.tree());
        for (Zone zone : Zone.values()) {
            // What hangs at the tips would otherwise hang in the flowers.
            zones.put(zone, zone == Zone.TIP ? new Places(surface, zones.get(Zone.OUTER)) : new Places(surface));
        }
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
        setFlowers();
        setSprays();
        tuckFillerBalls();
        hangFeatures();
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
                unplaced, strained, clashes, seed);
    }

    private List<KitLine> lines(Layer layer, Role role) {
        return kit.lines().stream().filter(l -> l.layer() == layer && l.role() == role && l.quantity() > 0).toList();
    }

    private Product product(KitLine line) {
        return catalogue.product(line.sku()).orElseThrow(() -> new IllegalStateException("not in the catalogue: " + line.sku()));
    }

    private double width(KitLine line) {
        return product(line).width().metres();
    }

    /** Ids tell the need and the number within it, so that a piece keeps its own while the rest of the kit changes. */
    private String nextId(KitLine line) {
        String layer = line.layer().word() + "/";
        String need = line.needId().startsWith(layer) && line.layer() != Layer.TOPPER ? line.needId().substring(layer.length()) : line.needId();
        String stem = need.replace('/', '-');
        return stem + "-" + numbers.merge(stem, 1, Integer::sum);
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
                hang(line, nextId(line), Zone.MIDDLE, winding.get(begin), Zone.MIDDLE.depth(), PLUG, new Bounds(0, surface.bottom()));
                begin += perString(line);
            }
        }
        return bulbs;
    }

    private int perString(KitLine line) {
        return product(line).lights().orElseThrow().bulbs();
    }

    private void setTopper() {
        Crown crown = new Crown(surface, this::width);
        List<Crown.Stem> stems = new ArrayList<>();
        stems.addAll(crown.ring(lines(Layer.TOPPER, Role.HEIGHT_STEM), surface.cone().slant() * 0.02, 0.05, 0.10));
        stems.addAll(crown.ring(lines(Layer.TOPPER, Role.TEXTURE_STEM), surface.top() * 0.15, 0.55, 0.37));
        stems.addAll(crown.rows(lines(Layer.TOPPER, Role.FACE_FLOWER), 0.9));
        for (Crown.Stem stem : stems) {
            pieces.add(new Placement(nextId(stem.line()), stem.line().needId(), stem.line().sku(), stem.line().layer(), stem.line().role(), Zone.CROWN,
                    "grouping-" + stem.number(), surface.height(stem.slant()), Surface.clock(stem.angle()), stem.depth(),
                    surface.point(stem.slant(), stem.angle(), stem.depth()), width(stem.line()) / 2, OptionalDouble.empty()));
        }
    }

    private RibbonRuns.Laid runRibbon(List<Hung> clusters) {
        Optional<KitLine> base = lines(Layer.RIBBON, Role.BASE_RIBBON).stream().findFirst();
        Optional<KitLine> overlay = lines(Layer.RIBBON, Role.OVERLAY_RIBBON).stream().findFirst();
        return new RibbonRuns(surface, needs.ribbon(), seed, clusters, moved).lay(base.map(this::product), base.map(KitLine::quantity).orElse(0),
                overlay.map(this::product), overlay.map(KitLine::quantity).orElse(0));
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

    /** Sizes of pieces shrink on trees that could not carry them side by side. */
    private double scaled(double metres) {
        return Math.min(metres, 0.16 * surface.cone().radius());
    }

    /** Metres that a piece may stray from its pattern when so many share the surface. */
    private double stray(int count) {
        return STRAY * Math.sqrt(surface.area() / Math.max(1, count));
    }

    /** Clusters and the single flowers that cross them share a zone, and are spread together. */
    private void setFlowers() {
        List<KitLine> stems = new ArrayList<>();
        stems.addAll(lines(Layer.FLORALS, Role.HEIGHT_STEM));
        stems.addAll(lines(Layer.FLORALS, Role.TEXTURE_STEM));
        stems.addAll(lines(Layer.FLORALS, Role.FACE_FLOWER));
        List<List<KitLine>> clusters = clusters(stems);
        List<KitLine> singles = lines(Layer.FLORALS, Role.SINGLE_FLOWER);
        int single = singles.stream().mapToInt(KitLine::quantity).sum();
        double radius = scaled(0.11);
        double stray = stray(clusters.size() + single);
        List<Spread.Disc> discs = new ArrayList<>();
        Patterns.zigzag(surface, clusters.size(), 1, 0)
                .forEach(w -> discs.add(new Spread.Disc(w, Zone.OUTER.depth(), radius, stray, false)));
        for (KitLine line : singles) {
            Patterns.zigzag(surface, line.quantity(), -1, 0.35)
                    .forEach(w -> discs.add(new Spread.Disc(w, Zone.OUTER.depth(), scaled(0.45 * width(line)), stray, false)));
        }
        List<Wished> places = Spread.of(surface, discs);
        for (int i = 0; i < clusters.size(); i++) {
            setCluster(clusters.get(i), i, places.get(i), radius);
        }
        int next = clusters.size();
        for (KitLine line : singles) {
            for (int i = 0; i < line.quantity(); i++) {
                hangStem(line, Zone.OUTER, places.get(next), discs.get(next).radius());
                next++;
            }
        }
    }

    /** The stems of each cluster. Of a stem that the customer has in part come two lines; own ones go into the first clusters. */
    private static List<List<KitLine>> clusters(List<KitLine> stems) {
        Map<String, Integer> ends = new LinkedHashMap<>();
        List<List<KitLine>> clusters = new ArrayList<>();
        for (KitLine line : stems) {
            int from = ends.getOrDefault(OwnFirst.whole(line.needId()), 0);
            int to = from + line.quantity();
            while (clusters.size() < to) {
                clusters.add(new ArrayList<>());
            }
            clusters.subList(from, to).forEach(c -> c.add(line));
            ends.put(OwnFirst.whole(line.needId()), to);
        }
        return clusters;
    }

    /**
     * Bound along one branch: the two sprays point up and out behind, the two flowers sit side by side in front. Each cluster is turned
     * its own way and every second one is mirrored, as no two are bound alike.
     */
    private void setCluster(List<KitLine> stems, int number, Wished wished, double radius) {
        List<String> ids = stems.stream().map(this::nextId).toList();
        Optional<Places.Place> place = zones.get(Zone.OUTER).take(wished.slant(), wished.angle(), Zone.OUTER.depth(), radius, 0, surface.bottom());
        if (place.isEmpty()) {
            stems.forEach(line -> unplaced.add(line.needId()));
            return;
        }
        double turn = 1.2 * (number * Patterns.GOLDEN % 1 - 0.5);
        int mirror = number % 2 == 0 ? 1 : -1;
        List<Hung.Part> parts = new ArrayList<>();
        int flower = 0;
        for (int i = 0; i < stems.size(); i++) {
            KitLine line = stems.get(i);
            boolean face = line.role() == Role.FACE_FLOWER;
            double aside = mirror * radius * (face ? (flower++ % 2 == 0 ? -0.45 : 0.45) : line.role() == Role.HEIGHT_STEM ? -0.15 : 0.2);
            double down = radius * (face ? 0.25 : -0.35);
            parts.add(new Hung.Part(ids.get(i), line, down * Math.cos(turn) + aside * Math.sin(turn), aside * Math.cos(turn) - down * Math.sin(turn),
                    BOUND * radius));
        }
        hung.add(new Hung(Hung.CLUSTER + (number + 1), Zone.OUTER, place.get().slant(), place.get().angle(), Zone.OUTER.depth(), radius, 0, parts));
    }

    private void setSprays() {
        List<KitLine> styles = lines(Layer.FLORALS, Role.SPRAY);
        int all = styles.stream().mapToInt(KitLine::quantity).sum();
        List<Spread.Disc> discs = new ArrayList<>();
        for (int style = 0; style < styles.size(); style++) {
            KitLine line = styles.get(style);
            // A spray's head is half air; what must not overlap is its core.
            double core = scaled(0.3 * width(line));
            Patterns.diagonals(surface, line.quantity(), style, styles.size(), all)
                    .forEach(w -> discs.add(new Spread.Disc(w, Zone.MIDDLE.depth(), core, stray(all), false)));
        }
        List<Wished> places = Spread.of(surface, discs);
        int next = 0;
        for (KitLine line : styles) {
            for (int i = 0; i < line.quantity(); i++) {
                hangStem(line, Zone.MIDDLE, places.get(next), discs.get(next).radius());
                next++;
            }
        }
    }

    /** One piece that is to hang somewhere, before it has its place. @param rank the greater the lower */
    private record Due(KitLine line, double depth, double radius, Bounds bounds, double rank) {
    }

    /** Slants between which a piece may hang: a branch bears it, and it hangs clear of the floor. */
    private record Bounds(double from, double to) {
    }

    private void tuckFillerBalls() {
        List<KitLine> bySize = bySize(lines(Layer.ORNAMENTS, Role.FILLER_BALL));
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < bySize.size(); i++) {
            double large = bySize.size() == 1 ? 0.5 : i / (bySize.size() - 1.0);
            double depth = SHALLOWEST + large * (DEEPEST - SHALLOWEST);
            // Larger balls lower: each ball's rank down the tree is its rank in its own size, pulled up or down by that size.
            due.addAll(due(bySize.get(i), depth, BALL_PULL * (large - 0.5)));
        }
        hangSpread(due, Zone.DEEP, 0.5, List.of());
    }

    private void hangFeatures() {
        List<KitLine> bySize = bySize(lines(Layer.ORNAMENTS, Role.FEATURE_ORNAMENT));
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < bySize.size(); i++) {
            due.addAll(due(bySize.get(i), Zone.TIP.depth(), FEATURE_PULL * i));
        }
        hangSpread(due, Zone.TIP, 0.27, hung.stream().filter(h -> h.zone() == Zone.OUTER).toList());
    }

    private List<Due> due(KitLine line, double depth, double pull) {
        Bounds bounds = bounds(line, depth);
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < line.quantity(); i++) {
            due.add(new Due(line, depth, width(line) / 2, bounds, (i + 0.5) / line.quantity() + pull));
        }
        return due;
    }

    private List<KitLine> bySize(List<KitLine> lines) {
        return lines.stream().sorted(Comparator.comparingDouble((KitLine l) -> Math.max(width(l), product(l).length().metres()))
                .thenComparing(KitLine::needId)).toList();
    }

    private Bounds bounds(KitLine line, double depth) {
        double radius = bearing.leastRadius(Bearing.weight(product(line)), depth);
        double from = radius / surface.widening();
        double low = surface.slantAtShare(LOW);
        if (from > low) {
            strained.add(line.needId());
        }
        double drop = Math.max(width(line), product(line).length().metres()) + CLEAR_OF_FLOOR;
        double to = Math.max(low, surface.slantAtHeight(drop));
        return new Bounds(Math.min(from, low), to);
    }

    /**
     * Hangs pieces along one spiral by their rank, then spreads them.
     *
     * @param turn where the spiral starts
     * @param beside what hangs in the zone before, of which these keep clear
     */
    private void hangSpread(List<Due> pieces, Zone zone, double turn, List<Hung> beside) {
        List<Due> due = pieces.stream().sorted(Comparator.comparingDouble(Due::rank).thenComparing(d -> d.line().needId())).toList();
        List<Wished> spiral = Patterns.spiral(surface, due.size(), turn);
        List<Spread.Disc> discs = new ArrayList<>();
        for (int i = 0; i < due.size(); i++) {
            Wished wished = spiral.get(i);
            discs.add(Spread.Disc.free(new Wished(Math.min(wished.slant(), due.get(i).bounds().to()), wished.angle()), due.get(i).depth(),
                    due.get(i).radius()));
        }
        beside.forEach(h -> discs.add(new Spread.Disc(new Wished(h.slant(), h.angle()), h.depth(), h.radius(), 0, true)));
        List<Wished> places = Spread.of(surface, discs);
        List<Styles.Spot> spots = new ArrayList<>();
        for (int i = 0; i < due.size(); i++) {
            spots.add(new Styles.Spot(places.get(i), due.get(i).depth(), due.get(i).radius(), due.get(i).line().sku()));
        }
        Styles.Apart apart = Styles.apart(surface, spots);
        record Going(Due due, Wished to) {
        }
        List<Going> going = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            going.add(new Going(due.get(apart.holds()[i]), apart.places().get(i)));
        }
        // The largest choose first, since they find room least easily; a piece that swapped into thin air takes the nearest bough that bears it.
        going.sort(Comparator.comparingDouble((Going g) -> -g.due().radius()).thenComparing(g -> g.due().line().needId())
                .thenComparingDouble(g -> g.to().slant()));
        for (Going g : going) {
            hang(g.due().line(), nextId(g.due().line()), zone, g.to(), g.due().depth(), g.due().radius(), g.due().bounds());
        }
    }

    /** A stem's head is soft and gives way to its neighbours when the tree is crowded; an ornament does not. */
    private void hangStem(KitLine line, Zone zone, Wished wished, double radius) {
        String id = nextId(line);
        for (double share : new double[] {1, 0.7, 0.5, 0.35}) {
            Optional<Places.Place> place = zones.get(zone).take(wished.slant(), wished.angle(), zone.depth(), share * radius, 0,
                    surface.bottom());
            if (place.isPresent()) {
                hung.add(Hung.single(id, line, zone, place.get(), zone.depth(), share * radius, 0));
                return;
            }
        }
        unplaced.add(line.needId());
    }

    private void hang(KitLine line, String id, Zone zone, Wished wished, double depth, double radius, Bounds bounds) {
        zones.get(zone).take(wished.slant(), wished.angle(), depth, radius, bounds.from(), bounds.to()).ifPresentOrElse(
                p -> hung.add(Hung.single(id, line, zone, p, depth, radius, bounds.from())), () -> unplaced.add(line.needId()));
    }

    private void place(Hung h) {
        for (Hung.Part part : h.parts()) {
            double slant = h.slant() + part.down();
            double angle = h.angle() + part.aside() / Math.max(0.05, surface.radius(slant));
            if (!surface.round()) {
                // A stem of a cluster by the edge is bound toward the room.
                angle = Math.max(-surface.sector() / 2, Math.min(surface.sector() / 2, angle));
            }
            KitLine line = part.line();
            pieces.add(new Placement(part.id(), line.needId(), line.sku(), line.layer(), line.role(), h.zone(), h.cluster() ? h.id() : "",
                    surface.height(slant), Surface.clock(angle), h.depth(), surface.point(slant, angle, h.depth()), part.radius(),
                    line.role().stem() ? Stems.fold(product(line).length().metres(), surface, slant) : OptionalDouble.empty()));
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
        return new Accents(surface, product(ribbon.get()), ribbon.get().quantity(), needs.accents())
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
