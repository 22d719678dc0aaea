package boughwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.kit.KitLine;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The steps that the customer follows at home; their order is common practice, no published source. */
class StepsTest {

    @Test
    void layers_go_on_in_the_order_lights_topper_ribbon_florals_ornaments_accents() {
        for (Proposal p : SeededProposals.all()) {
            List<Layer> order = p.plan().steps().stream().map(Step::layer).toList();
            List<Layer> sorted = new ArrayList<>(order);
            sorted.sort((a, b) -> Integer.compare(rank(a), rank(b)));
            assertThat(order).as(SeededProposals.of(p)).isEqualTo(sorted);
        }
    }

    private static int rank(Layer layer) {
        return List.of("lights", "topper", "ribbon", "florals", "ornaments", "accents").indexOf(layer.word());
    }

    @Test
    void steps_are_numbered_from_one() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.plan().steps()).as(SeededProposals.of(p)).extracting(Step::number)
                    .isEqualTo(IntStream.rangeClosed(1, p.plan().steps().size()).boxed().toList());
        }
    }

    @Test
    void everything_that_is_bought_is_used_in_some_step() {
        for (Proposal p : SeededProposals.all()) {
            Set<String> used = p.plan().steps().stream().flatMap(s -> s.pieces().stream()).map(Step.StepPiece::sku).collect(Collectors.toSet());
            Set<String> idle = new TreeSet<>(p.kit().lines().stream().map(KitLine::sku).toList());
            idle.removeAll(used);
            assertThat(idle).as(SeededProposals.of(p)).isEmpty();
        }
    }

    @Test
    void the_third_ribbon_is_used_even_when_no_gap_is_to_be_filled() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\"}}",
                Adjustments.NONE.withQuantity("accents/gap-accent", 0));
        List<String> bought = p.kit().lines().stream().map(KitLine::needId).toList();
        boolean told = p.plan().steps().stream().anyMatch(s -> s.layer() == Layer.ACCENTS);
        // Either the ribbon is left out of the kit, or the plan says what it is for.
        assertThat(bought.contains("ribbon/accent-ribbon")).isEqualTo(told);
    }

    @Test
    void the_minutes_of_the_steps_add_up_and_every_step_takes_some() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.plan().steps()).as(SeededProposals.of(p)).allSatisfy(s -> assertThat(s.minutes()).isPositive());
            assertThat(p.plan().minutes()).as(SeededProposals.of(p)).isEqualTo(p.plan().steps().stream().mapToInt(Step::minutes).sum());
        }
    }

    @Test
    void every_step_says_what_to_do_without_a_hole_in_its_sentence() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.plan().steps()).as(SeededProposals.of(p)).allSatisfy(s -> {
                assertThat(s.title()).isNotBlank().doesNotContain("{", "}", "null");
                assertThat(s.text()).isNotBlank().doesNotContain("{", "}", "null");
                assertThat(s.places()).allSatisfy(place -> assertThat(place).isNotBlank().doesNotContain("{", "}", "null", "NaN"));
            });
        }
    }

    @Test
    void every_spray_single_flower_and_feature_has_its_own_place() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\"}}");
        assertThat(p.layout().unplaced()).isEmpty();
        // The facts of the trade for 9 ft: nine stems of each spray style, nine clusters.
        List<Step> sprays = p.plan().steps().stream().filter(s -> s.title().startsWith(Text.of("plan.step.spray.title", 0, ""))).toList();
        assertThat(sprays).hasSize(3).allSatisfy(s -> assertThat(s.places()).hasSize(9));
        assertThat(p.plan().steps()).filteredOn(s -> s.title().equals(Text.of("plan.step.cluster-set.title"))).singleElement()
                .satisfies(s -> assertThat(s.places()).hasSize(9));
    }

    @Test
    void the_cut_list_is_told_roll_by_roll_for_both_ribbons() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\"}}");
        Step cut = p.plan().steps().stream().filter(s -> s.title().equals(Text.of("plan.step.ribbon-cut.title"))).findFirst().orElseThrow();
        // The facts of the trade for 9 ft: three rolls of each of the two ribbons.
        assertThat(cut.places()).hasSize(6);
        assertThat(cut.pieces()).extracting(Step.StepPiece::quantity).containsExactly(3, 3);
    }

    @Test
    void heights_are_told_in_the_customers_own_units() {
        Step feet = lay("9 ft");
        Step metres = lay("274.32 cm");
        assertThat(feet.places()).allSatisfy(place -> assertThat(place).containsPattern("(ft|in) up"));
        assertThat(metres.places()).allSatisfy(place -> assertThat(place).containsPattern("c?m up").doesNotContain(" ft", " in up"));
    }

    private static Step lay(String height) {
        return ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"" + height + "\"}}").plan().steps().stream()
                .filter(s -> s.title().equals(Text.of("plan.step.ribbon-lay.title"))).findFirst().orElseThrow();
    }

    @Test
    void pieces_without_room_are_owned_up_to_in_a_caution() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.plan().cautions().stream().anyMatch(c -> c.id().equals("no-room"))).as(SeededProposals.of(p))
                    .isEqualTo(!p.layout().unplaced().isEmpty());
        }
    }

    @Test
    void the_ladder_is_named_or_a_professional_is() {
        assertThat(plan("6 ft").ladder()).contains("from the floor");
        assertThat(plan("9 ft").ladder()).contains("5 ft");
        assertThat(plan("17 ft").ladder()).contains("professional");
    }

    private static Plan plan(String height) {
        return ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"" + height + "\"}}").plan();
    }
}
