package boughwright.publishing;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * That an edition goes live on a day. Of all publications that have begun and are not withdrawn, the one that begins last is live, and of
 * those of one day the one that was made last.
 *
 * @param madeAt UTC
 */
public record Publication(int id, int edition, LocalDate startsOn, LocalDateTime madeAt, String author, boolean withdrawn) {
}
