package boughwright.house;

import boughwright.rulebook.Growing;
import boughwright.rulebook.NumberInterval;
import boughwright.rulebook.RulebookFault;
import boughwright.rulebook.WrittenFile;
import boughwright.rulebook.WrittenTable;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Turns a DMN file, its cells already checked one by one, into a sheet. What a sheet has no place for is a fault: a column of numbers other
 * than the height, heights measured otherwise than from 3 to 20, true or false as an input, a number that grows from elsewhere than the foot of its row.
 */
final class SheetReader {

    private static final String HEIGHT = "height";

    private final WrittenFile file;
    private final List<RulebookFault> faults;

    private SheetReader(WrittenFile file, List<RulebookFault> faults) {
        this.file = file;
        this.faults = faults;
    }

    /** Empty when something was added to {@code faults}. */
    static Optional<Sheet> read(WrittenFile file, List<RulebookFault> faults) {
        int before = faults.size();
        Sheet sheet = new SheetReader(file, faults).sheet();
        return faults.size() == before ? Optional.of(sheet) : Optional.empty();
    }

    private Sheet sheet() {
        String topic = file.file().replaceFirst("^.*/", "").replaceFirst("\\.dmn$", "");
        return new Sheet(topic, line(file.title()), line(file.about()), file.tables().stream().map(this::grid).toList());
    }

    private Grid grid(WrittenTable table) {
        List<Column> columns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (WrittenTable.Input input : table.inputs()) {
            if (!seen.add(input.name())) {
                fault(table, table.line(), List.of(), Text.of("house.file.twice", input.name()));
            }
            boolean height = input.name().equals(HEIGHT) && input.kind() == WrittenTable.Kind.NUMBER;
            if (height && !input.range().map(NumberInterval::words).equals(Optional.of(Heights.ALLOWED.words()))) {
                fault(table, table.line(), List.of(), Text.of("house.file.heights"));
            } else if (!height && input.kind() != WrittenTable.Kind.TEXT) {
                fault(table, table.line(), List.of(), Text.of("house.file.column", input.name()));
            } else if (!height) {
                columns.add(new Column(input.name(), input.choices()));
            }
        }
        List<Result> results = table.outputs().stream().map(o -> new Result(o.name(), kind(o.kind()), words(o.name()))).toList();
        boolean byHeight = table.inputs().stream().anyMatch(i -> i.name().equals(HEIGHT));
        return new Grid(table.name(), byHeight, columns, results, faults.isEmpty() ? table.rows().stream().map(r -> row(table, r)).toList() : List.of());
    }

    private GridRow row(WrittenTable table, WrittenTable.Row row) {
        Heights heights = Heights.ANY;
        List<List<String>> choices = new ArrayList<>();
        for (int i = 0; i < table.inputs().size(); i++) {
            String cell = row.inputs().get(i).strip();
            WrittenTable.Input input = table.inputs().get(i);
            if (input.kind() == WrittenTable.Kind.NUMBER) {
                heights = cell.equals("-") ? Heights.ANY : Heights.of(table.interval(row, input.name()));
            } else {
                choices.add(cell.equals("-") ? List.of() : WrittenTable.words(cell));
            }
        }
        List<String> results = new ArrayList<>();
        boolean growing = false;
        for (int i = 0; i < row.outputs().size(); i++) {
            String cell = row.outputs().get(i).strip();
            Optional<Growing> grows = Growing.read(cell);
            if (grows.isPresent()) {
                BigDecimal foot = (heights.any() ? Heights.ALLOWED : table.interval(row, HEIGHT)).from();
                if (i > 0 || grows.get().from().compareTo(foot) != 0) {
                    fault(table, row.line(), List.of(row.number()), Text.of("house.file.growing", row.number(), NumberInterval.plain(foot)));
                }
                growing = true;
                results.add(NumberInterval.plain(grows.get().amount()));
            } else {
                results.add(switch (table.outputs().get(i).kind()) {
                    case NUMBER -> NumberInterval.plain(new BigDecimal(cell));
                    case TEXT -> cell.substring(1, cell.length() - 1);
                    case YES_OR_NO -> cell;
                });
            }
        }
        return new GridRow(heights, choices, results, growing, line(table.reason(row)));
    }

    /** Other programs break long texts over several lines; a cell is one. */
    private static String line(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static Result.Kind kind(WrittenTable.Kind kind) {
        return switch (kind) {
            case NUMBER -> Result.Kind.NUMBER;
            case TEXT -> Result.Kind.WORD;
            case YES_OR_NO -> Result.Kind.YES_OR_NO;
        };
    }

    private static List<String> words(String result) {
        return result.equals("rounding") ? SheetWriter.ROUNDINGS : List.of();
    }

    private void fault(WrittenTable table, int line, List<Integer> rows, String message) {
        faults.add(new RulebookFault(file.file(), line, table.name(), rows, message, Optional.empty()));
    }
}
