package boughwright.counter;

import java.time.LocalDateTime;

/**
 * What one of the staff has written down in a consultation.
 *
 * @param madeAt UTC
 */
public record Note(int number, LocalDateTime madeAt, String author, String words) {
}
