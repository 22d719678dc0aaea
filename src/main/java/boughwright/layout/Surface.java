package boughwright.layout;

import boughwright.brief.Tree;
import boughwright.measure.Cone;

/**
 * The dressed part of one tree: the seen sector of its cone, below the topper and above the lowest branches.
 *
 * <p>A position on it is (slant, angle): metres along the surface from the tip, and radians about the trunk with 0 at 6 o'clock,
 * growing toward 3 o'clock, so that x = r·sin(angle) and z = r·cos(angle). Clock positions are read from above; 3 o'clock is +x.
 */
final class Surface {

    /** The part of the slant from the tip that the topper takes (common practice, no published source). */
    private static final double TOPPER_SHARE = 0.15;
    /** Nothing hangs below the rim's last few centimetres, where there is no branch to bear it. */
    private static final double RIM_SHARE = 0.985;

    private final Tree tree;
    private final Cone cone;
    private final double top;
    private final double bottom;
    private final double widening;
    private final double falling;
    private final double tip;

    Surface(Tree tree) {
        this.tree = tree;
        this.cone = tree.form().cone();
        double slant = cone.slant();
        this.top = slant * TOPPER_SHARE;
        this.bottom = slant * RIM_SHARE;
        this.widening = cone.radius() / slant;
        this.falling = cone.height() / slant;
        this.tip = tree.height().metres();
    }

    Cone cone() {
        return cone;
    }

    double top() {
        return top;
    }

    double bottom() {
        return bottom;
    }

    /** Width of the seen sector, radians, (0, 2π]. */
    double sector() {
        return tree.seenFrom().radians();
    }

    boolean round() {
        return tree.seenFrom().degrees() == 360;
    }

    /** Seen area between top and bottom, m². */
    double area() {
        return cone.areaBetween(top(), bottom()) * tree.seenFrom().share();
    }

    /** Seen area of the same part of the cone on which pieces of a depth lie, m²: as high, and narrower. */
    double areaAt(double depth) {
        double out = depth * widening;
        return sector() / 2 * out * Math.hypot(out, falling) * (bottom * bottom - top * top);
    }

    /** Largest angle to either side at which a piece keeps so many metres from the sector's straight edges, radians. */
    double edge(double slant, double margin) {
        return sector() / 2 - Math.min(margin / Math.max(1e-6, radius(slant)), sector() / 4);
    }

    /** The angle, or the nearest to it at which a piece keeps so many metres from the sector's straight edges, radians. */
    double within(double slant, double angle, double margin) {
        double edge = edge(slant, margin);
        return round() ? angle : Math.max(-edge, Math.min(edge, angle));
    }

    /** The slant below which a share {@code u} of the body's area lies above: equal steps of u are equal areas. */
    double slantAtArea(double u) {
        return Math.sqrt(top() * top() + u * (bottom() * bottom() - top() * top()));
    }

    double slantAtShare(double share) {
        return top() + share * (bottom() - top());
    }

    /** The angle at a share of the sector, 0 at its left edge (toward 9 o'clock) as seen from the front, 1 at its right. */
    double angleAt(double share) {
        return (share - 0.5) * sector();
    }

    /** Slant of the point on the surface at a height above the floor, within what is dressed. */
    double slantAtHeight(double height) {
        return Math.max(top, Math.min(bottom, (tip - height) / falling));
    }

    /** Angle of a clock position, radians in (−π, π]. */
    static double angle(double clock) {
        return Math.IEEEremainder((6 - clock) * Math.PI / 6, 2 * Math.PI);
    }

    double height(double slant) {
        return tip - falling * slant;
    }

    /** Metres that the tree's radius grows for each metre of slant. */
    double widening() {
        return widening;
    }

    /** Metres that each metre of slant falls. */
    double falling() {
        return falling;
    }

    double radius(double slant) {
        return widening * slant;
    }

    /** The point so far out along the branches: depth 0 at the trunk, 1 at the tips. */
    Point point(double slant, double angle, double depth) {
        return proud(slant, angle, depth * radius(slant));
    }

    /** The point at a distance from the trunk's axis, which may stand proud of the branches. */
    Point proud(double slant, double angle, double fromAxis) {
        return new Point(fromAxis * Math.sin(angle), height(slant), fromAxis * Math.cos(angle));
    }

    /** Clock position of an angle, (0, 12]. */
    static double clock(double angle) {
        double clock = 6 - angle / (2 * Math.PI) * 12;
        clock = clock - 12 * Math.floor(clock / 12);
        return clock == 0 ? 12 : clock;
    }

    /** Whether a position lies on the dressed surface, keeping so many metres from the sector's straight edges. */
    boolean holds(double slant, double angle, double margin) {
        if (slant < top() || slant > bottom()) {
            return false;
        }
        if (round()) {
            return true;
        }
        return Math.abs(angle) <= edge(slant, margin);
    }
}
