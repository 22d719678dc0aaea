package boughwright.photo;

import boughwright.colour.Oklab;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Points of {@link Bins} that are one colour. */
final class Group {

    private final List<Integer> points;
    private final boolean[] has;
    private final double weight;
    private final Oklab colour;

    Group(Bins bins, List<Integer> points) {
        this.points = List.copyOf(points);
        this.has = new boolean[bins.points().length];
        double all = 0;
        double[] sum = new double[3];
        for (int p : points) {
            has[p] = true;
            all += bins.weights()[p];
            for (int d = 0; d < 3; d++) {
                sum[d] += bins.weights()[p] * bins.points()[p][d];
            }
        }
        this.weight = all;
        this.colour = Bins.colour(new double[] {sum[0] / all, sum[1] / all, sum[2] / all});
    }

    Group and(Bins bins, Group other) {
        return new Group(bins, Stream.concat(points.stream(), other.points.stream()).toList());
    }

    /** @param point −1 is none of anyone's */
    boolean has(int point) {
        return point >= 0 && has[point];
    }

    /** Pixels. */
    double weight() {
        return weight;
    }

    /** The mean. */
    Oklab colour() {
        return colour;
    }

    /** The mean of the lighter half. */
    Oklab lit(Bins bins) {
        List<Integer> lightest = points.stream().sorted(Comparator.comparingDouble((Integer p) -> -bins.points()[p][0])).toList();
        double left = weight / 2;
        double[] sum = new double[3];
        for (int p : lightest) {
            double taken = Math.min(left, bins.weights()[p]);
            left -= taken;
            for (int d = 0; d < 3; d++) {
                sum[d] += taken * bins.points()[p][d];
            }
        }
        return Bins.colour(new double[] {2 * sum[0] / weight, 2 * sum[1] / weight, 2 * sum[2] / weight});
    }
}
