package boughwright.layout;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.kit.KitLine;
import boughwright.layout.Patterns.Wished;
import boughwright.needs.Layer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A tree while it is loaded: what hangs on it so far, what room is taken in each zone, and what found none. */
final class Load {

    /** Slants between which a piece may hang: a branch bears it, and it hangs clear of the floor. */
    record Bounds(double from, double to) {
    }

    /** Shares of its radius to which a stem's head gives way when the tree is crowded. */
    private static final double[] GIVES = {1, 0.7, 0.5, 0.35};

    private final Surface surface;
    private final Catalogue catalogue;
    private final Map<Zone, Places> zones = new EnumMap<>(Zone.class);
    private final List<Hung> hung = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    /** @param catalogue the one that the kit was chosen from */
    Load(Surface surface, Catalogue catalogue) {
        this.surface = surface;
        this.catalogue = catalogue;
        for (Zone zone : Zone.values()) {
            // What hangs at the tips would otherwise hang in the flowers.
            zones.put(zone, zone == Zone.TIP ? new Places(surface, zones.get(Zone.OUTER)) : new Places(surface));
        }
    }

    Surface surface() {
        return surface;
    }

    /** In the order in which they were hung. */
    List<Hung> hung() {
        return hung;
    }

    /** Ids of needs for some of whose pieces there was no room, once for each piece. */
    List<String> unplaced() {
        return unplaced;
    }

    Product product(KitLine line) {
        return catalogue.product(line.sku()).orElseThrow(() -> new IllegalStateException("not in the catalogue: " + line.sku()));
    }

    double width(KitLine line) {
        return product(line).width().metres();
    }

    /** Ids tell the need and the number within it, so that a piece keeps its own while the rest of the kit changes. */
    String nextId(KitLine line) {
        String layer = line.layer().word() + "/";
        String need = line.needId().startsWith(layer) && line.layer() != Layer.TOPPER ? line.needId().substring(layer.length()) : line.needId();
        String stem = need.replace('/', '-');
        return stem + "-" + numbers.merge(stem, 1, Integer::sum);
    }

    Bounds anywhere() {
        return new Bounds(0, surface.bottom());
    }

    /** The free place of a zone nearest to a wish, taken. */
    Optional<Places.Place> take(Zone zone, Wished wished, double depth, double radius, Bounds bounds) {
        return zones.get(zone).take(wished.slant(), wished.angle(), depth, radius, bounds.from(), bounds.to());
    }

    void hang(KitLine line, Zone zone, Wished wished, double depth, double radius, Bounds bounds) {
        String id = nextId(line);
        take(zone, wished, depth, radius, bounds).ifPresentOrElse(
                p -> hung.add(Hung.single(id, line, zone, p, depth, radius, bounds.from())), () -> unplaced.add(line.needId()));
    }

    /** A stem's head is soft and gives way to its neighbours when the tree is crowded; an ornament does not. */
    void hangStem(KitLine line, Zone zone, Wished wished, double radius) {
        String id = nextId(line);
        for (double share : GIVES) {
            Optional<Places.Place> place = take(zone, wished, zone.depth(), share * radius, anywhere());
            if (place.isPresent()) {
                hung.add(Hung.single(id, line, zone, place.get(), zone.depth(), share * radius, 0));
                return;
            }
        }
        unplaced.add(line.needId());
    }
}
