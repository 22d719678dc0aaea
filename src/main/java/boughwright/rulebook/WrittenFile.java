package boughwright.rulebook;

import java.util.List;

/**
 * The decision tables of one DMN file as they are written, none of them asked yet.
 *
 * @param file path within the rulebook, such as {@code sizing/body-ribbon.dmn}
 * @param title the name that the file gives itself
 * @param about what the file says of itself, may be empty
 */
public record WrittenFile(String file, String title, String about, List<WrittenTable> tables) {
}
