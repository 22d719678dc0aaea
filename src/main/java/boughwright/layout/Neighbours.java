package boughwright.layout;

import java.util.Arrays;
import java.util.List;

/** The nearest of a set of points to each of them, straight through the air; among equals the first. */
final class Neighbours {

    private Neighbours() {
    }

    /**
     * @param most neighbours of each, fewer where there are not so many points
     * @return for each point the indices of its neighbours, the nearest first
     */
    static int[][] of(List<Point> points, int most) {
        int count = points.size();
        int keep = Math.min(most, Math.max(0, count - 1));
        Integer[] byHeight = new Integer[count];
        Arrays.setAll(byHeight, i -> i);
        Arrays.sort(byHeight, (a, b) -> {
            int order = Double.compare(points.get(a).y(), points.get(b).y());
            return order != 0 ? order : Integer.compare(a, b);
        });
        int[][] near = new int[count][];
        for (int at = 0; at < count; at++) {
            int self = byHeight[at];
            Point point = points.get(self);
            int[] best = new int[keep];
            double[] far = new double[keep];
            Arrays.fill(far, Double.MAX_VALUE);
            // Outward up and down at once, until height alone puts a point beyond the farthest that is kept.
            int up = at + 1;
            int down = at - 1;
            while (keep > 0 && (up < count || down >= 0)) {
                double above = up < count ? points.get(byHeight[up]).y() - point.y() : Double.MAX_VALUE;
                double below = down >= 0 ? point.y() - points.get(byHeight[down]).y() : Double.MAX_VALUE;
                if (Math.min(above, below) > far[keep - 1]) {
                    break;
                }
                int other = above <= below ? byHeight[up++] : byHeight[down--];
                insert(best, far, other, point.distance(points.get(other)));
            }
            near[self] = best;
        }
        return near;
    }

    private static void insert(int[] best, double[] far, int other, double distance) {
        int last = best.length - 1;
        if (distance > far[last] || distance == far[last] && other > best[last]) {
            return;
        }
        int at = last;
        while (at > 0 && (far[at - 1] > distance || far[at - 1] == distance && best[at - 1] > other)) {
            best[at] = best[at - 1];
            far[at] = far[at - 1];
            at--;
        }
        best[at] = other;
        far[at] = distance;
    }
}
