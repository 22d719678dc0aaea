package boughwright.people;

import java.time.LocalDateTime;

/**
 * Something that was done with people or tablets.
 *
 * @param madeAt UTC
 * @param words whom or which tablet it was about
 */
public record PeopleEvent(LocalDateTime madeAt, String author, Kind kind, String words) {

    public enum Kind { FIRST, ADDED, ROLE, RESET, OFF, ON, ENROLLED, REVOKED, LOCK }
}
