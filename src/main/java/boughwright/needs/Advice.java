package boughwright.needs;

/**
 * What a rule concludes that somebody should take care of; it becomes a {@link Caution} under the rule's id.
 *
 * @param source where the advice comes from
 */
public record Advice(String text, String source) {
}
