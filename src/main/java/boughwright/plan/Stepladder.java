package boughwright.plan;

import boughwright.measure.Length;
import boughwright.needs.Climb;
import java.util.List;

/**
 * Which stepladder reaches a height.
 *
 * <p>Reach of a person of 5 ft 9 in with 12 in of vertical reach, standing no higher than two steps below the top, by size of
 * ladder: safemt.com, "Three Steps for Selecting Ladders". Off the floor the same person reaches 6 ft 9 in.
 */
public final class Stepladder {

    private record Size(int feet, Length reach) {
    }

    private static final Length FLOOR_REACH = feetInches(6, 9);
    private static final List<Size> SIZES = List.of(
            new Size(4, feetInches(8, 6)), new Size(5, feetInches(9, 5)), new Size(6, feetInches(10, 4)), new Size(7, feetInches(11, 4)),
            new Size(8, feetInches(12, 3)), new Size(10, feetInches(14, 2)), new Size(12, feetInches(16, 1)));

    private Stepladder() {
    }

    /**
     * The smallest ladder that will do, none from the floor, or beyond any that a customer should climb: above what a person
     * reaches from a 12 ft stepladder a professional is called.
     */
    public static Climb forWorkAt(Length height) {
        double metres = height.metres();
        if (metres <= FLOOR_REACH.metres() + 1e-9) {
            return new Climb(metres, 0, false);
        }
        return SIZES.stream().filter(s -> metres <= s.reach().metres() + 1e-9).findFirst()
                .map(s -> new Climb(metres, s.feet(), false))
                .orElse(new Climb(metres, 0, true));
    }

    private static Length feetInches(int feet, int inches) {
        return Length.ofInches(12 * feet + inches);
    }
}
