package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.KioskFixture;
import boughwright.brief.Abundance;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.kit.KitLine;
import boughwright.kit.Patience;
import boughwright.kit.Swap;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Role;
import boughwright.needs.Spot;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class ProposingTest {

    private static final String BRIEF = "{\"tree\": {\"height\": \"9 ft\"}}";

    private final SavedHere here = new SavedHere();

    private Proposing proposing(String brief) {
        return new Proposing(KioskFixture.designer(), here.consultations, here.reopened(brief));
    }

    @Test
    void another_abundance_changes_needs_kit_and_layout_and_is_saved() {
        Proposing proposing = proposing(BRIEF);
        int before = proposing.proposal().orElseThrow().layout().pieces().size();

        proposing.abundance(Abundance.LAVISH);

        Proposal after = proposing.proposal().orElseThrow();
        assertThat(after.needs().quantity(Layer.FLORALS, Role.SPRAY)).isEqualTo(4 * 24);
        assertThat(after.layout().pieces().size()).isGreaterThan(before);
        assertThat(proposing.saved().revision()).isEqualTo(2);
        assertThat(proposing.saved().brief()).contains("lavish");
    }

    @Test
    void what_is_moved_by_hand_is_saved_with_the_same_kit_and_can_be_undone_and_put_back() {
        Proposing proposing = proposing(BRIEF);
        Proposal before = proposing.proposal().orElseThrow();

        proposing.move("cluster-2", new Spot(1.4, 6.5));
        proposing.move("run-3", new Spot(1.1, 5));

        Proposal after = proposing.proposal().orElseThrow();
        assertThat(after.kit()).isEqualTo(before.kit());
        assertThat(after.layout()).isNotEqualTo(before.layout());
        assertThat(here.consultations.reopen(proposing.saved().code()).orElseThrow().saved().adjustments().moved()).containsOnlyKeys("cluster-2", "run-3");
        proposing.undo();
        assertThat(proposing.hand().moved()).containsOnlyKeys("cluster-2");
        proposing.moveBack("cluster-2");
        assertThat(proposing.proposal().orElseThrow().layout()).isEqualTo(before.layout());
        proposing.move("run-3", new Spot(1.1, 5));
        proposing.moveAllBack();
        assertThat(proposing.hand().moved()).isEmpty();
    }

    @Test
    void a_move_outlives_another_change_of_the_kit() {
        Proposing proposing = proposing(BRIEF);
        proposing.move("single-flower-1", new Spot(1.5, 6));
        proposing.quantity("florals/single-flower", 8);
        Proposal after = proposing.proposal().orElseThrow();
        assertThat(after.layout().pieces()).filteredOn(p -> p.id().equals("single-flower-1")).singleElement()
                .satisfies(p -> assertThat(p.height()).isCloseTo(1.5, org.assertj.core.api.Assertions.within(1e-9)));
    }

    @Test
    void a_budget_is_kept_to_and_one_that_is_no_amount_changes_nothing() {
        Proposing proposing = proposing(BRIEF);

        proposing.budget("600.00");
        assertThat(proposing.proposal().orElseThrow().kit().total().amount()).isLessThanOrEqualTo(new java.math.BigDecimal("600.00"));

        assertThat(proposing.budget("six hundred")).isInstanceOf(Outcome.BadBrief.class);
        assertThat(proposing.saved().brief()).contains("600.00");
    }

    @Test
    void a_swapped_product_fills_its_slot_in_every_layer_and_can_be_given_back() {
        Proposing proposing = proposing(BRIEF);
        List<Product> others = proposing.swaps("height-stem", 6).stream().filter(Swap::possible).map(Swap::product).toList();
        Product other = others.get(others.size() - 1);

        proposing.swap("height-stem", other.sku());

        Proposal after = proposing.proposal().orElseThrow();
        assertThat(after.kit().lines()).filteredOn(l -> l.role() == Role.HEIGHT_STEM).hasSize(2).extracting(KitLine::sku).containsOnly(other.sku());
        assertThat(proposing.chosenByHand("height-stem")).isTrue();
        proposing.letTheKitChoose("height-stem");
        assertThat(proposing.chosenByHand("height-stem")).isFalse();
    }

    @Test
    void a_quantity_changed_by_hand_is_kept_marked_and_taken_back() {
        Proposing proposing = proposing(BRIEF);

        proposing.quantity("florals/single-flower", 8);

        Need need = proposing.needs().need("florals/single-flower").orElseThrow();
        assertThat(need.quantity()).isEqualTo(8);
        assertThat(need.changed()).isTrue();
        assertThat(need.reason().text()).contains("by hand from 5");
        proposing.quantityAsComputed("florals/single-flower");
        assertThat(proposing.needs().need("florals/single-flower").orElseThrow().quantity()).isEqualTo(5);
    }

    @Test
    void strings_of_lights_are_changed_by_the_string() {
        Proposing proposing = proposing(BRIEF);
        int strings = proposing.proposal().orElseThrow().kit().line("lights/light-string").orElseThrow().quantity();

        proposing.quantity("lights/light-string", strings + 1);

        assertThat(proposing.proposal().orElseThrow().kit().line("lights/light-string").orElseThrow().quantity()).isGreaterThan(strings);
    }

    @Test
    void the_way_out_of_a_budget_that_is_too_small_leads_to_a_kit() {
        Proposing proposing = proposing("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"60.00\"}");
        assertThat(proposing.proposal()).isEmpty();
        Outcome.NoKitFits none = (Outcome.NoKitFits) proposing.outcome();

        proposing.take(none.conflict().waysOut().get(0));

        assertThat(proposing.proposal()).isPresent();
    }

    @Test
    void changes_are_undone_and_done_again() {
        Proposing proposing = proposing(BRIEF);
        var start = proposing.proposal().orElseThrow().kit();
        proposing.taste(Taste.no(Trait.FINISH, "matte"));
        var bent = proposing.proposal().orElseThrow().kit();
        assertThat(bent).isNotEqualTo(start);
        assertThat(proposing.changes()).isNotEmpty();
        assertThat(proposing.canRedo()).isFalse();

        proposing.undo();
        assertThat(proposing.proposal().orElseThrow().kit()).isEqualTo(start);
        assertThat(proposing.canUndo()).isFalse();
        proposing.redo();
        assertThat(proposing.proposal().orElseThrow().kit()).isEqualTo(bent);
        assertThat(proposing.saved().revision()).isEqualTo(4);
    }

    @Test
    void a_change_that_nobody_waits_for_leaves_everything_as_it_was() {
        Proposing proposing = proposing(BRIEF);
        Patience gone = Patience.usual();
        gone.cancel();

        assertThatThrownBy(() -> proposing.with(gone, () -> proposing.abundance(Abundance.LAVISH))).isInstanceOf(CancellationException.class);

        assertThat(proposing.saved().revision()).isEqualTo(1);
        assertThat(proposing.canUndo()).isFalse();
    }

    @Test
    void a_pinned_line_stays_while_the_rest_is_chosen_afresh() {
        Proposing proposing = proposing(BRIEF);
        String base = proposing.proposal().orElseThrow().products().get("ribbon/base-ribbon");
        proposing.pin("ribbon/base-ribbon");
        proposing.palette("silver-birch");
        proposing.afresh();
        assertThat(proposing.proposal().orElseThrow().products()).containsEntry("ribbon/base-ribbon", base);
    }

    @Test
    void a_wish_that_matters_more_moves_up() {
        Proposing proposing = proposing("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"900.00\"}");
        assertThat(proposing.wishes()).extracting(w -> w.id()).containsExactly("budget", "abundance:generous");
        proposing.matterMore("abundance:generous");
        assertThat(proposing.wishes()).extracting(w -> w.id()).containsExactly("abundance:generous", "budget");
    }

    @Test
    void an_offer_and_a_first_year_are_taken_with_one_touch() {
        Proposing proposing = proposing("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"900.00\"}");
        Proposal asked = proposing.proposal().orElseThrow();
        var offer = KioskFixture.designer().offers(asked, Patience.usual()).offers().get(1);
        proposing.take(offer);
        assertThat(proposing.proposal().orElseThrow().kit().lines()).isEqualTo(offer.proposal().kit().lines());
        proposing.undo();
        var year = KioskFixture.designer().growth(asked, Patience.usual()).years().get(0);
        proposing.start(year);
        assertThat(proposing.proposal().orElseThrow().kit().lines()).isEqualTo(year.proposal().kit().lines());
    }

    @Test
    void swaps_near_a_colour_come_nearest_first_and_can_be_had() {
        Proposing proposing = proposing(BRIEF);
        Srgb plum = new Srgb(0x5e, 0x27, 0x50);

        String slot = proposing.proposal().orElseThrow().kit().lines().stream().filter(l -> l.role() == Role.BASE_RIBBON).findFirst().orElseThrow().slot();

        List<Swap> swaps = proposing.swapsNear(slot, plum, 5);

        assertThat(swaps).isNotEmpty().extracting(s -> s.product().lab().difference(Lab.of(plum))).isSorted();
        assertThat(swaps).allSatisfy(s -> assertThat(s.product().roles()).contains(Role.BASE_RIBBON));
    }
}
