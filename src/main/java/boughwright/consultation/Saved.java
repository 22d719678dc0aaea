package boughwright.consultation;

import boughwright.needs.Adjustments;
import boughwright.text.Language;

/**
 * One saved state of a consultation.
 *
 * @param code the same through all revisions
 * @param revision from 1
 * @param brief the customer's JSON
 * @param fits whether a kit was found
 * @param proposal the proposal as JSON, or the conflict
 * @param edition id of the edition of the house rules that it was made with
 * @param language that the proposal's sentences are in
 */
public record Saved(String code, int revision, String brief, Adjustments adjustments, long seed, boolean fits, String proposal, String edition,
        Language language) {

    /** The code as it is shown and said: {@code KELP 4 MOSS}. */
    public String spoken() {
        return Codes.spoken(code);
    }
}
