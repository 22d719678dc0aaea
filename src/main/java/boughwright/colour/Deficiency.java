package boughwright.colour;

import java.util.List;

/**
 * How somebody sees whose eyes lack one kind of cone, or have it shifted toward another.
 *
 * <p>G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE
 * Transactions on Visualization and Computer Graphics 15(6):1291-1298, 2009: the matrices that the authors published with it, for
 * severities in steps of a tenth, mixed linearly between. They are applied to linear light, since the model reckons with the light that
 * the primaries of a screen give off; colour libraries that reprint them say the same.
 *
 * <p>For the short cones it only stands in for what is known: colour libraries that have it advise the model of Brettel, Viénot and Mollon
 * (1997) there, which is no single matrix. Which colours fall together is about right, their hues are less so.
 *
 * @param cone the kind that is shifted or missing
 * @param severity 0 usual sight .. 1 the cone is missing; between, an anomalous cone
 */
public record Deficiency(Cone cone, double severity) implements Sight {

    /** The cones of the eye by the wavelengths they take; without them one is protan, deutan, tritan. */
    public enum Cone { LONG, MIDDLE, SHORT }

    public static final Deficiency PROTANOPIA = new Deficiency(Cone.LONG, 1);
    public static final Deficiency DEUTERANOPIA = new Deficiency(Cone.MIDDLE, 1);
    public static final Deficiency TRITANOPIA = new Deficiency(Cone.SHORT, 1);

    /** The three in which a cone is missing, the commoner two first. */
    public static final List<Deficiency> COMPLETE = List.of(PROTANOPIA, DEUTERANOPIA, TRITANOPIA);

    /** @throws IllegalArgumentException when the severity is outside 0 to 1 */
    public Deficiency {
        if (!(severity >= 0 && severity <= 1)) {
            throw new IllegalArgumentException("severity runs from 0 to 1: " + severity);
        }
    }

    @Override
    public double[] matrix() {
        List<LightMatrix> steps = PublishedShifts.of(cone);
        double at = severity * (steps.size() - 1);
        int below = (int) Math.min(steps.size() - 2, Math.floor(at));
        return steps.get(below).toward(steps.get(below + 1), at - below).rows();
    }
}
