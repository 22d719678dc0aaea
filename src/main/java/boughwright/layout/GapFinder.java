package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import java.util.ArrayList;
import java.util.List;

/**
 * The holes in a loaded tree: for a grid of points on the surface, how far each is from anything that hangs there.
 *
 * <p>Distances are straight through the air between points at the branch tips, which on a tree differ from the way along the
 * surface by less than the grid's step at the sizes of a gap.
 */
final class GapFinder {

    /** Something that fills the surface: its middle, at the branch tips, and its radius. */
    record Filled(Point at, double radius) {
    }

    /** @param diameter of the empty disc, metres */
    record Hole(Wished place, Point at, double diameter) {
    }

    private final List<Wished> grid = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final double[] clear;

    GapFinder(Surface surface, List<Filled> filled) {
        // Finer on small trees; at most some 12,000 points on the largest.
        double step = Math.max(0.03, Math.sqrt(surface.area() / 12_000));
        for (double slant = surface.top() + step / 2; slant < surface.bottom(); slant += step) {
            double arc = surface.sector() * surface.radius(slant);
            int count = Math.max(1, (int) Math.round(arc / step));
            for (int i = 0; i < count; i++) {
                double angle = surface.angleAt((i + 0.5) / count);
                grid.add(new Wished(slant, angle));
                points.add(surface.point(slant, angle, 1));
            }
        }
        clear = new double[points.size()];
        for (int i = 0; i < clear.length; i++) {
            // Beyond the tree's own edges nothing is missing: a hole may not be larger than what is dressed around it.
            clear[i] = edge(surface, grid.get(i));
        }
        filled.forEach(this::fill);
    }

    private static double edge(Surface surface, Wished place) {
        double toRim = Math.min(place.slant() - surface.top(), surface.bottom() - place.slant());
        if (surface.round()) {
            return toRim;
        }
        double toSide = (surface.sector() / 2 - Math.abs(place.angle())) * surface.radius(place.slant());
        return Math.min(toRim, toSide);
    }

    void fill(Filled filled) {
        Point at = filled.at();
        for (int i = 0; i < clear.length; i++) {
            double bound = clear[i] + filled.radius();
            Point p = points.get(i);
            double dy = p.y() - at.y();
            if (bound > 0 && Math.abs(dy) < bound) {
                double dx = p.x() - at.x();
                double dz = p.z() - at.z();
                double squared = dx * dx + dy * dy + dz * dz;
                if (squared < bound * bound) {
                    clear[i] = Math.sqrt(squared) - filled.radius();
                }
            }
        }
    }

    /** The largest hole now; the first from the top among equals. */
    Hole largest() {
        int best = 0;
        for (int i = 1; i < clear.length; i++) {
            if (clear[i] > clear[best] + 1e-12) {
                best = i;
            }
        }
        return new Hole(grid.get(best), points.get(best), Math.max(0, 2 * clear[best]));
    }
}
