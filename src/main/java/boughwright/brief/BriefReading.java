package boughwright.brief;

import java.util.List;

/** What came of reading a brief: the brief, or every fault in it. */
public sealed interface BriefReading {

    record Read(Brief brief) implements BriefReading {
    }

    /** @param faults at least one, in the order in which the fields of a brief are read: tree, room, household, then the wishes */
    record Faulty(List<BriefFault> faults) implements BriefReading {
    }
}
