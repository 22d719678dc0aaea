package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.BriefFault;
import boughwright.catalogue.Product;
import boughwright.kit.KitLine;
import boughwright.needs.Adjustments;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The whole way from a brief to its outcome. */
class DesignerTest {

    private static final String NINE_FEET = "{\"tree\":{\"height\":\"9 ft\"}}";

    private static List<BriefFault> faults(String brief) {
        Outcome outcome = ProposalFixture.season().propose(brief, Adjustments.NONE, Designer.SEED);
        assertThat(outcome).isInstanceOf(Outcome.BadBrief.class);
        return ((Outcome.BadBrief) outcome).faults();
    }

    @Test
    void an_owned_piece_that_the_shop_does_not_know_is_a_fault_of_the_brief() {
        List<BriefFault> faults = faults("{\"tree\":{\"height\":\"9 ft\"},\"owned\":[{\"sku\":\"NO-SUCH\",\"quantity\":3}]}");
        assertThat(faults).singleElement().satisfies(f -> {
            assertThat(f.field()).isEqualTo("owned[0].sku");
            assertThat(f.value()).isEqualTo("NO-SUCH");
            assertThat(f.sentence()).contains("owned[0].sku", "NO-SUCH");
        });
    }

    @Test
    void only_the_unknown_ones_of_several_owned_pieces_are_faults() {
        String known = ProposalFixture.season().catalogue().products().get(0).sku();
        assertThat(faults("{\"tree\":{\"height\":\"9 ft\"},\"owned\":[{\"sku\":\"" + known + "\",\"quantity\":3},{\"sku\":\"X\",\"quantity\":1}]}"))
                .extracting(BriefFault::field).containsExactly("owned[1].sku");
    }

    @Test
    void a_brief_without_a_height_is_a_fault_and_no_exception() {
        assertThat(faults("{}")).extracting(BriefFault::field).containsExactly("tree.height");
        assertThat(faults("not json")).hasSize(1);
    }

    @Test
    void the_small_catalogue_serves_its_look_on_the_usual_trees() {
        for (String feet : new String[] {"6.5", "7.5", "9"}) {
            assertThat(ProposalFixture.small().propose("{\"tree\":{\"height\":\"" + feet + " ft\"},\"look\":\"woodland\"}", Adjustments.NONE, 1))
                    .as("%s ft", feet).isInstanceOf(Outcome.Made.class);
        }
    }

    @Test
    void a_product_chosen_by_hand_fills_its_slot() {
        Proposal proposal = ProposalFixture.made(ProposalFixture.season(), NINE_FEET);
        Product other = ProposalFixture.others(ProposalFixture.season(), proposal, "florals/spray/1").get(3);
        Proposal swapped = ProposalFixture.made(ProposalFixture.season(), NINE_FEET, Adjustments.NONE.withProduct("florals/spray/1", other.sku()));
        assertThat(swapped.kit().lines()).filteredOn(l -> l.needId().equals("florals/spray/1")).singleElement()
                .extracting(KitLine::sku).isEqualTo(other.sku());
        assertThat(swapped.kit().score()).as("nothing that a hand chooses beats the best").isLessThanOrEqualTo(proposal.kit().bound() + 1e-9);
    }

    @Test
    void alternatives_are_products_that_the_slot_can_take_and_the_kit_does_not_use() {
        Proposal proposal = ProposalFixture.made(ProposalFixture.season(), NINE_FEET);
        List<String> used = proposal.kit().lines().stream().map(KitLine::sku).toList();
        for (KitLine line : proposal.kit().lines()) {
            List<Product> others = ProposalFixture.others(ProposalFixture.season(), proposal, line.slot());
            assertThat(others).as(line.slot()).isNotEmpty().allSatisfy(p -> {
                assertThat(p.roles()).contains(line.role());
                assertThat(used).doesNotContain(p.sku());
            });
        }
    }

    @Test
    void every_first_alternative_gives_a_proposal_when_it_is_taken() {
        Proposal proposal = ProposalFixture.made(ProposalFixture.season(), NINE_FEET);
        for (String slot : proposal.kit().lines().stream().map(KitLine::slot).distinct().toList()) {
            String sku = ProposalFixture.others(ProposalFixture.season(), proposal, slot).get(0).sku();
            assertThat(ProposalFixture.season().propose(NINE_FEET, Adjustments.NONE.withProduct(slot, sku), Designer.SEED)).as("%s %s", slot, sku)
                    .isInstanceOf(Outcome.Made.class);
        }
    }

    @Test
    void a_quantity_changed_by_hand_is_bought_and_placed() {
        Proposal proposal = ProposalFixture.made(ProposalFixture.season(), NINE_FEET, Adjustments.NONE.withQuantity("florals/single-flower", 8));
        assertThat(proposal.kit().lines()).filteredOn(l -> l.needId().equals("florals/single-flower")).singleElement()
                .extracting(KitLine::quantity).isEqualTo(8);
        assertThat(proposal.layout().pieces()).filteredOn(p -> p.needId().equals("florals/single-flower")).hasSize(8);
    }

    @Test
    void what_a_hand_sets_to_nothing_is_not_bought() {
        Proposal proposal = ProposalFixture.made(ProposalFixture.season(), NINE_FEET, Adjustments.NONE.withQuantity("ribbon/overlay-ribbon", 0));
        assertThat(proposal.kit().lines()).noneMatch(l -> l.needId().equals("ribbon/overlay-ribbon"));
        assertThat(proposal.layout().ribbonRuns()).isNotEmpty().allSatisfy(r -> assertThat(r.overlaySku()).isEmpty());
    }

    @Test
    void a_tree_with_nothing_on_it_has_an_empty_kit_and_plan() {
        Proposal whole = ProposalFixture.made(ProposalFixture.season(), NINE_FEET);
        Adjustments nothing = Adjustments.NONE;
        for (var need : whole.needs().needs()) {
            nothing = nothing.withQuantity(need.id(), 0);
        }
        Proposal bare = ProposalFixture.made(ProposalFixture.season(), NINE_FEET, nothing);
        assertThat(bare.kit().lines()).isEmpty();
        assertThat(bare.kit().total().decimal()).isEqualTo("0.00");
        assertThat(bare.plan().steps()).isEmpty();
    }
}
