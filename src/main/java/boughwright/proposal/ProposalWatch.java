package boughwright.proposal;

/** Is told of each proposal that was worked out, for measurements; what it does changes no proposal. Safe for several threads. */
@FunctionalInterface
public interface ProposalWatch {

    ProposalWatch NONE = (nanos, outcome) -> { };

    /** @param nanos how long it took */
    void proposed(long nanos, Outcome outcome);
}
