/**
 * All steps of one proposal in order, and the proposal as JSON. Input: a brief and what hands changed. Output: an
 * {@link boughwright.proposal.Outcome}.
 *
 * <p>Holds no rule and no arithmetic of its own. Does not belong here: saving (consultation) and showing (ui, document).
 */
package boughwright.proposal;
