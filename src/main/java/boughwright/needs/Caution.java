package boughwright.needs;

/**
 * Something to take care of. It never replaces the makers' instructions, local codes or qualified people.
 *
 * @param id the rule's
 * @param source where the advice comes from
 */
public record Caution(String id, String text, String source) {
}
