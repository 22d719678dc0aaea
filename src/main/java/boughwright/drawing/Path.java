package boughwright.drawing;

/**
 * Path data in short relative form. Points pass through a placement (turn, stretch, shift) before they are written;
 * differences are taken between rounded points, so that errors do not add up along the path.
 */
final class Path {

    private final StringBuilder d = new StringBuilder(96);
    /** Units of a tenth of a millimetre that one written step stands for: 10 writes whole millimetres, 1 tenths. */
    private final int grain;
    private char last = ' ';
    private long atX;
    private long atY;
    private double cos = 1;
    private double sin;
    private double sx = 1;
    private double sy = 1;
    private double ox;
    private double oy;

    private Path(int grain) {
        this.grain = grain;
    }

    /** Precise to 0.1 mm. */
    static Path fine() {
        return new Path(1);
    }

    /** Precise to 1 mm, for foliage and other large masses. */
    static Path coarse() {
        return new Path(10);
    }

    /** Sets the placement of the points that follow: stretched, turned by the angle (radians, clockwise), shifted. */
    Path place(double x, double y, double angle, double stretchX, double stretchY) {
        ox = x;
        oy = y;
        cos = Math.cos(angle);
        sin = Math.sin(angle);
        sx = stretchX;
        sy = stretchY;
        return this;
    }

    Path place(double x, double y, double angle) {
        return place(x, y, angle, 1, 1);
    }

    Path home() {
        return place(0, 0, 0, 1, 1);
    }

    Path m(double x, double y) {
        long px = px(x, y);
        long py = py(x, y);
        d.append('M');
        last = 'M';
        write(px);
        write(py);
        atX = px;
        atY = py;
        return this;
    }

    Path l(double x, double y) {
        long px = px(x, y);
        long py = py(x, y);
        command('l');
        step(px, py);
        return this;
    }

    Path q(double x1, double y1, double x, double y) {
        command('q');
        write(px(x1, y1) - atX);
        write(py(x1, y1) - atY);
        step(px(x, y), py(x, y));
        return this;
    }

    Path c(double x1, double y1, double x2, double y2, double x, double y) {
        command('c');
        write(px(x1, y1) - atX);
        write(py(x1, y1) - atY);
        write(px(x2, y2) - atX);
        write(py(x2, y2) - atY);
        step(px(x, y), py(x, y));
        return this;
    }

    /** A dot for a stroke with round caps; it has some length, since not every printer draws a line of none. */
    Path dot(double x, double y) {
        m(x, y);
        d.append("h.1");
        return this;
    }

    Path z() {
        d.append('z');
        last = 'z';
        return this;
    }

    /** A closed ellipse of four curves in the present placement. */
    Path ellipse(double x, double y, double rx, double ry) {
        double kx = rx * 0.5523;
        double ky = ry * 0.5523;
        return m(x - rx, y).c(x - rx, y - ky, x - kx, y - ry, x, y - ry).c(x + kx, y - ry, x + rx, y - ky, x + rx, y)
                .c(x + rx, y + ky, x + kx, y + ry, x, y + ry).c(x - kx, y + ry, x - rx, y + ky, x - rx, y).z();
    }

    /** A smooth curve through the points after the present one (Catmull-Rom), in the present placement. */
    Path through(double[][] points) {
        for (int i = 0; i + 1 < points.length; i++) {
            double[] p0 = points[Math.max(0, i - 1)];
            double[] p1 = points[i];
            double[] p2 = points[i + 1];
            double[] p3 = points[Math.min(points.length - 1, i + 2)];
            c(p1[0] + (p2[0] - p0[0]) / 6, p1[1] + (p2[1] - p0[1]) / 6,
                    p2[0] - (p3[0] - p1[0]) / 6, p2[1] - (p3[1] - p1[1]) / 6, p2[0], p2[1]);
        }
        return this;
    }

    boolean isEmpty() {
        return d.length() == 0;
    }

    StringBuilder d() {
        return d;
    }

    private void step(long px, long py) {
        write(px - atX);
        write(py - atY);
        atX = px;
        atY = py;
    }

    private void command(char c) {
        if (c != last) {
            d.append(c);
            last = c;
        }
    }

    private void write(long n) {
        int at = d.length();
        if (n >= 0 && at > 0) {
            char before = d.charAt(at - 1);
            if (before >= '0' && before <= '9') {
                d.append(' ');
            }
        }
        if (grain == 10) {
            d.append(n);
        } else {
            Svg.tenths(d, n);
        }
    }

    private long px(double x, double y) {
        double v = ox + cos * x * sx - sin * y * sy;
        return Math.round(grain == 10 ? v : v * 10);
    }

    private long py(double x, double y) {
        double v = oy + sin * x * sx + cos * y * sy;
        return Math.round(grain == 10 ? v : v * 10);
    }
}
