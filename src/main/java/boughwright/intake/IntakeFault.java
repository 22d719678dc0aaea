package boughwright.intake;

import boughwright.text.Text;

/**
 * One thing to mend in a file that staff brought.
 *
 * @param line of a CSV the line and of an XLSX the row, from 1, its heading counted; of a JSON the product, from 1
 * @param place that line as a word for people: “Line 7”, “Row 7”, “Product 7”
 * @param column canonical, one of {@code CatalogueRows.COLUMNS}; empty when the whole row is at fault
 * @param heading what the file calls the column; empty when the whole row is at fault or the value is a constant of the mapping
 * @param value what stands in the file
 * @param mend what to write instead
 */
public record IntakeFault(int line, String place, String column, String heading, String value, String mend) {

    public String sentence() {
        String where = heading.isEmpty() ? column : heading;
        return where.isEmpty() ? Text.of("intake.fault.row", place, mend) : Text.of("intake.fault", place, where, value, mend);
    }
}
