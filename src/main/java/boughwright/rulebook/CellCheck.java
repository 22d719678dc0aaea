package boughwright.rulebook;

import boughwright.text.Text;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Checks every cell of a table by itself, before the engine reads the table as a whole: on a cell that it cannot read, the engine fails
 * without saying which one it was.
 *
 * <p>Tables hold data, never code. An input cell is a range, a comparison, a choice of allowed words, or "-". An output cell is a number,
 * a quoted word, true or false, or a number that grows with the surface of the tree from a height on; see {@link Growing}.
 */
final class CellCheck {

    /** Far longer than any sentence for a customer. */
    static final int LONGEST = 1_000;

    /** Unknown words that are told of one cell. */
    private static final int MOST_WORDS = 5;

    private static final Pattern NUMBER = Pattern.compile("\\d{1,7}(?:\\.\\d{1,9})?");
    private static final Pattern WORD = Pattern.compile("\"[^\"\\\\]{1,60}\"");

    private final List<RulebookFault> faults;

    CellCheck(List<RulebookFault> faults) {
        this.faults = faults;
    }

    void check(WrittenTable table) {
        for (var row : table.rows()) {
            if (faults.size() >= RulebookFault.ENOUGH) {
                return;
            }
            if (row.inputs().size() != table.inputs().size() || row.outputs().size() != table.outputs().size()) {
                fault(table, row, Text.of("rulebook.cell.count", table.inputs().size(), table.outputs().size(),
                        row.inputs().size(), row.outputs().size()));
                continue;
            }
            if (Stream.of(row.inputs(), row.outputs(), row.notes()).flatMap(List::stream).anyMatch(cell -> cell.length() > LONGEST)) {
                fault(table, row, Text.of("rulebook.cell.long", LONGEST));
                continue;
            }
            for (int i = 0; i < row.inputs().size(); i++) {
                checkInput(table, row, table.inputs().get(i), row.inputs().get(i));
            }
            for (int i = 0; i < row.outputs().size(); i++) {
                checkOutput(table, row, table.outputs().get(i), row.outputs().get(i));
            }
        }
    }

    private void checkInput(WrittenTable table, WrittenTable.Row row, WrittenTable.Input input, String cell) {
        if (cell.strip().equals("-")) {
            return;
        }
        switch (input.kind()) {
            case NUMBER -> input.range().ifPresent(allowed -> NumberInterval.read(cell, allowed).ifPresentOrElse(
                    interval -> {
                        if (!allowed.covers(interval)) {
                            fault(table, row, Text.of("rulebook.cell.beyond", input.name(), allowed.words(), cell));
                        }
                    },
                    () -> fault(table, row, Text.of("rulebook.cell.no-range", cell, input.name()))));
            case TEXT -> {
                var texts = TableReader.texts(cell);
                if (texts.isEmpty()) {
                    fault(table, row, Text.of("rulebook.cell.no-list", cell, input.name()));
                } else if (!input.choices().isEmpty()) {
                    texts.get().stream().filter(text -> !input.choices().contains(text)).limit(MOST_WORDS).forEach(text ->
                            fault(table, row, Text.of("rulebook.cell.no-choice", text, input.name(), String.join(", ", input.choices()))));
                }
            }
            case YES_OR_NO -> {
                if (!Set.of("true", "false").contains(cell.strip())) {
                    fault(table, row, Text.of("rulebook.cell.no-flag", cell, input.name()));
                }
            }
        }
    }

    private void checkOutput(WrittenTable table, WrittenTable.Row row, WrittenTable.Output output, String cell) {
        if (cell.isBlank()) {
            fault(table, row, Text.of("rulebook.cell.empty", output.name()));
            return;
        }
        var text = cell.strip();
        boolean fits = switch (output.kind()) {
            case NUMBER -> NUMBER.matcher(text).matches() || Growing.read(text).isPresent();
            case TEXT -> WORD.matcher(text).matches();
            case YES_OR_NO -> Set.of("true", "false").contains(text);
        };
        if (!fits) {
            fault(table, row, Text.of("rulebook.cell." + switch (output.kind()) {
                case NUMBER -> "no-number";
                case TEXT -> "no-word";
                case YES_OR_NO -> "no-yes";
            }, shortened(cell), output.name()));
        }
    }

    private static String shortened(String cell) {
        return cell.length() <= 80 ? cell : cell.substring(0, 77) + "…";
    }

    private void fault(WrittenTable table, WrittenTable.Row row, String what) {
        faults.add(new RulebookFault(table.file(), row.line(), table.name(), List.of(row.number()), Text.of("rulebook.row", row.number(), what)));
    }
}
