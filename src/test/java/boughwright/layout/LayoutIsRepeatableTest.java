package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class LayoutIsRepeatableTest {

    private static Layout again(Proposal p, long seed) {
        return Dressing.of(p.brief(), p.needs(), p.kit(), ProposalFixture.season().catalogue(), seed);
    }

    @Test
    void the_same_kit_and_seed_give_the_same_layout() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(again(p, p.seed())).as(SeededProposals.of(p)).isEqualTo(p.layout());
        }
    }

    @Test
    void another_seed_varies_the_runs_and_nothing_else_of_the_kit() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\"}}");
        long kinds = LongStream.rangeClosed(1, 20).mapToObj(seed -> again(p, seed).ribbonRuns().stream().map(r -> r.bow() + r.smallLoops()).toList())
                .distinct().count();
        assertThat(kinds).isGreaterThan(5);
        assertThat(again(p, 2).pieces()).isEqualTo(again(p, 3).pieces());
    }
}
