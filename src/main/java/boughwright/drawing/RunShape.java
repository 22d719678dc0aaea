package boughwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The geometry of one band: finds the pinches, divides the run there, and for each part works out from the bulge how wide
 * the ribbon is, how it turns to the viewer and how the light falls on it.
 */
final class RunShape {

    /** Light from the upper left in front of the viewer: right, up, near. */
    private static final double[] LIGHT = {-0.4, 0.6, 0.69};
    private static final double PINCHED = 0.24;

    private final Band band;
    private final TreeShape tree;
    private final Projection eye;
    private final SplittableRandom random;

    RunShape(Band band, TreeShape tree, Projection eye) {
        this.band = band;
        this.tree = tree;
        this.eye = eye;
        this.random = Studio.randomFor(band.id());
    }

    List<Strip> strips() {
        List<double[]> p = band.points();
        List<Integer> cuts = pinches(p);
        List<Strip> out = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i++) {
            boolean start = i == 0;
            boolean end = i + 2 == cuts.size();
            out.add(strip(cuts.get(i), cuts.get(i + 1), start, end));
        }
        return out;
    }

    private double bulge(double[] p) {
        return Math.hypot(p[0], p[2]) - tree.radiusAt(p[1]);
    }

    /** First point, every dip of the bulge toward the trunk, last point. */
    private List<Integer> pinches(List<double[]> p) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (double[] q : p) {
            low = Math.min(low, bulge(q));
            high = Math.max(high, bulge(q));
        }
        double mid = low + (high - low) * 0.4;
        List<Integer> cuts = new ArrayList<>();
        cuts.add(0);
        for (int i = 1; i < p.size() - 1; i++) {
            double b = bulge(p.get(i));
            if (b <= mid && b <= bulge(p.get(i - 1)) && b < bulge(p.get(i + 1)) && i - cuts.get(cuts.size() - 1) >= 2) {
                cuts.add(i);
            }
        }
        if (p.size() - 1 - cuts.get(cuts.size() - 1) < 2 && cuts.size() > 1) {
            cuts.remove(cuts.size() - 1);
        }
        cuts.add(p.size() - 1);
        return cuts;
    }

    private Strip strip(int from, int to, boolean startCut, boolean endCut) {
        int n = startCut || endCut ? 5 : 6;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] wx = new double[n];
        double[] wy = new double[n];
        double[] light = new double[n];
        double nearSum = 0;
        double facingSum = 0;
        double curl = (random.nextDouble() - 0.5) * 1.5;
        double sway = (random.nextDouble() - 0.5) * 0.5;
        for (int i = 0; i < n; i++) {
            double s = (double) i / (n - 1);
            double at = from + (to - from) * s;
            double[] c = point(at);
            double[] t = tangent(at);
            double r = Math.max(0.01, Math.hypot(c[0], c[2]));
            double[] out = {c[0] / r, 0.25, c[2] / r};
            double[] w = unit(cross(t, out));
            double[] nrm = unit(cross(w, t));
            if (dot(nrm, out) < 0) {
                nrm = new double[] {-nrm[0], -nrm[1], -nrm[2]};
            }
            double tail = startCut && !endCut ? 1 - s : endCut && !startCut ? s : 0;
            double turn = tail * curl + sway * Math.sin(Math.PI * 2 * s);
            double ct = Math.cos(turn);
            double st = Math.sin(turn);
            double[] ww = {w[0] * ct + nrm[0] * st, w[1] * ct + nrm[1] * st, w[2] * ct + nrm[2] * st};
            double[] nn = {nrm[0] * ct - w[0] * st, nrm[1] * ct - w[1] * st, nrm[2] * ct - w[2] * st};
            double wide = width(s, startCut, endCut);
            x[i] = 1000 * eye.right(c);
            y[i] = -1000 * eye.up(c);
            wx[i] = eye.right(ww) * wide;
            wy[i] = -eye.up(ww) * wide;
            double shownWidth = Math.hypot(wx[i], wy[i]);
            if (shownWidth < 0.3 * wide) {
                double k = 0.3 * wide / Math.max(0.01, shownWidth);
                wx[i] *= k;
                wy[i] *= k;
            }
            double facing = eye.near(nn);
            double lit = LIGHT[0] * eye.right(nn) + LIGHT[1] * eye.up(nn) + LIGHT[2] * facing;
            light[i] = facing < 0 ? 0.34 - 0.3 * Math.abs(lit) : lit;
            nearSum += eye.near(c);
            facingSum += facing;
        }
        keepSides(wx, wy);
        return new Strip(x, y, wx, wy, light, nearSum / n, facingSum / n, startCut, endCut);
    }

    /** A half-width vector must not jump to the other side between neighbours, or the outline would cross itself. */
    private static void keepSides(double[] wx, double[] wy) {
        for (int i = 1; i < wx.length; i++) {
            if (wx[i] * wx[i - 1] + wy[i] * wy[i - 1] < 0) {
                wx[i] = -wx[i];
                wy[i] = -wy[i];
            }
        }
    }

    private static double width(double s, boolean startCut, boolean endCut) {
        double open;
        if (startCut && endCut) {
            open = 1;
        } else if (startCut) {
            open = Math.min(1, (1 - s) * 2.4);
        } else if (endCut) {
            open = Math.min(1, s * 2.4);
        } else {
            open = 1.12 * Math.pow(Math.sin(Math.PI * s), 0.6);
        }
        return PINCHED + (1 - PINCHED) * Math.max(0, open);
    }

    private double[] point(double at) {
        List<double[]> p = band.points();
        int i = (int) Math.min(p.size() - 2, Math.floor(at));
        double t = at - i;
        double[] a = p.get(Math.max(0, i - 1));
        double[] b = p.get(i);
        double[] c = p.get(i + 1);
        double[] d = p.get(Math.min(p.size() - 1, i + 2));
        double[] out = new double[3];
        for (int k = 0; k < 3; k++) {
            out[k] = 0.5 * (2 * b[k] + (c[k] - a[k]) * t + (2 * a[k] - 5 * b[k] + 4 * c[k] - d[k]) * t * t
                    + (3 * b[k] - a[k] - 3 * c[k] + d[k]) * t * t * t);
        }
        return out;
    }

    private double[] tangent(double at) {
        double last = band.points().size() - 1;
        double[] a = point(Math.max(0, at - 0.3));
        double[] b = point(Math.min(last, at + 0.3));
        return unit(new double[] {b[0] - a[0], b[1] - a[1], b[2] - a[2]});
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] unit(double[] a) {
        double l = Math.sqrt(dot(a, a));
        return l < 1e-9 ? new double[] {1, 0, 0} : new double[] {a[0] / l, a[1] / l, a[2] / l};
    }
}
