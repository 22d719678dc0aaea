package boughwright.needs;

/**
 * Why a need, a demand or a caution is there.
 *
 * @param rule the table's or the rule's name
 * @param row the table's row as {@code row 4}, or the rule's id
 * @param text one sentence that a customer understands
 */
public record Reason(String rule, String row, String text) {
}
