package boughwright.rulebook;

import boughwright.text.Text;
import java.util.Comparator;
import java.util.List;

/**
 * One thing to mend in a rulebook before it can be used, told so that the person who wrote the file can find it.
 *
 * @param file    path of the file within the rulebook, as it was given
 * @param line    line in that file, counted from 1; 0 when the fault is about the file as a whole
 * @param part    name of the rule or table; empty when the fault is about the file as a whole
 * @param rows    rows of the table, counted from 1, ascending; empty for a rule
 * @param message one or two plain sentences
 */
public record RulebookFault(String file, int line, String part, List<Integer> rows, String message) {

    /** By file, then line, then part, then message: the order in which faults are always listed. */
    static final Comparator<RulebookFault> IN_FILE_ORDER = Comparator.comparing(RulebookFault::file)
            .thenComparingInt(RulebookFault::line)
            .thenComparing(RulebookFault::part)
            .thenComparing(RulebookFault::message);

    public RulebookFault {
        rows = rows.stream().sorted().distinct().toList();
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
