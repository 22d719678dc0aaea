package boughwright.intake;

import java.util.Map;
import java.util.Optional;

/**
 * A row as it stands in a file.
 *
 * @param line as in {@link IntakeFault}
 * @param cells under the file's columns; may be fewer or, blank ones aside, more
 * @param marks what is special of a cell, by its index
 * @param trouble with the row as a whole, which then cannot be read
 */
record SourceRow(int line, String[] cells, Map<Integer, Mark> marks, Optional<Trouble> trouble) {

    /** What a spreadsheet holds in place of a plain value. */
    enum Mark {
        FORMULA, DATE, ERROR
    }

    /**
     * @param column its index, or −1 for the whole row
     * @param value what stands there
     * @param mend what to do
     */
    record Trouble(int column, String value, String mend) {
    }

    static SourceRow of(int line, String[] cells) {
        return new SourceRow(line, cells, Map.of(), Optional.empty());
    }

    static SourceRow troubled(int line, String[] cells, Trouble trouble) {
        return new SourceRow(line, cells, Map.of(), Optional.of(trouble));
    }

    boolean blank() {
        for (String cell : cells) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return trouble.isEmpty();
    }

    /** The cell, and an empty one where the row ends before it. */
    String cell(int index) {
        return index < cells.length ? cells[index] : "";
    }
}
