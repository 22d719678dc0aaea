package boughwright.photo;

import boughwright.colour.Oklab;
import java.util.Arrays;

/**
 * A picture's colours gathered: pixels that share the upper five bits of red, green and blue are one point, at the mean of their Oklab
 * and as heavy as they are many. No colour is moved by more than its neighbours in the bin; thousands of points stand for all pixels.
 *
 * @param points lightness halved, then a and b: light and shade move lightness most, paint moves the other two
 * @param weights pixels
 * @param of for each pixel its point, −1 for what is set aside
 */
record Bins(double[][] points, double[] weights, int[] of) {

    private static final int COUNT = 1 << 15;

    static Bins of(Oklab[] seen, Pixels pixels, boolean[] aside) {
        double[][] sums = new double[COUNT][];
        double[] counts = new double[COUNT];
        int[] of = new int[seen.length];
        for (int i = 0; i < seen.length; i++) {
            if (aside[i]) {
                continue;
            }
            int rgb = pixels.argb()[i];
            int bin = rgb >> 9 & 0x7C00 | rgb >> 6 & 0x3E0 | rgb >> 3 & 0x1F;
            if (sums[bin] == null) {
                sums[bin] = new double[3];
            }
            sums[bin][0] += seen[i].l() / 2;
            sums[bin][1] += seen[i].a();
            sums[bin][2] += seen[i].b();
            counts[bin]++;
            of[i] = bin;
        }
        int[] order = new int[COUNT];
        int used = 0;
        double[][] points = new double[COUNT][];
        double[] weights = new double[COUNT];
        for (int bin = 0; bin < COUNT; bin++) {
            if (counts[bin] > 0) {
                double count = counts[bin];
                points[used] = Arrays.stream(sums[bin]).map(sum -> sum / count).toArray();
                weights[used] = counts[bin];
                order[bin] = used++;
            }
        }
        for (int i = 0; i < seen.length; i++) {
            of[i] = aside[i] ? -1 : order[of[i]];
        }
        return new Bins(Arrays.copyOf(points, used), Arrays.copyOf(weights, used), of);
    }

    Oklab colour(int point) {
        return colour(points[point]);
    }

    static Oklab colour(double[] point) {
        return new Oklab(2 * point[0], point[1], point[2]);
    }
}
