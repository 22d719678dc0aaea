package boughwright.shelf;

import java.time.LocalDateTime;

/**
 * Something that was done to the shelf.
 *
 * @param id rising
 * @param madeAt in UTC
 * @param words the name of a file or of a product; may be empty
 * @param added how many products are new by it
 * @param changed how many have other cells
 * @param gone how many have left the range
 * @param undone whether it has been taken back
 */
public record ShelfEvent(int id, LocalDateTime madeAt, String author, Kind kind, String words, int added, int changed, int gone, boolean undone) {

    /** FOLDER is the file that the kiosk was started with; COUNTER is what customers have taken home, or what was not where it should be. */
    public enum Kind { FOLDER, WHOLE, STOCK, PRICE, EDIT, BULK, TILL, COUNTER, UNDO }
}
