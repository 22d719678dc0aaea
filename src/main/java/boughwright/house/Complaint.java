package boughwright.house;

/**
 * Something to mend in a draft, or to think about, told so that whoever typed it finds it.
 *
 * @param weight a fault keeps the draft from going live; a doubt must be acknowledged
 * @param page id of the page on which it stands: a sheet's topic, the word of a theme, {@code looks}, {@code palettes}
 * @param title of that page
 * @param table name of the table as staff see it; empty outside of sheets
 * @param row counted from 1; 0 when it is about no single row
 * @param column its heading, or the name of the number; empty when it is about the whole
 * @param message what is wrong and how to mend it
 */
public record Complaint(Weight weight, String page, String title, String table, int row, String column, String message) {

    public enum Weight { FAULT, DOUBT }

    /** Where, and what: {@code Rolls of body ribbon, row 6, up to: …}. */
    public String sentence() {
        String where = Headings.where(title.isBlank() ? page : title, table, row, column);
        return where + ": " + message;
    }

    public boolean fault() {
        return weight == Weight.FAULT;
    }
}
