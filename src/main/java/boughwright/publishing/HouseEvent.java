package boughwright.publishing;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Something that somebody did with the house rules.
 *
 * @param madeAt UTC
 * @param edition that it was done with
 * @param words one line for each thing that was changed
 */
public record HouseEvent(LocalDateTime madeAt, String author, Kind kind, Optional<Integer> edition, String words) {

    public enum Kind { KEPT, PUBLISHED, ROLLED_BACK, WITHDRAWN, RELOADED, IMPORTED, REFERENCE, PASSWORD }
}
