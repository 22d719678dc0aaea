package boughwright.photo;

import boughwright.colour.Oklab;
import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * What lies beside what in a picture.
 *
 * @param seen row by row; null where transparent
 * @param of for each pixel its point of {@link Bins}, −1 for what is set aside
 */
record Field(Oklab[] seen, int[] of, int width) {

    /** Indices left, right, above and below; −1 beyond the edge. */
    int[] about(int pixel) {
        int column = pixel % width;
        int below = pixel + width;
        return new int[] {column > 0 ? pixel - 1 : -1, column < width - 1 ? pixel + 1 : -1, pixel - width < 0 ? -1 : pixel - width,
            below < seen.length ? below : -1};
    }

    /**
     * The middle step in Oklab from a pixel of one kind to a neighbour of another: small where one fades into the other, large where there is an
     * edge between them.
     *
     * @param one of points
     * @param other of points
     * @param least fewer neighbours than that say nothing
     * @return infinite when they are not neighbours often enough
     */
    double step(IntPredicate one, IntPredicate other, int least) {
        double[] steps = new double[64];
        int count = 0;
        for (int pixel = 0; pixel < seen.length; pixel++) {
            if (of[pixel] < 0 || !one.test(of[pixel])) {
                continue;
            }
            for (int to : about(pixel)) {
                if (to >= 0 && of[to] >= 0 && other.test(of[to])) {
                    if (count == steps.length) {
                        steps = Arrays.copyOf(steps, 2 * count);
                    }
                    steps[count++] = seen[pixel].difference(seen[to]);
                }
            }
        }
        if (count < Math.max(1, least)) {
            return Double.POSITIVE_INFINITY;
        }
        Arrays.sort(steps, 0, count);
        return steps[count / 2];
    }
}
