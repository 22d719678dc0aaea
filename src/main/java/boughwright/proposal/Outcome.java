package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.brief.BriefFault;
import boughwright.kit.Conflict;
import boughwright.kit.Wish;
import boughwright.needs.Adjustments;
import boughwright.needs.Needs;
import boughwright.rulebook.Edition;
import java.util.List;

/** What came of asking for a proposal. */
public sealed interface Outcome {

    record Made(Proposal proposal) implements Outcome {
    }

    /** @param wishes all that were asked for, in their order of importance */
    record NoKitFits(Edition edition, Brief brief, Adjustments adjustments, Needs needs, List<Wish> wishes, Conflict conflict, long seed)
            implements Outcome {

        public NoKitFits {
            wishes = List.copyOf(wishes);
        }
    }

    record BadBrief(List<BriefFault> faults) implements Outcome {
    }
}
