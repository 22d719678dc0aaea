package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.kit.KitRequest;
import boughwright.kit.Wishes;
import boughwright.needs.Adjustments;

/** What a brief asks of the solver, without the steps after it. */
public final class KitQuestions {

    private KitQuestions() {
    }

    public static KitRequest request(Brief brief, Catalogue shelf, Adjustments hand) {
        return new AskedFor(ProposalFixture.rulebook(), shelf, brief, hand).all();
    }

    public static Wishes wishes(Brief brief, Catalogue shelf, Adjustments hand) {
        return new AskedFor(ProposalFixture.rulebook(), shelf, brief, hand);
    }
}
