package boughwright.rulebook;

import boughwright.text.Text;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.kie.dmn.feel.FEEL;
import org.kie.dmn.feel.lang.types.BuiltInType;

/**
 * Checks every cell of a table by itself, before the engine reads the table as a whole: on a cell that it cannot read, the engine fails
 * without saying which one it was.
 *
 * <p>An input cell is a range, a comparison, a choice of allowed words, or "-". An output cell is a value or a small sum over the
 * table's inputs; loops, functions of one's own and calls into Java are refused, since tables are edited by people and read by the server.
 */
final class CellCheck {

    private static final Set<String> WORDS = Set.of("if", "then", "else", "and", "or", "true", "false", "min", "max", "floor", "ceiling", "abs",
            "sqrt", "round", "up", "down", "half");
    private static final Pattern TEXT = Pattern.compile("\"[^\"\\\\]*\"");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\d_]*");
    private static final Pattern FOREIGN = Pattern.compile("[^\\p{L}\\d_\\s+\\-*/().,<>=]");

    private final FEEL feel = FEEL.newInstance(EngineLoader.CLASSES, List.of());
    private final List<RulebookFault> faults;
    private boolean misread;

    CellCheck(List<RulebookFault> faults) {
        this.faults = faults;
        feel.addListener(event -> misread = true);
    }

    void check(WrittenTable table) {
        for (var row : table.rows()) {
            if (row.inputs().size() != table.inputs().size() || row.outputs().size() != table.outputs().size()) {
                fault(table, row, Text.of("rulebook.cell.count", table.inputs().size(), table.outputs().size(),
                        row.inputs().size(), row.outputs().size()));
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
                    texts.get().stream().filter(text -> !input.choices().contains(text)).forEach(text ->
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
        var bare = TEXT.matcher(cell).replaceAll("");
        var known = new HashSet<>(WORDS);
        table.inputs().forEach(input -> known.addAll(words(input.name())));
        var foreign = FOREIGN.matcher(bare);
        if (foreign.find()) {
            fault(table, row, Text.of("rulebook.cell.sign", cell, output.name(), foreign.group()));
            return;
        }
        var unknown = words(bare).stream().filter(word -> !known.contains(word)).findFirst();
        if (unknown.isPresent()) {
            fault(table, row, Text.of("rulebook.cell.word", cell, output.name(), unknown.get()));
            return;
        }
        if (!compiles(table, cell)) {
            fault(table, row, Text.of("rulebook.cell.unreadable", cell, output.name()));
        }
    }

    private boolean compiles(WrittenTable table, String cell) {
        misread = false;
        var context = feel.newCompilerContext();
        table.inputs().forEach(input -> context.addInputVariableType(input.name(), switch (input.kind()) {
            case NUMBER -> BuiltInType.NUMBER;
            case TEXT -> BuiltInType.STRING;
            case YES_OR_NO -> BuiltInType.BOOLEAN;
        }));
        try {
            feel.compile(cell, context);
            return !misread;
        } catch (RuntimeException unreadable) {
            // The engine's reader breaks on some half-written sums instead of reporting them.
            return false;
        }
    }

    private static List<String> words(String text) {
        return WORD.matcher(text).results().map(result -> result.group()).toList();
    }

    private void fault(WrittenTable table, WrittenTable.Row row, String what) {
        faults.add(new RulebookFault(table.file(), row.line(), table.name(), List.of(row.number()), Text.of("rulebook.row", row.number(), what)));
    }
}
