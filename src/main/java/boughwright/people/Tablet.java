package boughwright.people;

import java.time.LocalDateTime;

/**
 * A tablet on which a short PIN is enough.
 *
 * @param enrolledAt UTC
 * @param seenAt UTC, to the day
 */
public record Tablet(int id, String name, LocalDateTime enrolledAt, String enrolledBy, LocalDateTime seenAt) {
}
