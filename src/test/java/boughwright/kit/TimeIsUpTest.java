package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.needs.Adjustments;
import boughwright.proposal.KitQuestions;
import boughwright.proposal.ProposalFixture;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** At the limit there is the best kit so far with its true gap, or a plain word that there is none yet; never a false "nothing fits". */
class TimeIsUpTest {

    private static final KitRequest LARGE = KitQuestions.request(
            ProposalFixture.brief("{\"tree\":{\"height\":\"12 ft\",\"fullness\":\"full\",\"seenFrom\":\"round\"},\"abundance\":\"lavish\",\"budget\":\"2400.00\"}"),
            RandomShelf.of(3_000, 5), Adjustments.NONE);

    @Test
    void however_short_the_limit_nothing_false_is_said() {
        KitSolver solver = ProposalFixture.solver();
        double best = solver.best(LARGE, Patience.usual()).orElseThrow().score();
        for (int millis : new int[] {1, 10, 20, 40, 80, 160, 320}) {
            try {
                Optional<Kit> kit = solver.best(LARGE, Patience.of(Duration.ofMillis(millis)));
                assertThat(kit).as("a kit exists, whatever the limit of %s ms", millis).isPresent();
                assertThat(new KitAudit(LARGE, kit.get().lines()).faults()).isEmpty();
                assertThat(kit.get().score()).isLessThanOrEqualTo(best + 1e-6);
                assertThat(kit.get().bound()).as("the bound holds for the best kit too").isGreaterThanOrEqualTo(best - 1e-3);
            } catch (NoKitInTime none) {
                // The other true answer.
                assertThat(millis).isLessThan(2_000);
            }
        }
    }

    @Test
    void when_nobody_waits_any_longer_the_search_ends() {
        Patience gone = Patience.usual();
        gone.cancel();
        assertThatThrownBy(() -> ProposalFixture.solver().best(LARGE, gone)).isInstanceOf(CancellationException.class);
    }
}
