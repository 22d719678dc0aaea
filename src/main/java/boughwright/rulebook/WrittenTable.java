package boughwright.rulebook;

import java.math.BigDecimal;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * A decision table as it is written in its file: what staff see and edit, and where each row stands.
 *
 * @param file    path of the file within the rulebook
 * @param line    line of the table's decision, counted from 1
 * @param name    name of the decision, unique within the file
 * @param inputs  columns that choose a row, at least one
 * @param outputs columns that a row gives, at least one
 * @param notes   names of the annotation columns
 * @param rows    in the order of the file
 */
public record WrittenTable(String file, int line, String name, List<Input> inputs, List<Output> outputs, List<String> notes, List<Row> rows) {

    /** The annotation column that holds the sentence for the customer. */
    static final String REASON = "reason";

    /** What a column holds. */
    public enum Kind { NUMBER, TEXT, YES_OR_NO }

    /**
     * A column that chooses a row.
     *
     * @param name    the input's name
     * @param range   allowed numbers; present exactly for a {@link Kind#NUMBER}
     * @param choices allowed texts in the order of the file; not empty exactly for a {@link Kind#TEXT}
     */
    public record Input(String name, Kind kind, Optional<NumberInterval> range, List<String> choices) {

        /** Whether the column's allowed values include {@code value}; never for null or another kind of thing. */
        boolean allows(Object value) {
            return switch (kind) {
                case NUMBER -> value instanceof Number number && Double.isFinite(number.doubleValue())
                        && range.orElseThrow().contains(new BigDecimal(number.toString()));
                case TEXT -> value instanceof String text && choices.contains(text);
                case YES_OR_NO -> value instanceof Boolean;
            };
        }

        /** The allowed values in words that follow "allows a " and the column's name. */
        String allowed() {
            return switch (kind) {
                case NUMBER -> range.orElseThrow().words();
                case TEXT -> "among " + choices;
                case YES_OR_NO -> "of true or false";
            };
        }
    }

    /** A column that a row gives. A table's only output has the table's name. */
    public record Output(String name, Kind kind) {
    }

    /**
     * One row: its cells as written, column by column.
     *
     * @param number counted from 1
     * @param line   counted from 1
     */
    public record Row(int number, int line, List<String> inputs, List<String> outputs, List<String> notes) {
    }

    /** The words of an input cell such as {@code "corner", "wall"}; none when it holds something else. */
    public static List<String> words(String cell) {
        return TableReader.texts(cell).orElse(List.of());
    }

    /** The sentence of the row's "reason" column; empty when the table has none. */
    public String reason(Row row) {
        int column = notes.indexOf(REASON);
        return column < 0 || column >= row.notes().size() ? "" : row.notes().get(column);
    }

    /**
     * The numbers for which a row's cell in a number column holds.
     *
     * @throws NoSuchElementException when there is no number column of that name, or the cell is not a range
     */
    public NumberInterval interval(Row row, String input) {
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).name().equals(input)) {
                return NumberInterval.read(row.inputs().get(i), inputs.get(i).range().orElseThrow()).orElseThrow();
            }
        }
        throw new NoSuchElementException("table " + name + " has no input " + input);
    }
}
