package boughwright.palette;

import boughwright.colour.Deficiency;
import boughwright.colour.Match;

/**
 * Two colours that are plainly two for most eyes and hardly so for some.
 *
 * @param sight whose eyes
 * @param pair with the difference that most eyes see
 * @param seen CIEDE2000 between the two as those eyes see them
 */
public record Confusion(Deficiency sight, Pair pair, double seen) {

    /** Whether they pass for one; else they can be told apart with an effort. */
    public boolean alike() {
        return Match.of(seen) == Match.ALIKE;
    }
}
