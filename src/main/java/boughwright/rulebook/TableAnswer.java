package boughwright.rulebook;

import java.math.BigDecimal;
import java.util.Map;

/**
 * What a table says about some inputs, and which of its rows says so.
 *
 * @param file   path of the table's file within the rulebook
 * @param table  name of the table
 * @param row    the row that answered, counted from 1
 * @param reason the row's sentence for the customer; empty when the table has no "reason" column
 * @param values the row's outputs by name, as {@link BigDecimal}, {@link String} or {@link Boolean}; a table's only output has the table's name
 */
public record TableAnswer(String file, String table, int row, String reason, Map<String, Object> values) {

    public TableAnswer {
        values = Map.copyOf(values);
    }

    /** The number of a table with a single output. */
    public BigDecimal number() {
        return number(table);
    }

    /** The number in the output column of that name. */
    public BigDecimal number(String output) {
        return value(output, BigDecimal.class);
    }

    /** The text in the output column of that name. */
    public String text(String output) {
        return value(output, String.class);
    }

    /** The truth value in the output column of that name. */
    public boolean flag(String output) {
        return value(output, Boolean.class);
    }

    private <T> T value(String output, Class<T> kind) {
        var value = values.get(output);
        if (!kind.isInstance(value)) {
            throw new IllegalArgumentException("table " + table + " of " + file + " gives no " + kind.getSimpleName() + " called " + output);
        }
        return kind.cast(value);
    }
}
