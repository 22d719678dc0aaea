package boughwright.layout;

import boughwright.brief.Word;

/**
 * Something that was moved to where it cannot well be.
 *
 * @param id of what was moved
 * @param other what it clashes with; empty when {@code kind} is {@link Kind#TOO_HEAVY}
 */
public record Clash(String id, String other, Kind kind) {

    /** Why. */
    public enum Kind implements Word { OVERLAP, RUN_ACROSS, TOO_HEAVY }
}
