package boughwright.consultation;

import boughwright.proposal.Outcome;

/**
 * A kept consultation worked out again.
 *
 * @param saved the newest revision, which is what {@code outcome} gives
 * @param moved whether catalogue, stock or house rules have changed since it was kept, so that a new revision had to be made
 */
public record Reopened(Saved saved, Outcome outcome, boolean moved) {
}
