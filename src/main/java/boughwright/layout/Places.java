package boughwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The places taken in one zone, and the search for the free one nearest to where a piece would like to be.
 *
 * <p>Pieces are balls of their own radius, each at its own depth; two of them may touch but not overlap. A grid over the room keeps
 * the search short.
 */
final class Places {

    /** A place found: position on the surface and the point in the room. */
    record Place(double slant, double angle, Point point) {
    }

    private record Taken(Point point, double radius) {
    }

    private static final double CELL = 0.25;
    /** Touching pieces are still apart by rounding. */
    private static final double HAIR = 1e-9;
    private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

    private final Surface surface;
    private final Places beside;
    private final Map<Long, List<Taken>> cells = new HashMap<>();
    private double largest;

    Places(Surface surface) {
        this(surface, null);
    }

    /** @param beside places of another zone that pieces of this one keep clear of as long as there is room elsewhere; may be null */
    Places(Surface surface, Places beside) {
        this.surface = surface;
        this.beside = beside;
    }

    /**
     * Takes the free place nearest to (slant, angle) for a piece, looking outward in a sunflower pattern, then over the whole surface;
     * empty when there is none.
     *
     * @param from the slant above which no branch bears it
     * @param to the slant below which it would reach the floor
     */
    Optional<Place> take(double slant, double angle, double depth, double radius, double from, double to) {
        Wanted wanted = new Wanted(depth, radius, from, to);
        if (beside != null) {
            Optional<Place> clear = near(slant, angle, wanted, true);
            if (clear.isPresent()) {
                return clear;
            }
        }
        Optional<Place> place = near(slant, angle, wanted, false);
        return place.isPresent() ? place : sweep(wanted);
    }

    private record Wanted(double depth, double radius, double from, double to) {
    }

    private Optional<Place> near(double slant, double angle, Wanted wanted, boolean clear) {
        double step = Math.max(0.012, 0.35 * wanted.radius());
        for (int i = 0; i < 600; i++) {
            double out = step * Math.sqrt(i);
            double turn = i * GOLDEN_ANGLE;
            Optional<Place> place = tryAt(slant + out * Math.cos(turn),
                    angle + out * Math.sin(turn) / Math.max(0.02, surface.radius(slant)), wanted, clear);
            if (place.isPresent()) {
                return place;
            }
        }
        return Optional.empty();
    }

    private Optional<Place> sweep(Wanted wanted) {
        double step = Math.max(0.02, wanted.radius() / 2);
        for (double slant = surface.bottom(); slant >= surface.top(); slant -= step) {
            double turn = step / Math.max(0.02, surface.radius(slant));
            for (double angle = -surface.sector() / 2; angle <= surface.sector() / 2; angle += turn) {
                Optional<Place> place = tryAt(slant, angle, wanted, false);
                if (place.isPresent()) {
                    return place;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Place> tryAt(double slant, double angle, Wanted wanted, boolean clear) {
        if (slant < wanted.from() || slant > wanted.to() || !surface.holds(slant, angle, wanted.radius())) {
            return Optional.empty();
        }
        Point point = surface.point(slant, angle, wanted.depth());
        if (!free(point, wanted.radius()) || clear && !beside.free(point, wanted.radius())) {
            return Optional.empty();
        }
        cells.computeIfAbsent(key(cell(point.x()), cell(point.y()), cell(point.z())), k -> new ArrayList<>()).add(new Taken(point, wanted.radius()));
        largest = Math.max(largest, wanted.radius());
        return Optional.of(new Place(slant, angle, point));
    }

    private boolean free(Point point, double radius) {
        int reach = (int) Math.ceil((radius + largest) / CELL);
        int cx = cell(point.x());
        int cy = cell(point.y());
        int cz = cell(point.z());
        for (int x = cx - reach; x <= cx + reach; x++) {
            for (int y = cy - reach; y <= cy + reach; y++) {
                for (int z = cz - reach; z <= cz + reach; z++) {
                    for (Taken taken : cells.getOrDefault(key(x, y, z), List.of())) {
                        if (taken.point().distance(point) < taken.radius() + radius + HAIR) {
                            return false;
                        }
                    }
                }
            }
        }
        return true;
    }

    private static int cell(double coordinate) {
        return (int) Math.floor(coordinate / CELL);
    }

    private static long key(int x, int y, int z) {
        return ((x + 512L) * 1024 + (y + 512L)) * 1024 + (z + 512L);
    }
}
