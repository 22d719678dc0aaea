package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The holes in a loaded tree: the largest disc on the surface that touches nothing that hangs there, nor the surface's own edge.
 *
 * <p>How far it is to the nearest thing is kept for a grid of points. It changes along the surface by no more than the way that is
 * gone, so the largest hole has its middle within half a grid cell's diagonal of a grid point that is nearly as good; each such
 * point is followed uphill until steps fall below half a millimetre. Distances are straight through the air between points at the
 * branch tips.
 */
final class GapFinder {

    /** Something that fills the surface: its middle, at the branch tips, and its radius. */
    record Filled(Point at, double radius) {
    }

    /** @param diameter of the empty disc, metres */
    record Hole(Wished place, Point at, double diameter) {
    }

    private static final double FINEST = 0.0005;
    /** How far a grid point is followed uphill, in steps of the grid. */
    private static final double FOLLOWED = 1.5;

    /** Directions tried at each step: the way up may be a narrow ridge between two things that are equally near. */
    private static final int TURNS = 24;
    private static final double[] COS = IntStream.range(0, TURNS).mapToDouble(i -> Math.cos(2 * Math.PI * i / TURNS)).toArray();
    private static final double[] SIN = IntStream.range(0, TURNS).mapToDouble(i -> Math.sin(2 * Math.PI * i / TURNS)).toArray();

    private final Surface surface;
    private final double step;
    /** What fills the surface, by the row of the grid that is as high. */
    private final List<List<Filled>> filled = new ArrayList<>();
    private final Map<Integer, Hole> climbed = new HashMap<>();
    private double largestFilled;
    private final double[] rowSlant;
    private final double[] rowHeight;
    private final double[] rowMost;
    private final int[] rowStart;
    private final double[] angle;
    private final double[] x;
    private final double[] z;
    private final double[] clear;

    GapFinder(Surface surface, List<Filled> filled) {
        this.surface = surface;
        // Finer on small trees; at most some 12,000 points on the largest.
        this.step = Math.max(0.03, Math.sqrt(surface.area() / 12_000));
        int rows = Math.max(1, (int) Math.ceil((surface.bottom() - surface.top()) / step - 0.5));
        this.rowSlant = new double[rows];
        this.rowHeight = new double[rows];
        this.rowMost = new double[rows];
        this.rowStart = new int[rows + 1];
        for (int row = 0; row < rows; row++) {
            rowSlant[row] = surface.top() + (row + 0.5) * step;
            rowHeight[row] = surface.height(rowSlant[row]);
            this.filled.add(new ArrayList<>());
            rowStart[row + 1] = rowStart[row] + Math.max(1, (int) Math.round(surface.sector() * surface.radius(rowSlant[row]) / step));
        }
        int points = rowStart[rows];
        this.angle = new double[points];
        this.x = new double[points];
        this.z = new double[points];
        this.clear = new double[points];
        for (int row = 0; row < rows; row++) {
            lay(row);
        }
        filled.forEach(this::fill);
    }

    private void lay(int row) {
        int count = rowStart[row + 1] - rowStart[row];
        for (int i = 0; i < count; i++) {
            int at = rowStart[row] + i;
            angle[at] = surface.angleAt((i + 0.5) / count);
            Point point = surface.point(rowSlant[row], angle[at], 1);
            x[at] = point.x();
            z[at] = point.z();
            clear[at] = edge(rowSlant[row], angle[at]);
            rowMost[row] = Math.max(rowMost[row], clear[at]);
        }
    }

    /** Beyond the tree's own edges nothing is missing: a hole may not be larger than what is dressed around it. */
    private double edge(double slant, double at) {
        double toRim = Math.min(slant - surface.top(), surface.bottom() - slant);
        return surface.round() ? toRim : Math.min(toRim, (surface.sector() / 2 - Math.abs(at)) * surface.radius(slant));
    }

