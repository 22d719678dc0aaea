package boughwright.layout;

import boughwright.kit.KitLine;
import boughwright.kit.OwnFirst;
import boughwright.layout.Patterns.Wished;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sets the florals of the body: clusters in a zigzag, single flowers across it, sprays on diagonals. */
final class Florals {

    /** Radius of a bound stem's own room over its cluster's: as far from the cluster's middle as it is set, it stays within. */
    private static final double BOUND = 0.48;
    /** How far a piece may stray from its pattern, over what each has of the surface. */
    private static final double STRAY = 0.45;

    private final Load load;
    private final Surface surface;

    Florals(Load load) {
        this.load = load;
        this.surface = load.surface();
    }

    /** Sizes of pieces shrink on trees that could not carry them side by side. */
    private double scaled(double metres) {
        return Math.min(metres, 0.16 * surface.cone().radius());
    }

    /** Metres that a piece may stray from its pattern when so many share the surface. */
    private double stray(int count) {
        return STRAY * Math.sqrt(surface.area() / Math.max(1, count));
    }

    /**
     * Clusters and the single flowers that cross them share a zone, and are spread together.
     *
     * @param stems of which clusters are bound, in the order in which they are laid
     */
    void setFlowers(List<KitLine> stems, List<KitLine> singles) {
        List<List<KitLine>> clusters = clusters(stems);
        int single = singles.stream().mapToInt(KitLine::quantity).sum();
        double radius = scaled(0.11);
        double stray = stray(clusters.size() + single);
        List<Spread.Disc> discs = new ArrayList<>();
        Patterns.zigzag(surface, clusters.size(), 1, 0)
                .forEach(w -> discs.add(new Spread.Disc(w, Zone.OUTER.depth(), radius, stray, false)));
        for (KitLine line : singles) {
            Patterns.zigzag(surface, line.quantity(), -1, 0.35)
                    .forEach(w -> discs.add(new Spread.Disc(w, Zone.OUTER.depth(), scaled(0.45 * load.width(line)), stray, false)));
        }
        List<Wished> places = Spread.of(surface, discs);
        for (int i = 0; i < clusters.size(); i++) {
            setCluster(clusters.get(i), i, places.get(i), radius);
        }
        hangStems(singles, Zone.OUTER, clusters.size(), places, discs);
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
     * Bound along one branch: the two sprays point up and out behind, the flowers sit side by side in front. Each cluster is turned
     * its own way and every second one is mirrored, as no two are bound alike.
     */
    private void setCluster(List<KitLine> stems, int number, Wished wished, double radius) {
        List<String> ids = stems.stream().map(load::nextId).toList();
        Optional<Places.Place> place = load.take(Zone.OUTER, wished, Zone.OUTER.depth(), radius, load.anywhere());
        if (place.isEmpty()) {
            stems.forEach(line -> load.unplaced().add(line.needId()));
            return;
        }
        double turn = 1.2 * (number * Patterns.GOLDEN % 1 - 0.5);
        int mirror = number % 2 == 0 ? 1 : -1;
        List<Hung.Part> parts = new ArrayList<>();
        long flowers = stems.stream().filter(l -> l.role() == Role.FACE_FLOWER).count();
        int flower = 0;
        for (int i = 0; i < stems.size(); i++) {
            KitLine line = stems.get(i);
            boolean face = line.role() == Role.FACE_FLOWER;
            double aside = mirror * radius * (face ? abreast(flower++, flowers) : line.role() == Role.HEIGHT_STEM ? -0.15 : 0.2);
            double down = radius * (face ? 0.25 : -0.35);
            parts.add(new Hung.Part(ids.get(i), line, down * Math.cos(turn) + aside * Math.sin(turn), aside * Math.cos(turn) - down * Math.sin(turn),
                    BOUND * radius));
        }
        load.hung().add(new Hung(Hung.CLUSTER + (number + 1), Zone.OUTER, place.get().slant(), place.get().angle(), Zone.OUTER.depth(), radius, 0, parts));
    }

    /** From −0.45 to 0.45 of the cluster's radius, so many abreast; a flower alone sits in the middle. */
    private static double abreast(int flower, long of) {
        return of == 1 ? 0 : -0.45 + 0.9 * flower / (of - 1);
    }

    void setSprays(List<KitLine> styles) {
        int all = styles.stream().mapToInt(KitLine::quantity).sum();
        List<Spread.Disc> discs = new ArrayList<>();
        for (int style = 0; style < styles.size(); style++) {
            KitLine line = styles.get(style);
            // A spray's head is half air; what must not overlap is its core.
            double core = scaled(0.3 * load.width(line));
            Patterns.diagonals(surface, line.quantity(), style, styles.size(), all)
                    .forEach(w -> discs.add(new Spread.Disc(w, Zone.MIDDLE.depth(), core, stray(all), false)));
        }
        List<Wished> places = Spread.of(surface, discs);
        hangStems(styles, Zone.MIDDLE, 0, places, discs);
    }

    /** @param from which of the places the first piece of the lines has */
    private void hangStems(List<KitLine> lines, Zone zone, int from, List<Wished> places, List<Spread.Disc> discs) {
        int next = from;
        for (KitLine line : lines) {
            for (int i = 0; i < line.quantity(); i++) {
                load.hangStem(line, zone, places.get(next), discs.get(next).radius());
                next++;
            }
        }
    }
}
