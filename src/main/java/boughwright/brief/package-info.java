/**
 * The brief: what the interview learned.
 *
 * <p>Input: JSON text and the shop's choices. Output: a complete {@link boughwright.brief.Brief} in SI, or every fault with its
 * field, value and mend. Does not belong here: what follows from a brief (rulebook), and any screen.
 */
package boughwright.brief;
