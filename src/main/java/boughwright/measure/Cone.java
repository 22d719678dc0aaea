package boughwright.measure;

/**
 * The lateral surface of a right circular cone, apex up: the surface on which a tree is dressed.
 *
 * <p>Positions on it are a slant distance {@code t} from the apex (0 at the tip, {@link #slant()} at the rim) and an angle
 * about the axis. Unrolled flat, the surface is a circular sector of radius {@code slant} in which an angle φ about the axis
 * becomes φ·radius/slant; that unrolling keeps lengths, so straight lines in it are the shortest ways on the cone.
 *
 * <p>Formulas: lateral area π·r·s, frustum π·(R+r)·s, s = √(r²+h²) (textbook).
 *
 * @param radius of the rim, metres, above 0
 * @param height from the rim's plane to the apex, metres, above 0
 */
public record Cone(double radius, double height) {

    public Cone {
        if (!(radius > 0) || !(height > 0) || !Double.isFinite(radius) || !Double.isFinite(height)) {
            throw new IllegalArgumentException("a cone needs a radius and a height above 0, not " + radius + " and " + height);
        }
    }

    /** Distance along the surface from the apex to the rim, metres. */
    public double slant() {
        return Math.hypot(radius, height);
    }

    /** Lateral area π·r·s, m². */
    public double area() {
        return Math.PI * radius * slant();
    }

    /** Lateral area of the part between two slant distances from the apex, m². */
    public double areaBetween(double fromSlant, double toSlant) {
        double perSquare = Math.PI * radius / slant();
        return perSquare * (toSlant * toSlant - fromSlant * fromSlant);
    }

    /** Radius of the horizontal circle at a slant distance from the apex, metres. */
    public double radiusAt(double slantDistance) {
        return radius * slantDistance / slant();
    }

    /** How far below the apex a slant distance lies, metres. */
    public double dropAt(double slantDistance) {
        return height * slantDistance / slant();
    }

    /** Slant distance of the point so far below the apex, metres. */
    public double slantAtDrop(double drop) {
        return slant() * drop / height;
    }

    /**
     * Shortest way on the surface between two points, metres.
     *
     * @param angle difference of angle about the axis, radians, any sign; taken the short way round
     */
    public double distance(double slantA, double slantB, double angle) {
        double turn = Math.abs(Math.IEEEremainder(angle, 2 * Math.PI));
        double unrolled = turn * radius / slant();
        double squared = slantA * slantA + slantB * slantB - 2 * slantA * slantB * Math.cos(unrolled);
        return Math.sqrt(Math.max(0, squared));
    }
}
