package boughwright.photo;

import boughwright.colour.Oklab;
import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * Sets a product's background aside: whatever is transparent, and an even ground as far as it hangs together with the picture's border.
 *
 * <p>The ground's colour is the median of the border's pixels. A ground is even when at least half of the border is near that colour; otherwise
 * nothing but what is transparent goes. From the border the ground spreads to every neighbour that is near its colour, or that goes on from
 * a pixel of the ground without a step and is the same in the shade, as under a piece on paper. Lightness counts half throughout: shade
 * changes it most. A ground of the product's own colour would swallow the product: when less than 3 % would be left, all is kept.
 *
 * <p>Distances are Oklab's. Their sizes were tried on drawn products with noise and JPEG's traces; no published source.
 */
final class Background {

    /** As far from the ground's colour as noise, JPEG and an uneven lamp bring it. */
    private static final double NEAR = 0.05;
    /** No step from a pixel to the next; noise on a ground far from the ground's own colour stops the spreading, which is safe. */
    private static final double STEP = 0.015;
    /** Share of light that a shadow leaves: Oklab lightness down to this part of the ground's. */
    private static final double SHADE = 0.6;
    private static final double EVEN = 0.5;
    private static final double LEAST_LEFT = 0.03;

    private Background() {
    }

    /** @param seen null where transparent. @return what is set aside */
    static boolean[] of(Oklab[] seen, int width, int height) {
        boolean[] clear = new boolean[seen.length];
        for (int i = 0; i < seen.length; i++) {
            clear[i] = seen[i] == null;
        }
        int[] border = border(seen, width, height);
        if (border.length == 0) {
            return clear;
        }
        Oklab ground = median(seen, border);
        int[] even = Arrays.stream(border).filter(i -> distance(seen[i], ground) <= NEAR).toArray();
        if (even.length < EVEN * border.length) {
            return clear;
        }
        boolean[] aside = spread(seen, width, clear, even, ground);
        int left = 0;
        int whole = 0;
        for (int i = 0; i < seen.length; i++) {
            left += aside[i] ? 0 : 1;
            whole += clear[i] ? 0 : 1;
        }
        return left < LEAST_LEFT * whole ? clear : aside;
    }

    private static boolean[] spread(Oklab[] seen, int width, boolean[] clear, int[] from, Oklab ground) {
        boolean[] aside = clear.clone();
        ArrayDeque<Integer> next = new ArrayDeque<>();
        for (int i : from) {
            aside[i] = true;
            next.add(i);
        }
        while (!next.isEmpty()) {
            int at = next.remove();
            int column = at % width;
            for (int to : new int[] {column > 0 ? at - 1 : -1, column < width - 1 ? at + 1 : -1, at - width, at + width}) {
                if (to < 0 || to >= seen.length || aside[to]) {
                    continue;
                }
                if (distance(seen[to], ground) <= NEAR || goesOn(seen[at], seen[to], ground)) {
                    aside[to] = true;
                    next.add(to);
                }
            }
        }
        return aside;
    }

    /** Shade scales a colour toward black, all three parts of Oklab alike. */
    private static boolean goesOn(Oklab here, Oklab there, Oklab ground) {
        if (there.l() > ground.l() || there.l() < SHADE * ground.l() || distance(here, there) > STEP) {
            return false;
        }
        double light = there.l() / ground.l();
        return Math.hypot(there.a() - light * ground.a(), there.b() - light * ground.b()) <= NEAR / 2;
    }

    private static double distance(Oklab one, Oklab other) {
        return Math.sqrt(square((one.l() - other.l()) / 2) + square(one.a() - other.a()) + square(one.b() - other.b()));
    }

    private static double square(double x) {
        return x * x;
    }

    private static int[] border(Oklab[] seen, int width, int height) {
        int[] border = new int[2 * (width + height)];
        int count = 0;
        for (int x = 0; x < width; x++) {
            border[count++] = x;
            border[count++] = (height - 1) * width + x;
        }
        for (int y = 0; y < height; y++) {
            border[count++] = y * width;
            border[count++] = y * width + width - 1;
        }
        return Arrays.stream(border).filter(i -> seen[i] != null).toArray();
    }

    private static Oklab median(Oklab[] seen, int[] of) {
        int middle = of.length / 2;
        return new Oklab(Arrays.stream(of).mapToDouble(i -> seen[i].l()).sorted().toArray()[middle],
                Arrays.stream(of).mapToDouble(i -> seen[i].a()).sorted().toArray()[middle],
                Arrays.stream(of).mapToDouble(i -> seen[i].b()).sorted().toArray()[middle]);
    }
}
