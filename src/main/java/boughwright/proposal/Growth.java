package boughwright.proposal;

import boughwright.measure.Money;
import java.util.List;

/**
 * A scheme that grows over the years.
 *
 * @param years at least one; each is complete in itself and builds on what was bought before
 * @param total what all years cost together
 */
public record Growth(List<Year> years, Money total) {

    public Growth {
        years = List.copyOf(years);
    }

    /**
     * @param number from 1
     * @param proposal of that year, with what was bought before as the customer's own
     * @param joins styles that come new, or of which more are bought, a few words each
     * @param mayBeGone products that were made for one of this season's looks and may not be sold in the next
     */
    public record Year(int number, Proposal proposal, List<String> joins, List<String> mayBeGone) {

        public Year {
            joins = List.copyOf(joins);
            mayBeGone = List.copyOf(mayBeGone);
        }

        public Money spend() {
            return proposal.kit().total();
        }
    }
}
