package boughwright.kit;

/**
 * What one term gave a kit.
 *
 * @param value 0 (poor) to 1 (as good as can be); the two money terms may fall below 0, and terms that count go beyond 1
 * @param points value × the term's weight
 */
public record TermScore(Term term, double value, double points) {
}
