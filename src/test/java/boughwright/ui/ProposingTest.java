package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.brief.Abundance;
import boughwright.catalogue.Product;
import boughwright.kit.KitLine;
import boughwright.kit.Swap;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Role;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import java.util.List;
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
}
