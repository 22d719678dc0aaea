package boughwright.layout;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.kit.OwnFirst;
import boughwright.layout.GapFinder.Filled;
import boughwright.layout.Patterns.Wished;
import boughwright.needs.AccentChoice;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Dresses one tree: places every piece of a kit on the seen part of its cone.
 *
 * <p>Pure and deterministic: the same kit, tree and seed give the same layout. Everything is kept in the order in which it would
 * go on the tree. Filler balls lie deep, larger ones low; clusters zigzag down and single flowers cross them; sprays follow
 * diagonals; feature ornaments hang at the tips; accents fill the largest gaps that are left.
 */
public final class Dressing {

    /** A stem is folded when it is longer than this share of the tree's whole depth at its height, to this share of it. */
    private static final double FOLD_FROM = 0.9;
    private static final double FOLD_TO = 0.75;
    /** Gaps narrower than this need nothing, metres (common practice, no published source). */
    private static final double LEAST_GAP = 0.09;
    /** Radius of a string's plug, metres. */
    private static final double PLUG = 0.01;
    /** Radius of a bound stem's own room over its cluster's: as far from the cluster's middle as it is set, it stays within. */
    private static final double BOUND = 0.48;
    /** A loose accent ribbon fills about two thirds of the disc it is put into. */
    private static final double ACCENT_FILLS = 0.66;
    /** Of a run's ribbon about half faces the viewer; the rest curls away or lies under the loops. */
    private static final double RIBBON_SHOWN = 0.5;

    private final Brief brief;
    private final Needs needs;
    private final Kit kit;
    private final Catalogue catalogue;
    private final long seed;
    private final Surface surface;
    private final Map<Zone, Places> zones = new EnumMap<>(Zone.class);
    private final List<Placement> pieces = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private int nextId = 1;

    private Dressing(Brief brief, Needs needs, Kit kit, Catalogue catalogue, long seed) {
        this.brief = brief;
        this.needs = needs;
        this.kit = kit;
        this.catalogue = catalogue;
        this.seed = seed;
        this.surface = new Surface(brief.tree());
        for (Zone zone : Zone.values()) {
            // What hangs at the tips would otherwise hang in the flowers.
            zones.put(zone, zone == Zone.TIP ? new Places(surface, zone.depth(), zones.get(Zone.OUTER)) : new Places(surface, zone.depth()));
        }
    }

    /**
     * @param catalogue the one that the kit was chosen from
     * @param seed chooses among equals, such as which run of ribbon gets a small loop
     */
    public static Layout of(Brief brief, Needs needs, Kit kit, Catalogue catalogue, long seed) {
        return new Dressing(brief, needs, kit, catalogue, seed).dress();
    }

    private Layout dress() {
        List<Point> bulbs = windLights();
        setTopper();
        RibbonRuns.Laid ribbon = runRibbon();
        setClusters();
        setSingleFlowers();
        setSprays();
        tuckFillerBalls();
        hangFeatures();
        GapFinder finder = new GapFinder(surface, filled(ribbon.runs()));
        List<RollCuts> cuts = new ArrayList<>(ribbon.cuts());
        List<Gap> gaps = fillGaps(finder, cuts);
        return new Layout(pieces, bulbs, ribbon.runs(), cuts, gaps, measures(finder, ribbon.runs(), gaps), unplaced, seed);
    }

    private List<KitLine> lines(Layer layer, Role role) {
        return kit.lines().stream().filter(l -> l.layer() == layer && l.role() == role && l.quantity() > 0).toList();
    }