    void fill(Filled more) {
        Point at = more.at();
        filled.get(row(at.y())).add(more);
        largestFilled = Math.max(largestFilled, more.radius());
        // A hole keeps its size as long as nothing is put into it.
        climbed.values().removeIf(hole -> hole.at().distance(at) < hole.diameter() / 2 + more.radius());
        for (int row = 0; row < rowSlant.length; row++) {
            double dy = rowHeight[row] - at.y();
            if (rowMost[row] + more.radius() <= Math.abs(dy)) {
                continue;
            }
            double most = Double.NEGATIVE_INFINITY;
            for (int i = rowStart[row]; i < rowStart[row + 1]; i++) {
                double bound = clear[i] + more.radius();
                double dx = x[i] - at.x();
                double dz = z[i] - at.z();
                double squared = dx * dx + dy * dy + dz * dz;
                if (bound > 0 && squared < bound * bound) {
                    clear[i] = Math.sqrt(squared) - more.radius();
                }
                most = Math.max(most, clear[i]);
            }
            rowMost[row] = most;
        }
    }

    private int row(double height) {
        double down = surface.slantAtHeight(height) - surface.top();
        return Math.max(0, Math.min(rowSlant.length - 1, (int) (down / step)));
    }

    /** The largest hole now; the first from the top among equals. */
    Hole largest() {
        double top = Arrays.stream(rowMost).max().orElse(0);
        double near = 0.75 * step;
        Hole best = new Hole(new Wished(rowSlant[0], angle[0]), surface.point(rowSlant[0], angle[0], 1), 0);
        for (int row = 0; row < rowSlant.length; row++) {
            if (rowMost[row] < Math.max(0, Math.max(top, best.diameter() / 2) - near)) {
                continue;
            }
            for (int i = rowStart[row]; i < rowStart[row + 1]; i++) {
                if (clear[i] > 0 && clear[i] >= Math.max(top, best.diameter() / 2) - near) {
                    Hole hole = climbed.get(i);
                    if (hole == null) {
                        hole = climb(row, i);
                        climbed.put(i, hole);
                    }
                    best = hole.diameter() > best.diameter() + 1e-9 ? hole : best;
                }
            }
        }
        return best;
    }

    private Hole climb(int row, int from) {
        double slant = rowSlant[row];
        double at = angle[from];
        // What could matter to a point no farther from here than it may be followed.
        double reach = clear[from] + 2 * FOLLOWED * step;
        Point start = surface.point(slant, at, 1);
        List<Filled> about = new ArrayList<>();
        int lowest = row(start.y() - reach - largestFilled);
        for (int near = row(start.y() + reach + largestFilled); near <= lowest; near++) {
            for (Filled f : filled.get(near)) {
                if (f.at().distance(start) < reach + f.radius()) {
                    about.add(f);
                }
            }
        }
        double best = clear(slant, at, about);
        for (double stride = step / 2; stride > FINEST; stride /= 2) {
            boolean moved = true;
            while (moved) {
                moved = false;
                for (int turn = 0; turn < TURNS; turn++) {
                    double there = slant + stride * COS[turn];
                    double round = at + stride * SIN[turn] / Math.max(0.02, surface.radius(slant));
                    double found = clear(there, round, about);
                    if (found > best + 1e-9 && surface.point(there, round, 1).distance(start) <= FOLLOWED * step) {
                        best = found;
                        slant = there;
                        at = round;
                        moved = true;
                        break;
                    }
                }
            }
        }
        double whole = Math.IEEEremainder(at, 2 * Math.PI);
        return new Hole(new Wished(slant, whole), surface.point(slant, whole, 1), Math.max(0, 2 * best));
    }

    private double clear(double slant, double at, List<Filled> about) {
        double best = edge(slant, at);
        Point point = surface.point(slant, at, 1);
        for (Filled f : about) {
            best = Math.min(best, f.at().distance(point) - f.radius());
        }
        return best;
    }
}
