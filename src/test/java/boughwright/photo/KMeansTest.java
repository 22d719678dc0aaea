package boughwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class KMeansTest {

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static double[][] scattered(int count, int size, SplittableRandom random) {
        double[][] points = new double[count][size];
        for (double[] point : points) {
            Arrays.setAll(point, d -> random.nextDouble());
        }
        return points;
    }

    /** The least cost of all ways to divide the points among k centres, tried one by one. */
    private static double optimum(double[][] points, double[] weights, int k) {
        int[] of = new int[points.length];
        double best = Double.POSITIVE_INFINITY;
        while (true) {
            best = Math.min(best, cost(points, weights, of, k));
            int at = 0;
            while (at < of.length && ++of[at] == k) {
                of[at++] = 0;
            }
            if (at == of.length) {
                return best;
            }
        }
    }

    private static double cost(double[][] points, double[] weights, int[] of, int k) {
        double cost = 0;
        for (int c = 0; c < k; c++) {
            for (int d = 0; d < points[0].length; d++) {
                double weight = 0;
                double sum = 0;
                double squares = 0;
                for (int i = 0; i < points.length; i++) {
                    if (of[i] == c) {
                        weight += weights[i];
                        sum += weights[i] * points[i][d];
                        squares += weights[i] * points[i][d] * points[i][d];
                    }
                }
                cost += weight > 0 ? squares - sum * sum / weight : 0;
            }
        }
        return cost;
    }

    @Test
    void finds_the_best_of_all_ways_to_divide_a_few_points() {
        SplittableRandom random = new SplittableRandom(1);
        for (int trial = 0; trial < 30; trial++) {
            double[][] points = scattered(9, 3, random);
            double[] weights = random.doubles(9, 0.2, 5).toArray();
            int k = 2 + trial % 2;
            assertThat(KMeans.best(points, weights, k, 40, random).cost()).isCloseTo(optimum(points, weights, k), within(1e-9));
        }
    }

    /** Arthur and Vassilvitskii 2007, Theorem 1.1: E[φ] ≤ 8 (ln k + 2) φ_OPT, already after seeding. */
    @Test
    void seeding_alone_costs_no_more_in_the_mean_than_its_authors_prove() {
        SplittableRandom random = new SplittableRandom(2);
        double[][] points = scattered(10, 2, random);
        points[9] = new double[] {40, 40};
        for (int k = 2; k <= 3; k++) {
            double sum = 0;
            int runs = 2_000;
            for (int run = 0; run < runs; run++) {
                double[][] seeds = KMeans.seeds(points, ones(10), k, random);
                sum += Arrays.stream(points).mapToDouble(p -> Arrays.stream(seeds).mapToDouble(s -> KMeans.squared(p, s)).min().orElseThrow()).sum();
            }
            assertThat(sum / runs).isLessThan(8 * (Math.log(k) + 2) * optimum(points, ones(10), k));
        }
    }

    @Test
    void seeds_are_drawn_by_weight_and_then_by_weight_times_squared_distance() {
        double[][] points = {{0}, {1}, {3}};
        SplittableRandom random = new SplittableRandom(3);
        int[] first = new int[4];
        int farFromZero = 0;
        int runs = 40_000;
        for (int run = 0; run < runs; run++) {
            double[][] seeds = KMeans.seeds(points, new double[] {2, 1, 1}, 2, random);
            first[(int) seeds[0][0]]++;
            farFromZero += seeds[0][0] == 0 && seeds[1][0] == 3 ? 1 : 0;
        }
        assertThat((double) first[0] / runs).isCloseTo(0.5, within(0.01));
        assertThat((double) farFromZero / first[0]).isCloseTo(0.9, within(0.01));
    }

    @Test
    void a_weight_counts_as_that_many_equal_points() {
        double[][] seeds = {{0}, {5}};
        KMeans weighted = KMeans.lloyd(new double[][] {{0}, {1}, {6}}, new double[] {3, 1, 2}, seeds);
        KMeans repeated = KMeans.lloyd(new double[][] {{0}, {0}, {0}, {1}, {6}, {6}}, ones(6), seeds);
        assertThat(weighted.centres()).isDeepEqualTo(repeated.centres());
        assertThat(weighted.centres()[0][0]).isEqualTo(0.25);
        assertThat(weighted.cost()).isCloseTo(repeated.cost(), within(1e-12));
    }

    @Test
    void fewer_distinct_points_than_centres_give_as_many_centres_as_there_are() {
        assertThat(KMeans.best(new double[][] {{1}, {1}, {2}}, ones(3), 5, 3, new SplittableRandom(4)).centres()).hasDimensions(2, 1);
    }

    /** Worked by hand: the centres are 0.5 and 10.5, so 0 and 11 have (10.5 − 0.5) / 10.5, 1 and 10 have (9.5 − 0.5) / 9.5. */
    @Test
    void the_silhouette_is_that_of_its_definition() {
        double[][] points = {{0}, {1}, {10}, {11}};
        KMeans two = KMeans.lloyd(points, ones(4), new double[][] {{0}, {10}});
        assertThat(two.silhouette(points, ones(4))).isCloseTo((10 / 10.5 + 9 / 9.5) / 2, within(1e-12));
        assertThat(KMeans.lloyd(points, ones(4), new double[][] {{0}}).silhouette(points, ones(4))).isZero();
    }

    @Test
    void the_silhouette_is_best_for_the_number_of_heaps_that_there_are() {
        SplittableRandom random = new SplittableRandom(5);
        for (int heaps = 2; heaps <= 6; heaps++) {
            double[][] points = new double[heaps * 40][2];
            for (int i = 0; i < points.length; i++) {
                double angle = 2 * Math.PI * (i % heaps) / heaps;
                points[i] = new double[] {Math.cos(angle) + 0.1 * random.nextDouble(), Math.sin(angle) + 0.1 * random.nextDouble()};
            }
            double best = 0;
            int bestK = 0;
            for (int k = 2; k <= 8; k++) {
                double silhouette = KMeans.best(points, ones(points.length), k, 5, random).silhouette(points, ones(points.length));
                if (silhouette > best) {
                    best = silhouette;
                    bestK = k;
                }
            }
            assertThat(bestK).isEqualTo(heaps);
        }
    }
}
