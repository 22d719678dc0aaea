/**
 * Needs: what the tree has to carry, with the reason of each number, and what the house asks of the kit.
 *
 * <p>These are the words in which the rulebook answers and in which kit, layout and plan read. Plain values only: how they come
 * about is the rulebook's, which product fills them the kit's.
 */
package boughwright.needs;
