package boughwright.publishing;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Fifty proposals are being made while twenty editions are published: none fails, each is whole on one edition. */
class InFlightTest {

    @Test
    void proposals_in_flight_finish_on_the_edition_with_which_they_began() throws Exception {
        OpenShop shop = OpenShop.open();
        shop.shop.designer();
        ExecutorService counters = Executors.newFixedThreadPool(4);
        List<Future<Proposal>> flying = new ArrayList<>();
        try {
            for (int i = 0; i < 50; i++) {
                flying.add(counters.submit(() -> {
                    Designer mine = shop.shop.designer();
                    return ((Outcome.Made) mine.propose("{\"tree\": {\"height\": \"9 ft\"}}", Adjustments.NONE, Designer.SEED)).proposal();
                }));
            }
            for (int i = 1; i <= 20; i++) {
                int clusters = 9 + i;
                // Edition n+1 asks for 9 + n clusters on nine feet, so that a proposal tells its edition.
                shop.publish("Edition with " + clusters, r -> r.changeGrid("clusters", "Base",
                        g -> g.change(6, row -> row.withResult(0, String.valueOf(clusters)))));
            }
            for (Future<Proposal> future : flying) {
                Proposal proposal = future.get();
                int clusters = proposal.needs().need("florals/cluster").orElseThrow().quantity();
                assertThat(proposal.edition().title()).isEqualTo(clusters == 9 ? "Winter 26" : "Edition with " + clusters);
                assertThat(proposal.needs().edition()).isEqualTo(proposal.edition().id());
                assertThat(proposal.needs().need("florals/height-stem").orElseThrow().quantity()).isEqualTo(clusters);
            }
        } finally {
            counters.shutdownNow();
        }
        assertThat(shop.shop.liveEdition()).isEqualTo(21);
        assertThat(shop.editions.publications()).hasSize(21);
    }
}
