package boughwright.plan;

import boughwright.needs.Caution;
import boughwright.needs.Climb;
import java.util.List;

/**
 * What the customer follows at home.
 *
 * @param steps in the order of the trade: lights, topper, ribbon, florals, ornaments, accents
 * @param minutes of all steps together
 * @param ladder what to stand on, as a sentence
 */
public record Plan(List<Step> steps, int minutes, Climb climb, String ladder, List<Caution> cautions) {

    public Plan {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }
}
