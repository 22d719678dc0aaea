package boughwright.layout;

import boughwright.kit.KitLine;
import boughwright.layout.Load.Bounds;
import boughwright.layout.Patterns.Wished;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Hangs the ornaments along spirals by size, like ones apart, none where no branch bears it and none on the floor. */
final class Ornaments {

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

    private final Load load;
    private final Surface surface;
    private final Bearing bearing;
    private final List<String> strained = new ArrayList<>();

    Ornaments(Load load, Bearing bearing) {
        this.load = load;
        this.surface = load.surface();
        this.bearing = bearing;
    }

    /** Ids of needs whose pieces are heavier than the tree bears. */
    List<String> strained() {
        return strained;
    }

    /** One piece that is to hang somewhere, before it has its place. @param rank the greater the lower */
    private record Due(KitLine line, double depth, double radius, Bounds bounds, double rank) {
    }

    /** Deep in, larger ones deeper and lower. */
    void tuckBalls(List<KitLine> balls) {
        List<KitLine> bySize = bySize(balls);
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < bySize.size(); i++) {
            double large = bySize.size() == 1 ? 0.5 : i / (bySize.size() - 1.0);
            double depth = SHALLOWEST + large * (DEEPEST - SHALLOWEST);
            // Larger balls lower: each ball's rank down the tree is its rank in its own size, pulled up or down by that size.
            due.addAll(due(bySize.get(i), depth, BALL_PULL * (large - 0.5)));
        }
        hangSpread(due, Zone.DEEP, 0.5, List.of());
    }

    /** At the tips, strictly by size, clear of the flowers where there is room. */
    void hangFeatures(List<KitLine> features) {
        List<KitLine> bySize = bySize(features);
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < bySize.size(); i++) {
            due.addAll(due(bySize.get(i), Zone.TIP.depth(), FEATURE_PULL * i));
        }
        hangSpread(due, Zone.TIP, 0.27, load.hung().stream().filter(h -> h.zone() == Zone.OUTER).toList());
    }

    private List<Due> due(KitLine line, double depth, double pull) {
        Bounds bounds = bounds(line, depth);
        List<Due> due = new ArrayList<>();
        for (int i = 0; i < line.quantity(); i++) {
            due.add(new Due(line, depth, load.width(line) / 2, bounds, (i + 0.5) / line.quantity() + pull));
        }
        return due;
    }

    private List<KitLine> bySize(List<KitLine> lines) {
        return lines.stream().sorted(Comparator.comparingDouble((KitLine l) -> Math.max(load.width(l), load.product(l).length().metres()))
                .thenComparing(KitLine::needId)).toList();
    }

    private Bounds bounds(KitLine line, double depth) {
        double radius = bearing.leastRadius(Bearing.weight(load.product(line)), depth);
        double from = radius / surface.widening();
        double low = surface.slantAtShare(LOW);
        if (from > low) {
            strained.add(line.needId());
        }
        double drop = Math.max(load.width(line), load.product(line).length().metres()) + CLEAR_OF_FLOOR;
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
            load.hang(g.due().line(), zone, g.to(), g.due().depth(), g.due().radius(), g.due().bounds());
        }
    }
}
