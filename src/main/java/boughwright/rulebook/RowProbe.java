package boughwright.rulebook;

import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Asks every row of a table for its answer at the edges and in the middle of what it covers, and checks that the row itself answers and
 * that each output is of its column's kind: the engine lets a text pass where a number is declared.
 */
final class RowProbe {

    private final TableEngine engine;
    private final List<RulebookFault> faults;

    RowProbe(TableEngine engine, List<RulebookFault> faults) {
        this.engine = engine;
        this.faults = faults;
    }

    void check(WrittenTable table) {
        table.rows().forEach(row -> samples(table, row).forEach(sample -> check(table, row, sample)));
    }

    private void check(WrittenTable table, WrittenTable.Row row, Map<String, Object> sample) {
        var evaluation = engine.evaluate(table, sample);
        var at = sample.entrySet().stream().map(input -> input.getKey() + " " + shown(input.getValue())).collect(Collectors.joining(Text.of("rulebook.probe.and")));
        if (!evaluation.rows().equals(List.of(row.number()))) {
            fault(table, row, Text.of("rulebook.probe.alone", at));
        } else if (!evaluation.problems().isEmpty()) {
            fault(table, row, Text.of("rulebook.probe.none", at, evaluation.problems().get(0)));
        } else {
            for (var output : table.outputs()) {
                var value = evaluation.values().get(output.name());
                if (!fits(output.kind(), value)) {
                    fault(table, row, Text.of("rulebook.probe.kind", value == null ? Text.of("rulebook.probe.nothing") : shown(value),
                            output.name(), wanted(output.kind())));
                }
            }
        }
    }

    /** Three points of the row, fewer when they coincide: all cells at their first value, in their middle, at their last. */
    private static Iterable<Map<String, Object>> samples(WrittenTable table, WrittenTable.Row row) {
        var samples = new LinkedHashSet<Map<String, Object>>();
        for (int point = 0; point < 3; point++) {
            var sample = new LinkedHashMap<String, Object>();
            for (int i = 0; i < table.inputs().size(); i++) {
                sample.put(table.inputs().get(i).name(), sample(table.inputs().get(i), row.inputs().get(i), point));
            }
            samples.add(sample);
        }
        return samples;
    }

    private static Object sample(WrittenTable.Input input, String cell, int point) {
        return switch (input.kind()) {
            case NUMBER -> {
                var range = NumberInterval.read(cell, input.range().orElseThrow()).orElseThrow();
                yield point == 0 && range.fromIncluded() ? range.from() : point == 2 && range.toIncluded() ? range.to() : range.middle();
            }
            case TEXT -> pick(TableReader.texts(cell).orElse(input.choices()), point);
            case YES_OR_NO -> cell.strip().equals("-") ? point > 0 : Boolean.valueOf(cell.strip());
        };
    }

    private static String pick(List<String> texts, int point) {
        return texts.get(point * (texts.size() - 1) / 2);
    }

    private static boolean fits(WrittenTable.Kind kind, Object value) {
        return switch (kind) {
            case NUMBER -> value instanceof BigDecimal;
            case TEXT -> value instanceof String;
            case YES_OR_NO -> value instanceof Boolean;
        };
    }

    private static String wanted(WrittenTable.Kind kind) {
        return Text.of(switch (kind) {
            case NUMBER -> "rulebook.kind.number";
            case TEXT -> "rulebook.kind.text";
            case YES_OR_NO -> "rulebook.kind.yes-or-no";
        });
    }

    private static String shown(Object value) {
        if (value instanceof BigDecimal number) {
            return NumberInterval.plain(number);
        }
        return value instanceof String text ? "\"" + text + "\"" : String.valueOf(value);
    }

    private void fault(WrittenTable table, WrittenTable.Row row, String what) {
        faults.add(new RulebookFault(table.file(), row.line(), table.name(), List.of(row.number()), Text.of("rulebook.row", row.number(), what)));
    }
}
