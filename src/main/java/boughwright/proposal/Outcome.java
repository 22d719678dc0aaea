package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.brief.BriefFault;
import boughwright.kit.Conflict;
import boughwright.needs.Adjustments;
import boughwright.needs.Needs;
import boughwright.rulebook.Edition;
import java.util.List;

/** What came of asking for a proposal. */
public sealed interface Outcome {

    record Made(Proposal proposal) implements Outcome {
    }

    record NoKitFits(Edition edition, Brief brief, Adjustments adjustments, Needs needs, Conflict conflict, long seed) implements Outcome {
    }

    record BadBrief(List<BriefFault> faults) implements Outcome {
    }
}
