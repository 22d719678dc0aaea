package boughwright.photo;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Groups weighted points about k centres: k-means++ seeding, then Lloyd's steps until no point changes its centre.
 *
 * <p>D. Arthur, S. Vassilvitskii, "k-means++: The Advantages of Careful Seeding", SODA 2007, pp. 1027-1035: the first centre is drawn by weight, each
 * further one by weight times squared distance to the nearest centre so far. The seeding alone costs at most 8 (ln k + 2) times the optimum in the mean
 * (their Theorem 1.1). A weight counts as that many equal points.
 *
 * @param centres fewer than asked for where there are fewer distinct points
 * @param of for each point its centre
 * @param cost sum over all points of weight times squared distance to the centre
 */
record KMeans(double[][] centres, int[] of, double cost) {

    /** Lloyd's steps; they end by themselves long before. */
    private static final int MOST_STEPS = 100;

    /**
     * The cheapest of several runs; the first of equals.
     *
     * @param points of one length each
     * @param runs at least 1
     */
    static KMeans best(double[][] points, double[] weights, int k, int runs, SplittableRandom random) {
        KMeans best = null;
        for (int run = 0; run < runs; run++) {
            KMeans found = lloyd(points, weights, seeds(points, weights, k, random));
            best = best == null || found.cost < best.cost ? found : best;
        }
        return best;
    }

    static double[][] seeds(double[][] points, double[] weights, int k, SplittableRandom random) {
        double[] odds = weights.clone();
        double[] nearest = new double[points.length];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        double[][] seeds = new double[k][];
        int count = 0;
        while (count < k) {
            int drawn = draw(odds, random);
            if (drawn < 0) {
                break;
            }
            seeds[count++] = points[drawn].clone();
            for (int i = 0; i < points.length; i++) {
                nearest[i] = Math.min(nearest[i], squared(points[i], points[drawn]));
                odds[i] = weights[i] * nearest[i];
            }
        }
        return Arrays.copyOf(seeds, count);
    }

    /** An index by its odds; −1 when all are 0. */
    private static int draw(double[] odds, SplittableRandom random) {
        double sum = 0;
        for (double odd : odds) {
            sum += odd;
        }
        double left = random.nextDouble() * sum;
        int last = -1;
        for (int i = 0; i < odds.length; i++) {
            if (odds[i] > 0) {
                last = i;
                left -= odds[i];
                if (left < 0) {
                    return i;
                }
            }
        }
        return last;
    }

    static KMeans lloyd(double[][] points, double[] weights, double[][] seeds) {
        int size = points[0].length;
        double[][] centres = seeds;
        int[] of = new int[points.length];
        Arrays.fill(of, -1);
        double cost = 0;
        boolean changed = true;
        for (int step = 0; changed && step < MOST_STEPS; step++) {
            changed = false;
            cost = 0;
            double[][] sums = new double[centres.length][size];
            double[] weight = new double[centres.length];
            for (int i = 0; i < points.length; i++) {
                int nearest = 0;
                double least = Double.POSITIVE_INFINITY;
                for (int c = 0; c < centres.length; c++) {
                    double distance = squared(points[i], centres[c]);
                    if (distance < least) {
                        least = distance;
                        nearest = c;
                    }
                }
                changed |= of[i] != nearest;
                of[i] = nearest;
                cost += weights[i] * least;
                weight[nearest] += weights[i];
                for (int d = 0; d < size; d++) {
                    sums[nearest][d] += weights[i] * points[i][d];
                }
            }
            if (changed) {
                double[][] moved = new double[centres.length][];
                for (int c = 0; c < centres.length; c++) {
                    // A centre that lost all its points stays where it is.
                    moved[c] = weight[c] > 0 ? sums[c] : centres[c];
                    for (int d = 0; weight[c] > 0 && d < size; d++) {
                        moved[c][d] /= weight[c];
                    }
                }
                centres = moved;
            }
        }
        return new KMeans(centres, of, cost);
    }

    /**
     * How well the points sit with their centres, −1..1: the silhouette of P. J. Rousseeuw, "Silhouettes: a graphical aid to the interpretation
     * and validation of cluster analysis", J. Comput. Appl. Math. 20 (1987) 53-65, (b − a) / max(a, b), in the simplified form in which a and b are the
     * distances to the point's own centre and to the nearest other (E. R. Hruschka, L. N. de Castro, R. J. G. B. Campello, "Evolutionary algorithms for
     * clustering gene-expression data", ICDM 2004, pp. 403-406). The mean by weight; 0 for a single centre.
     */
    double silhouette(double[][] points, double[] weights) {
        if (centres.length < 2) {
            return 0;
        }
        double sum = 0;
        double all = 0;
        for (int i = 0; i < points.length; i++) {
            double other = Double.POSITIVE_INFINITY;
            for (int c = 0; c < centres.length; c++) {
                if (c != of[i]) {
                    other = Math.min(other, squared(points[i], centres[c]));
                }
            }
            double a = Math.sqrt(squared(points[i], centres[of[i]]));
            double b = Math.sqrt(other);
            sum += weights[i] * (Math.max(a, b) > 0 ? (b - a) / Math.max(a, b) : 0);
            all += weights[i];
        }
        return sum / all;
    }

    static double squared(double[] one, double[] other) {
        double sum = 0;
        for (int d = 0; d < one.length; d++) {
            double step = one[d] - other[d];
            sum += step * step;
        }
        return sum;
    }
}
