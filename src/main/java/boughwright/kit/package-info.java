/**
 * The kit: which products, how many packs. Input: needs, catalogue, stock, owned pieces, budget, wishes. Output: a
 * {@link boughwright.kit.KitOutcome}: the best kit with its score and proven bound, or the wishes that clash.
 *
 * <p>The solver is known only here. Does not belong here: how many of a thing a tree needs (rulebook), or where it goes (layout).
 */
package boughwright.kit;