    private Product product(KitLine line) {
        return catalogue.product(line.sku()).orElseThrow(() -> new IllegalStateException("not in the catalogue: " + line.sku()));
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
            List<Wished> begins = new ArrayList<>();
            for (int string = 0; string < line.quantity(); string++) {
                begins.add(winding.get(begin));
                begin += perString(line);
            }
            place(line, Zone.MIDDLE, begins, PLUG);
        }
        return bulbs;
    }

    private int perString(KitLine line) {
        return product(line).lights().orElseThrow().bulbs();
    }

    /** The bouquet at the tip: height stems straight down the pole, texture stems round them, flowers at the base. */
    private void setTopper() {
        double tip = surface.cone().slant() * 0.02;
        crown(lines(Layer.TOPPER, Role.HEIGHT_STEM), tip, 0.05, 0.10);
        crown(lines(Layer.TOPPER, Role.TEXTURE_STEM), surface.top() * 0.15, 0.55, 0.37);
        crown(lines(Layer.TOPPER, Role.FACE_FLOWER), surface.top() * 0.42, 0.9, 0.0);
    }

    private void crown(List<KitLine> lines, double slant, double depth, double turn) {
        int count = lines.stream().mapToInt(KitLine::quantity).sum();
        int styles = Math.max(1, lines.size());
        for (int style = 0; style < lines.size(); style++) {
            KitLine line = lines.get(style);
            for (int i = 0; i < line.quantity(); i++) {
                // Styles alternate round the pole, and every other piece sits a little lower.
                int place = i * styles + style;
                double share = (place + 0.5 + turn) / (count + 2 * turn);
                double there = slant * ((i + style) % 2 == 0 ? 1 : 1.8);
                double angle = surface.angleAt(Math.min(1, share));
                add(line, Zone.CROWN, "grouping-" + (i + 1), there, angle, depth, surface.point(there, angle, depth),
                        product(line).width().metres() / 2, OptionalDouble.empty());
            }
        }
    }

    private RibbonRuns.Laid runRibbon() {
        Optional<KitLine> base = lines(Layer.RIBBON, Role.BASE_RIBBON).stream().findFirst();
        Optional<KitLine> overlay = lines(Layer.RIBBON, Role.OVERLAY_RIBBON).stream().findFirst();
        return new RibbonRuns(surface, needs.ribbon(), seed).lay(base.map(this::product), base.map(KitLine::quantity).orElse(0),
                overlay.map(this::product), overlay.map(KitLine::quantity).orElse(0));
    }

    /** Sizes of pieces shrink on trees that could not carry them side by side. */
    private double scaled(double metres) {
        return Math.min(metres, 0.16 * surface.cone().radius());
    }

    private void setClusters() {
        List<KitLine> stems = new ArrayList<>();
        stems.addAll(lines(Layer.FLORALS, Role.HEIGHT_STEM));
        stems.addAll(lines(Layer.FLORALS, Role.TEXTURE_STEM));
        stems.addAll(lines(Layer.FLORALS, Role.FACE_FLOWER));
        // A stem of which the customer has a part comes in two lines; the own ones go into the first clusters, the rest into the next.
        Map<String, Integer> begins = new LinkedHashMap<>();
        Map<String, Integer> ends = new LinkedHashMap<>();
        Map<KitLine, Integer> from = new LinkedHashMap<>();
        for (KitLine line : stems) {
            String whole = OwnFirst.whole(line.needId());
            from.put(line, begins.getOrDefault(whole, 0));
            ends.merge(whole, line.quantity(), Integer::sum);
            begins.put(whole, ends.get(whole));
        }
        int clusters = ends.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        double radius = scaled(0.11);
        List<Wished> wished = Patterns.zigzag(surface, clusters, 1, 0);
        for (int i = 0; i < clusters; i++) {
            Optional<Places.Place> place = zones.get(Zone.OUTER).take(wished.get(i).slant(), wished.get(i).angle(), radius);
            int flower = 0;
            for (KitLine line : stems) {
                if (i < from.get(line) || i >= from.get(line) + line.quantity()) {
                    continue;
                }
                if (place.isEmpty()) {
                    unplaced.add(line.needId());
                    continue;
                }
                // Bound along one branch: the two sprays point up and out behind, the two flowers sit side by side in front.
                double side = line.role() == Role.FACE_FLOWER ? (flower++ % 2 == 0 ? -0.45 : 0.45) : line.role() == Role.HEIGHT_STEM ? -0.15 : 0.2;
                double down = line.role() == Role.FACE_FLOWER ? 0.25 : -0.35;
                double slant = place.get().slant() + down * radius;
                double angle = place.get().angle() + side * radius / Math.max(0.05, surface.radius(slant));
                add(line, Zone.OUTER, "cluster-" + (i + 1), slant, angle, Zone.OUTER.depth(),
                        surface.point(slant, angle, Zone.OUTER.depth()), BOUND * radius, fold(line, slant));
            }
        }
    }

    private void setSingleFlowers() {
        for (KitLine line : lines(Layer.FLORALS, Role.SINGLE_FLOWER)) {
            place(line, Zone.OUTER, Patterns.zigzag(surface, line.quantity(), -1, 0.35), scaled(0.45 * product(line).width().metres()));
        }
    }

    private void setSprays() {
        List<KitLine> styles = lines(Layer.FLORALS, Role.SPRAY);
        for (int style = 0; style < styles.size(); style++) {
            KitLine line = styles.get(style);
            // A spray's head is half air; what must not overlap is its core.
            place(line, Zone.MIDDLE, Patterns.diagonals(surface, line.quantity(), style, styles.size()), scaled(0.3 * product(line).width().metres()));
        }
    }

    private void tuckFillerBalls() {
        List<KitLine> lines = lines(Layer.ORNAMENTS, Role.FILLER_BALL);
        // Larger balls lower: each ball's rank down the tree is its rank in its own size, pulled up or down by that size.
        record Ball(KitLine line, double rank, double width) {
        }
        List<Ball> balls = new ArrayList<>();
        List<KitLine> bySize = lines.stream().sorted(Comparator.comparingDouble(l -> product(l).width().metres())).toList();
        for (int size = 0; size < bySize.size(); size++) {
            KitLine line = bySize.get(size);
            double pull = bySize.size() == 1 ? 0 : 0.36 * size / (bySize.size() - 1.0) - 0.18;
            for (int i = 0; i < line.quantity(); i++) {
                balls.add(new Ball(line, (i + 0.5) / line.quantity() + pull, product(line).width().metres()));
            }
        }
        balls.sort(Comparator.comparingDouble(Ball::rank).thenComparing(b -> b.line().sku()));
        List<Wished> spiral = Patterns.spiral(surface, balls.size(), 0.5);
        record Due(Ball ball, Wished wished) {
        }
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < balls.size(); i++) {
            due.add(new Due(balls.get(i), spiral.get(i)));
        }
        // The largest choose first, since they find room least easily.
        due.sort(Comparator.comparingDouble((Due d) -> -d.ball().width()));
        due.forEach(d -> place(d.ball().line(), Zone.DEEP, List.of(d.wished()), d.ball().width() / 2));
    }

    private void hangFeatures() {
        List<KitLine> lines = lines(Layer.ORNAMENTS, Role.FEATURE_ORNAMENT).stream()
                .sorted(Comparator.comparingDouble(l -> -product(l).length().metres())).toList();
        int count = lines.stream().mapToInt(KitLine::quantity).sum();
        List<Wished> spiral = new ArrayList<>(Patterns.spiral(surface, count, 0.27));
        // The last of the spiral are the lowest, and the largest features take those.
        int from = count;
        for (KitLine line : lines) {
            from -= line.quantity();
            place(line, Zone.TIP, spiral.subList(from, from + line.quantity()), product(line).width().metres() / 2);
        }
    }

    private void place(KitLine line, Zone zone, List<Wished> wished, double radius) {
        for (Wished wish : wished) {
            // A stem's head is soft and gives way to its neighbours when the tree is crowded; an ornament does not.
            double[] radii = line.role().stem() ? new double[] {radius, 0.7 * radius, 0.5 * radius, 0.35 * radius} : new double[] {radius};
            if (Arrays.stream(radii).noneMatch(r -> placed(line, zone, wish, r))) {
                unplaced.add(line.needId());
            }
        }
    }

    private boolean placed(KitLine line, Zone zone, Wished wish, double radius) {
        Optional<Places.Place> place = zones.get(zone).take(wish.slant(), wish.angle(), radius);
        place.ifPresent(p -> add(line, zone, "", p.slant(), p.angle(), zone.depth(), p.point(), radius, fold(line, p.slant())));
        return place.isPresent();
    }

    private OptionalDouble fold(KitLine line, double slant) {
        if (!line.role().stem()) {
            return OptionalDouble.empty();
        }
        double deep = 2 * surface.radius(slant);
        return product(line).length().metres() > FOLD_FROM * deep ? OptionalDouble.of(FOLD_TO * deep) : OptionalDouble.empty();
    }

    private void add(KitLine line, Zone zone, String group, double slant, double angle, double depth, Point at, double radius, OptionalDouble foldAt) {
        pieces.add(new Placement("piece-" + nextId++, line.needId(), line.sku(), line.layer(), line.role(), zone, group,
                surface.height(slant), Surface.clock(angle), depth, at, radius, foldAt));
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

    private List<Gap> fillGaps(GapFinder finder, List<RollCuts> cuts) {
        List<Gap> gaps = new ArrayList<>();
        Optional<KitLine> ribbon = lines(Layer.RIBBON, Role.ACCENT_RIBBON).stream().findFirst();
        int wanted = needs.quantity(Layer.ACCENTS, Role.GAP_ACCENT);
        if (ribbon.isEmpty() || needs.accents().isEmpty()) {
            return gaps;
        }
        double rollLength = product(ribbon.get()).length().metres();
        double[] left = new double[ribbon.get().quantity()];
        Arrays.fill(left, rollLength);
        List<List<RollCuts.Cut>> cut = new ArrayList<>();
        for (int i = 0; i < left.length; i++) {
            cut.add(new ArrayList<>());
        }
        while (gaps.size() < wanted) {
            GapFinder.Hole hole = finder.largest();
            if (hole.diameter() < LEAST_GAP) {
                break;
            }
            Optional<AccentChoice> accent = accentFor(hole.diameter(), left);
            if (accent.isEmpty()) {
                break;
            }
            double length = accent.get().ribbon();
            int roll = firstWith(left, length);
            left[roll] -= length;
            String id = "accent-" + (gaps.size() + 1);
            cut.get(roll).add(new RollCuts.Cut(length, id));
            gaps.add(new Gap(id, surface.height(hole.place().slant()), Surface.clock(hole.place().angle()), hole.at(), hole.diameter(),
                    accent.get().kind(), length));
            finder.fill(new Filled(hole.at(), ACCENT_FILLS * hole.diameter() / 2));
        }
        for (int i = 0; i < left.length; i++) {
            cuts.add(new RollCuts(ribbon.get().sku(), i + 1, rollLength, cut.get(i), Math.max(0, left[i])));
        }
        return gaps;
    }

    /** The house's accent for a gap, or the largest smaller one for which there is ribbon left. */
    private Optional<AccentChoice> accentFor(double diameter, double[] left) {
        return needs.accents().stream()
                .filter(a -> a.leastGap() <= diameter && firstWith(left, a.ribbon()) >= 0)
                .max(Comparator.comparingDouble(AccentChoice::leastGap));
    }

    private static int firstWith(double[] left, double length) {
        for (int i = 0; i < left.length; i++) {
            if (left[i] >= length - 1e-9) {
                return i;
            }
        }
        return -1;
    }

    private Measures measures(GapFinder finder, List<RibbonRun> runs, List<Gap> gaps) {
        List<Point> spread = new ArrayList<>();
        Map<String, List<Point>> groups = new LinkedHashMap<>();
        for (Placement piece : pieces) {
            if (piece.zone() == Zone.OUTER && !piece.group().isEmpty()) {
                groups.computeIfAbsent(piece.group(), g -> new ArrayList<>()).add(piece.at());
            } else if (piece.zone() == Zone.OUTER || piece.zone() == Zone.TIP) {
                spread.add(piece.at());
            }
        }
        groups.values().forEach(stems -> spread.add(middle(stems)));
        double least = Double.MAX_VALUE;
        for (int i = 0; i < spread.size(); i++) {
            for (int j = i + 1; j < spread.size(); j++) {
                least = Math.min(least, spread.get(i).distance(spread.get(j)));
            }
        }
        double area = surface.area();
        double densest = Math.sqrt(2 * area / (Math.sqrt(3) * Math.max(1, spread.size())));
        boolean any = spread.size() > 1;
        return new Measures(any ? least : 0, any ? least / densest : 0, finder.largest().diameter(), coverage(area, runs, gaps));
    }

    private static Point middle(List<Point> points) {
        return new Point(points.stream().mapToDouble(Point::x).average().orElseThrow(), points.stream().mapToDouble(Point::y).average().orElseThrow(),
                points.stream().mapToDouble(Point::z).average().orElseThrow());
    }

    private Map<Layer, Double> coverage(double area, List<RibbonRun> runs, List<Gap> gaps) {
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
            double radius = ACCENT_FILLS * gap.diameter() / 2;
            coverage.merge(Layer.ACCENTS, Math.PI * radius * radius / area, Double::sum);
        }
        return coverage;
    }
}
