package boughwright.drawing;

/**
 * One length of ribbon in the picture, from pinch to pinch or from pinch to cut end, as samples of its middle line, the
 * half-width vector of a ribbon of unit half width, and its brightness. Addressed by s in [0, 1] along it and v in
 * [-1, 1] across.
 */
record Strip(double[] x, double[] y, double[] wx, double[] wy, double[] light, double near, double facing, boolean startCut,
             boolean endCut) {

    int samples() {
        return x.length;
    }

    /** Picture point at s, v for a ribbon of the given half width, mm. */
    double[] at(double s, double v, double half) {
        double f = Math.max(0, Math.min(1, s)) * (x.length - 1);
        int i = (int) Math.min(x.length - 2, Math.floor(f));
        double t = f - i;
        double k = v * half;
        return new double[] {x[i] + (x[i + 1] - x[i]) * t + k * (wx[i] + (wx[i + 1] - wx[i]) * t),
            y[i] + (y[i + 1] - y[i]) * t + k * (wy[i] + (wy[i + 1] - wy[i]) * t)};
    }

    /** The outline of a ribbon of the half width; a cut end is a fishtail or a slant. */
    Path outline(double half, boolean fishtail) {
        Path p = Path.coarse();
        int n = samples();
        double[][] left = edge(-1, half, false);
        double[][] right = edge(1, half, true);
        if (startCut && !fishtail) {
            left[0] = extend(0, 1, -1, half, -0.5);
        }
        p.m(left[0][0], left[0][1]).through(left);
        if (endCut) {
            if (fishtail) {
                double[] notch = extend(n - 1, n - 2, 0, half, 0.75);
                p.l(notch[0], notch[1]);
            } else {
                right[0] = extend(n - 1, n - 2, 1, half, -0.7);
            }
        }
        p.l(right[0][0], right[0][1]).through(right);
        if (startCut && fishtail) {
            double[] notch = extend(0, 1, 0, half, 0.75);
            p.l(notch[0], notch[1]);
        }
        return p.z();
    }

    /** The point at sample i, v, moved toward sample j by the share of the half width. */
    private double[] extend(int i, int j, double v, double half, double share) {
        double dx = x[j] - x[i];
        double dy = y[j] - y[i];
        double d = Math.max(1, Math.hypot(dx, dy));
        return new double[] {x[i] + v * half * wx[i] + dx / d * half * share, y[i] + v * half * wy[i] + dy / d * half * share};
    }

    /** How bright the ribbon is at s, 1 full light, below 0 its shaded back. */
    double brightness(double s) {
        double f = Math.max(0, Math.min(1, s)) * (light.length - 1);
        int i = (int) Math.min(light.length - 2, Math.floor(f));
        return light[i] + (light[i + 1] - light[i]) * (f - i);
    }

    /** The line at v across, forward or from the end back. */
    double[][] edge(double v, double half, boolean backward) {
        int n = samples();
        double[][] out = new double[n][];
        for (int i = 0; i < n; i++) {
            int k = backward ? n - 1 - i : i;
            out[i] = new double[] {x[k] + v * half * wx[k], y[k] + v * half * wy[k]};
        }
        return out;
    }
}
