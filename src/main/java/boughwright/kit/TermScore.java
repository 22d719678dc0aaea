package boughwright.kit;

/**
 * What one term gave a kit.
 *
 * @param value 0 (poor) to 1 (as good as can be); the two money terms may fall below 0, and terms that count go beyond 1
 * @param weight what the house gives for a value of 1
 * @param points value × weight
 */
public record TermScore(Term term, double value, double weight, double points) {
}
