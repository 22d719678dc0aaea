package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Traits.Texture;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.proposal.KitQuestions;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Candidates that no best kit needs may go; the optimum may not. */
class PruningTest {

    private static final int BRIEFS = 40;

    private static List<String> left(TinyShop shop, String slot) {
        KitRequest request = shop.request();
        List<Slot> slots = Slot.of(request.needs().bought());
        Map<String, List<Candidate>> candidates = new HashMap<>();
        slots.forEach(s -> candidates.put(s.id(), new Shortlist(request).candidates(s)));
        return new Pruning(request, Optional.of(new DesignScore(request, slots)), candidates).left(slot, candidates.get(slot)).stream()
                .map(c -> c.product().sku()).toList();
    }

    private static Goods spray(String sku) {
        return Goods.of(sku, Role.SPRAY);
    }

    @Test
    void the_dearer_twin_goes() {
        TinyShop shop = new TinyShop().need("spray", Layer.FLORALS, Role.SPRAY, 3).sell(spray("dear").pack(1, "2.00"), spray("cheap"));
        assertThat(left(shop, "spray")).containsExactly("cheap");
    }

    @Test
    void of_equals_the_first_sku_stays() {
        TinyShop shop = new TinyShop().need("spray", Layer.FLORALS, Role.SPRAY, 3).sell(spray("b"), spray("a"));
        assertThat(left(shop, "spray")).containsExactly("a");
    }

    @Test
    void a_dearer_product_that_shows_another_texture_stays() {
        TinyShop shop = new TinyShop().need("spray", Layer.FLORALS, Role.SPRAY, 3).sell(spray("dear").pack(1, "2.00").texture(Texture.FUR), spray("cheap"));
        assertThat(left(shop, "spray")).containsExactly("cheap", "dear");
    }

    @Test
    void a_dearer_product_that_suits_the_look_better_stays() {
        TinyShop shop = new TinyShop().need("spray", Layer.FLORALS, Role.SPRAY, 3).sell(spray("dear").pack(1, "2.00").looks("hearth"), spray("cheap"));
        assertThat(left(shop, "spray")).containsExactly("cheap", "dear");
    }

    @Test
    void as_many_stay_as_other_slots_might_take_away() {
        TinyShop shop = new TinyShop().need("spray/1", Layer.FLORALS, Role.SPRAY, 3).need("spray/2", Layer.FLORALS, Role.SPRAY, 3)
                .need("spray/3", Layer.FLORALS, Role.SPRAY, 3)
                .sell(spray("a"), spray("b").pack(1, "2.00"), spray("c").pack(1, "3.00"), spray("d").pack(1, "4.00"), spray("e").pack(1, "5.00"));
        assertThat(left(shop, "spray/2")).containsExactly("a", "b", "c");
    }

    @Test
    void over_seeded_briefs_and_large_shelves_the_score_stays_what_it_was() {
        Catalogue shelf = RandomShelf.of(600, 3);
        for (int seed = 1; seed <= BRIEFS; seed++) {
            String brief = SeededProposals.brief(seed).replaceAll(",\"owned\":\\[[^\\]]*\\]", "");
            KitRequest request = KitQuestions.request(ProposalFixture.brief(brief), shelf, Adjustments.NONE);
            Optional<Kit> whole = ProposalFixture.solver().best(request, Patience.usual(), false);
            Optional<Kit> pruned = ProposalFixture.solver().best(request, Patience.usual(), true);
            assertThat(pruned.isPresent()).as(brief).isEqualTo(whole.isPresent());
            whole.ifPresent(w -> assertThat(pruned.orElseThrow().score()).as(brief).isCloseTo(w.score(), within(1e-6)));
        }
    }
}
