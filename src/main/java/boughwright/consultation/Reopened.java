package boughwright.consultation;

import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;

/**
 * A kept consultation worked out again.
 *
 * @param saved the newest revision, which is what {@code outcome} gives
 * @param designer of the shop under the edition that the consultation was made with
 * @param moved whether catalogue or stock have changed since it was kept, so that a new revision had to be made
 */
public record Reopened(Saved saved, Designer designer, Outcome outcome, boolean moved) {
}
