package boughwright.intake;

/**
 * Something that was understood in another way than it stands in the file, told once for all rows in which it happened.
 *
 * @param column canonical
 * @param heading what the file calls the column; empty for a constant of the mapping
 * @param rows in how many it happened
 * @param line of the first, as in {@link IntakeFault}
 * @param before what stands there
 * @param after how it was read
 * @param sentence all of that, for people
 */
public record Note(String column, String heading, int rows, int line, String before, String after, String sentence) {
}
