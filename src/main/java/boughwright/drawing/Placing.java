package boughwright.drawing;

/** Where one piece stands in the picture: hidden or not, how near, and the transform of its definition. */
final class Placing {

    /** A piece farther round than this share of the radius is behind the tree. */
    private static final double PAST_SILHOUETTE = -0.16;
    private static final double TURNING_AWAY = 0.14;
    private static final double DEEP = 0.75;
    /** Nearer the axis than this, metres, and on a small tree than this share of its height, a piece belongs to the bouquet at the tip. */
    private static final double AXIS = 0.06;
    private static final double AXIS_SHARE = 0.022;
    /** Above this share of the height the stems of the topper belong to the bouquet wherever their feet are. */
    private static final double TIP = 0.85;

    private final Sprite piece;
    private final double radius;
    private final double near;
    private final double right;
    private final double facing;
    private final boolean bouquet;
    private final Projection eye;

    Placing(Sprite piece, TreeShape tree, Projection eye) {
        this.piece = piece;
        this.eye = eye;
        radius = Math.hypot(piece.x(), piece.z());
        near = eye.near(piece.x(), piece.z());
        right = eye.right(piece.x(), piece.z());
        boolean stem = "height-stem".equals(piece.role()) || "texture-stem".equals(piece.role());
        bouquet = radius < Math.min(AXIS, AXIS_SHARE * tree.height()) || stem && piece.y() > tree.height() * TIP;
        facing = bouquet ? 1 : near / Math.max(radius, tree.radiusAt(piece.y()) * 0.3);
    }

    /** True for what stands in the tip itself, which every side sees. */
    private boolean onAxis() {
        return bouquet;
    }

    boolean hidden() {
        return !onAxis() && facing < (deep() ? -0.03 : PAST_SILHOUETTE);
    }

    boolean dim() {
        return !onAxis() && piece.form() != Form.LIGHT && facing < TURNING_AWAY;
    }

    /** Painted before the front needles. */
    boolean tucked() {
        return deep() || !onAxis() && facing < 0;
    }

    private boolean deep() {
        return piece.depth() < DEEP && !onAxis();
    }

    /** Greater is painted later. The bias keeps the trade's order where pieces lie equally near. */
    double order() {
        double bias = switch (piece.form().hold()) {
            case CENTRE -> 0.01;
            case GROWS -> 0.03;
            case TIED -> 0.05;
            case FACES -> 0.08;
            case HANGS, PERCHES -> 0.1;
        };
        if ("height-stem".equals(piece.role()) && onAxis()) {
            bias -= 0.06;
        }
        return near + bias;
    }

    double x() {
        return eye.x(piece.x(), piece.z());
    }

    double y() {
        return eye.y(piece.y());
    }

    void transform(StringBuilder out) {
        switch (piece.form().hold()) {
            case CENTRE -> {
                translate(out);
                if (piece.form() == Form.BALL) {
                    out.append(" scale(");
                    Svg.fine(out, piece.width() * 10);
                    out.append(')');
                }
            }
            case HANGS, PERCHES -> {
                translate(out);
                if (piece.form() == Form.BIRD && right > 0) {
                    out.append(" scale(-1 1)");
                }
            }
            case FACES -> flower(out);
            case GROWS -> {
                translate(out);
                out.append(" rotate(").append(Math.round(heading())).append(')');
            }
            case TIED -> {
                translate(out);
                out.append(" rotate(").append(Math.round(-right * 14 + spin() % 11 - 5)).append(')');
            }
        }
    }

    private void translate(StringBuilder out) {
        out.append("translate(").append(Math.round(x())).append(' ').append(Math.round(y())).append(')');
    }

    /** A head turned to its side of the tree is foreshortened across. */
    private void flower(StringBuilder out) {
        double scale = piece.width() * 10;
        double across = scale * Math.max(0.62, Math.min(1, 0.5 + 0.62 * Math.max(0, facing)));
        double turn = Math.toRadians(spin() % 360);
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        out.append("matrix(");
        Svg.fine(out, cos * across);
        out.append(' ');
        Svg.fine(out, sin * scale);
        out.append(' ');
        Svg.fine(out, -sin * across);
        out.append(' ');
        Svg.fine(out, cos * scale);
        out.append(' ').append(Math.round(x())).append(' ').append(Math.round(y())).append(')');
    }

    /** Degrees clockwise from straight up in which a spray points in this view. */
    private double heading() {
        double lean = piece.lean();
        if (onAxis()) {
            double turned = switch (eye.view()) {
                case FRONT, ABOVE -> lean;
                case BACK -> -lean;
                case LEFT, RIGHT -> Math.abs(lean) * ((spin() % 200) / 100.0 - 1) * 0.9;
            };
            return Math.toDegrees(turned);
        }
        double side = right / radius;
        double ahead = near / radius;
        double outward = 0.55 + 0.3 * Math.abs(Math.sin(lean));
        double dx = Math.sin(lean) * ahead + outward * side;
        return Math.toDegrees(Math.atan2(dx, Math.max(0.12, Math.cos(lean))));
    }

    /** A number of the piece's own, at least 0. */
    int spin() {
        int h = piece.id().hashCode() * 0x9E3779B1;
        return (h ^ h >>> 15) & 0x7fffffff;
    }
}
