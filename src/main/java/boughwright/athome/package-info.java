/**
 * What the customer takes home on a phone. Input: a {@link boughwright.proposal.Proposal}. Output: one page that shows a step at a time
 * and needs nothing else once it is loaded, and the scene that a browser turns in three dimensions.
 *
 * <p>Does not belong here: how a piece is drawn, the words of the steps, addresses and who may see them.
 */
package boughwright.athome;
