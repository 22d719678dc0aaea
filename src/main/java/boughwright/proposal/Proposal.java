package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.kit.Kit;
import boughwright.layout.Layout;
import boughwright.needs.Adjustments;
import boughwright.needs.Needs;
import boughwright.plan.Plan;
import boughwright.rulebook.Edition;

/** Everything that follows from one brief: each step's own output, unchanged. */
public record Proposal(Edition edition, Brief brief, Adjustments adjustments, Needs needs, Kit kit, Layout layout, Plan plan, long seed) {
}
