package boughwright.rulebook;

import boughwright.text.Text;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * One thing to mend in a rulebook before it can be used, told so that the person who wrote the file can find it.
 *
 * @param file    path of the file within the rulebook, as it was given
 * @param line    line in that file, counted from 1; 0 when the fault is about the file as a whole
 * @param part    name of the rule or table; empty when the fault is about the file as a whole
 * @param rows    rows of the table, counted from 1, ascending; empty for a rule
 * @param message one or two plain sentences
 * @param box present for a gap or an overlap
 */
public record RulebookFault(String file, int line, String part, List<Integer> rows, String message, Optional<Box> box) {

    /**
     * Inputs that no row of a table answers, or more than one.
     *
     * @param gap true when no row answers, false when several do
     * @param numbers by column, the numbers that are meant
     * @param words by column, the words that are meant; a column in neither is meant with all its values
     */
    public record Box(boolean gap, SortedMap<String, NumberInterval> numbers, SortedMap<String, List<String>> words) {
    }

    /** More than anybody mends at once; a file with more is not searched to its end. */
    static final int ENOUGH = 500;

    /** By file, then line, then part, then message: the order in which faults are always listed. */
    static final Comparator<RulebookFault> IN_FILE_ORDER = Comparator.comparing(RulebookFault::file)
            .thenComparingInt(RulebookFault::line)
            .thenComparing(RulebookFault::part)
            .thenComparing(RulebookFault::message);

    public RulebookFault {
        rows = rows.stream().sorted().distinct().toList();
    }

    RulebookFault(String file, int line, String part, List<Integer> rows, String message) {
        this(file, line, part, rows, message, Optional.empty());
    }

    /** Where and what, in one sentence. */
    public String sentence() {
        if (line == 0) {
            return Text.of("rulebook.fault", file, message);
        }
        return part.isEmpty() ? Text.of("rulebook.fault.line", file, String.valueOf(line), message)
                : Text.of("rulebook.fault.part", file, String.valueOf(line), part, message);
    }

    static RulebookFault ofFile(String file, int line, String message) {
        return new RulebookFault(file, line, "", List.of(), message);
    }

    static RulebookFault ofRule(String file, int line, String rule, String message) {
        return new RulebookFault(file, line, rule, List.of(), message);
    }
}
