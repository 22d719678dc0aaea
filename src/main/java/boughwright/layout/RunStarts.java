package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import java.util.ArrayList;
import java.util.List;

/**
 * Where runs of ribbon start: in rows down the tree, more where it is wide, each to one side of those above (common practice, no
 * published source).
 */
final class RunStarts {

    private static final double ROW = 0.55;
    private static final int MOST_ROWS = 14;
    /** Least sideways distance of a start from the starts just above it, metres. */
    private static final double STAGGER = 0.10;
    /** Starts less far up or down than this are about one another, metres. */
    private static final double NEAR = 1.7 * ROW;

    private final Surface surface;
    private final double span;
    private final double tail;

    /** @param span metres down the slant between the pinches of a large loop; {@code tail} at either end of a run */
    RunStarts(Surface surface, double span, double tail) {
        this.surface = surface;
        this.span = span;
        this.tail = tail;
    }

    /** First pinches of the runs, from the top down; the first is in the middle, just under the topper. */
    List<Wished> of(int count) {
        double first = surface.top();
        double last = Math.max(first + 0.05, surface.bottom() - 2 * span - Math.max(0.08, tail + 0.04 - surface.height(surface.bottom())));
        int rows = Math.max(1, Math.min(count, 1 + (int) Math.round((last - first) / ROW)));
        while (rows < Math.min(count, MOST_ROWS) && room(rows, first, last) < count) {
            rows++;
        }
        double[] widths = new double[rows];
        double whole = 0;
        for (int row = 1; row < rows; row++) {
            widths[row] = surface.radius(slantOfRow(row, rows, first, last) + span);
            whole += widths[row];
        }
        List<Wished> starts = new ArrayList<>();
        starts.add(new Wished(first, 0));
        List<Wished> above = List.copyOf(starts);
        double owed = 0;
        for (int row = 1; row < rows && starts.size() < count; row++) {
            owed += (count - 1) * widths[row] / whole;
            int left = count - starts.size();
            double slant = slantOfRow(row, rows, first, last);
            int later = 0;
            for (int below = row + 1; below < rows; below++) {
                later += room(slantOfRow(below, rows, first, last));
            }
            int here = Math.min(room(slant), Math.max(1, (int) Math.round(owed)));
            here = Math.min(left, Math.max(here, left - later));
            owed -= here;
            List<Wished> line = new ArrayList<>();
            for (int i = 0; i < here; i++) {
                double share = here == 1 ? (row % 2 == 0 ? 0.62 : 0.38) : (i + 0.5 + (row % 2 == 0 ? 0.12 : -0.12)) / here;
                // Neighbours in a row start at slightly different heights; a line of starts would show as a line.
                double step = here == 1 ? 0 : (i % 2 == 0 ? -1 : 1) * Math.min(0.05, 0.14 * (last - first) / rows);
                line.add(aside(new Wished(Math.max(first, slant + step), surface.angleAt(share)), above, line));
            }
            starts.addAll(line);
            above = line;
        }
        return starts;
    }

    /** Starts that a row has room for, so that those of the next row find a place between them. */
    private int room(double slant) {
        return Math.max(1, (int) (surface.sector() * surface.radius(slant) / (2.2 * STAGGER)));
    }

    private int room(int rows, double first, double last) {
        int room = 1;
        for (int row = 1; row < rows; row++) {
            room += room(slantOfRow(row, rows, first, last));
        }
        return room;
    }

    private static double slantOfRow(int row, int rows, double first, double last) {
        return rows == 1 ? first : first + (last - first) * row / (rows - 1);
    }

    /**
     * The start itself, or moved sideways as little as it takes not to be straight under one of those above nor on one of its own
     * row; where the tree is too narrow for that, the place that is farthest from them.
     */
    private Wished aside(Wished start, List<Wished> above, List<Wished> beside) {
        double radius = Math.max(0.02, surface.radius(start.slant()));
        double best = -1;
        double bestAngle = start.angle();
        for (int i = 0; i < 160; i++) {
            double angle = start.angle() + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * surface.sector() / 160;
            if (!surface.holds(Math.max(surface.top(), start.slant()), angle, 0)) {
                continue;
            }
            double clear = Math.min(clearance(angle, above), clearance(angle, beside)) * radius;
            if (clear >= STAGGER) {
                return new Wished(start.slant(), angle);
            }
            if (clear > best) {
                best = clear;
                bestAngle = angle;
            }
        }
        return new Wished(start.slant(), bestAngle);
    }

    /** Least difference of angle to any of some starts, radians. */
    private static double clearance(double angle, List<Wished> others) {
        return others.stream().mapToDouble(o -> Math.abs(Math.IEEEremainder(o.angle() - angle, 2 * Math.PI))).min().orElse(Math.PI);
    }

    /** Whether a start keeps its distance sideways from the others about its height. */
    boolean clear(Wished start, List<Wished> starts, int self) {
        double radius = Math.max(0.02, surface.radius(start.slant()));
        for (int i = 0; i < starts.size(); i++) {
            boolean about = i != self && Math.abs(starts.get(i).slant() - start.slant()) < NEAR;
            if (about && clearance(start.angle(), List.of(starts.get(i))) * radius < STAGGER) {
                return false;
            }
        }
        return true;
    }
}
