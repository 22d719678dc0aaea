package boughwright.intake;

import java.util.List;
import java.util.Optional;

/**
 * Which heading of a file probably means a canonical column.
 *
 * @param column canonical
 * @param heading as the file has it; empty when none fits
 * @param unit that the heading names, in a column of lengths
 */
public record ColumnGuess(String column, Optional<String> heading, Sureness sureness, Optional<LengthUnit> unit) {

    /** How sure a guess is, most first. */
    public enum Sureness {
        /** The canonical name itself, whatever its capitals, spaces, hyphens and underscores. */
        EXACT,
        /** A term of schema.org or GS1, or a word of the trade that means nothing else here. */
        LIKELY,
        /** A word that often means it; to be looked at. */
        GUESS,
        NONE
    }

    /** One guess for each of the kind's columns, in their order. A heading is given to one column only, where it is surest. */
    public static List<ColumnGuess> of(IntakeFile file, Kind kind) {
        return Names.guesses(file, kind);
    }
}
