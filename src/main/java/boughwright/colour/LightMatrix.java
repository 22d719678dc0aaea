package boughwright.colour;

/** A 3×3 matrix, by rows; where it meets colours, on the linear light of sRGB. */
final class LightMatrix {

    private final double[] rows;

    private LightMatrix(double[] rows) {
        this.rows = rows;
    }

    /** @throws IllegalArgumentException when there are not nine numbers */
    static LightMatrix of(double... rows) {
        if (rows.length != 9) {
            throw new IllegalArgumentException("a 3×3 matrix has nine numbers, not " + rows.length);
        }
        return new LightMatrix(rows.clone());
    }

    static LightMatrix diagonal(double first, double second, double third) {
        return of(first, 0, 0, 0, second, 0, 0, 0, third);
    }

    double[] rows() {
        return rows.clone();
    }

    LightMatrix times(LightMatrix other) {
        double[] product = new double[9];
        for (int i = 0; i < 9; i++) {
            int row = i / 3 * 3;
            int column = i % 3;
            product[i] = rows[row] * other.rows[column] + rows[row + 1] * other.rows[column + 3] + rows[row + 2] * other.rows[column + 6];
        }
        return new LightMatrix(product);
    }

    double[] times(double x, double y, double z) {
        return new double[] {rows[0] * x + rows[1] * y + rows[2] * z, rows[3] * x + rows[4] * y + rows[5] * z, rows[6] * x + rows[7] * y + rows[8] * z};
    }

    LightMatrix scaled(double factor) {
        double[] scaled = rows.clone();
        for (int i = 0; i < 9; i++) {
            scaled[i] *= factor;
        }
        return new LightMatrix(scaled);
    }

    /** The share in [0, 1] of the way from this to another. */
    LightMatrix toward(LightMatrix other, double share) {
        double[] mixed = new double[9];
        for (int i = 0; i < 9; i++) {
            mixed[i] = rows[i] * (1 - share) + other.rows[i] * share;
        }
        return new LightMatrix(mixed);
    }

    /** @throws ArithmeticException when it has no inverse */
    LightMatrix inverse() {
        double[] m = rows;
        double a = m[4] * m[8] - m[5] * m[7];
        double b = m[5] * m[6] - m[3] * m[8];
        double c = m[3] * m[7] - m[4] * m[6];
        double determinant = m[0] * a + m[1] * b + m[2] * c;
        if (determinant == 0) {
            throw new ArithmeticException("the matrix has no inverse");
        }
        return new LightMatrix(new double[] {
            a, m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            b, m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            c, m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]}).scaled(1 / determinant);
    }

    /** A colour's light sent through the matrix; what leaves the screen's range is cut off there, as an SVG filter does. */
    Srgb applied(Srgb colour) {
        double[] light = times(Srgb.linear(colour.red()), Srgb.linear(colour.green()), Srgb.linear(colour.blue()));
        return new LinearRgb(light[0], light[1], light[2]).clipped().toSrgb();
    }
}
