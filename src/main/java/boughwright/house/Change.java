package boughwright.house;

import boughwright.text.Text;

/**
 * One difference between two editions.
 *
 * @param page id of the page
 * @param title of that page
 * @param table name of the table as staff see it; empty outside of sheets
 * @param row where it stands now, or stood before it was taken out; from 1, 0 outside of tables
 * @param column heading or name of the number; for a whole row empty
 * @param before empty for what is new
 * @param after empty for what has gone
 */
public record Change(String page, String title, String table, int row, String column, String before, String after) {

    /** {@code Rolls of body ribbon, row 4, Rolls: 2.55 → 3}. */
    public String sentence() {
        String where = Headings.where(title, table, row, column);
        return before.isEmpty() ? Text.of("house.change.new", where, after) : after.isEmpty() ? Text.of("house.change.gone", where, before)
                : Text.of("house.change", where, before, after);
    }
}
