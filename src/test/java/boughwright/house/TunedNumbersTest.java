package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.kit.KitSolver;
import boughwright.kit.Term;
import boughwright.layout.RibbonRun;
import boughwright.needs.Adjustments;
import boughwright.needs.Demand;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.rulebook.Rulebook;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What staff set reaches the kit, the tree and the cautions. */
class TunedNumbersTest {

    private static final String NINE_FEET = "{\"tree\": {\"height\": \"9 ft\"}, \"room\": {\"nearHeat\": true}}";

    private static Proposal nine(UnaryOperator<HouseRules> change) {
        Designer shop = KioskFixture.designer();
        try {
            Map<String, String> texts = EditionTexts.of(change.apply(HouseFixture.shipped()), "tuned", "Tuned", shop.rulebook().edition());
            Rulebook rulebook = ((Rulebook.Opening.Open) Rulebook.open(texts::get, shop.rulebook().styleRules())).rulebook();
            return ((Outcome.Made) new Designer(rulebook, shop.catalogue(), new KitSolver()).propose(NINE_FEET, Adjustments.NONE, 1)).proposal();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void clusters_and_groupings_have_as_many_flowers_as_the_house_says(int flowers) {
        Proposal proposal = nine(r -> r.withNumber(HouseNumber.CLUSTER_FLOWERS, String.valueOf(flowers)));
        long kinds = proposal.needs().needs().stream().filter(n -> n.id().startsWith("florals/face-flower")).count();
        assertThat(kinds).isEqualTo(flowers);
        assertThat(proposal.layout().unplaced()).isEmpty();
        assertThat(proposal.layout().pieces()).filteredOn(p -> p.role() == Role.FACE_FLOWER).hasSize(flowers * (9 + 3));
    }

    @Test
    void runs_are_plain_or_varied_as_the_house_says_and_made_with_its_lengths() {
        List<RibbonRun> plain = nine(r -> r.withNumber(HouseNumber.RUNS_WITH_END_BOW, "0").withNumber(HouseNumber.RUNS_WITH_SMALL_LOOP, "0")).layout().ribbonRuns();
        assertThat(plain).hasSizeGreaterThan(5).allSatisfy(run -> assertThat(run.smallLoops()).isZero());
        List<RibbonRun> loops = nine(r -> r.withNumber(HouseNumber.RUNS_WITH_END_BOW, "0").withNumber(HouseNumber.RUNS_WITH_SMALL_LOOP, "12")).layout().ribbonRuns();
        assertThat(loops).anySatisfy(run -> assertThat(run.smallLoops()).isEqualTo(1));
        List<RibbonRun> longer = nine(r -> r.withNumber(HouseNumber.RUNS_WITH_END_BOW, "0").withNumber(HouseNumber.RUNS_WITH_SMALL_LOOP, "0").withNumber(HouseNumber.TAIL, "12 in")).layout().ribbonRuns();
        assertThat(longer.get(3).length()).isCloseTo(plain.get(3).length() + 2 * 4 * 0.0254, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void the_weights_of_the_score_are_the_house_s_and_the_audit_counts_with_them() {
        Proposal proposal = nine(r -> r.withNumber(HouseNumber.SCORE_THRIFT, "40"));
        assertThat(proposal.kit().terms()).filteredOn(t -> t.term() == Term.THRIFT)
                .singleElement().satisfies(t -> assertThat(t.weight()).isEqualTo(40));
        assertThat(proposal.kit().total().compareTo(nine(r -> r).kit().total())).isNegative();
    }

    @Test
    void words_and_shares_become_demands_and_their_sentences_name_them() {
        Proposal proposal = nine(r -> r.withWords(HouseWords.OVERLAY_PATTERNS, List.of("metallic")).withNumber(HouseNumber.MAIN_SHARE, "50").withNumber(HouseNumber.SECOND_SHARE, "40"));
        assertThat(proposal.needs().demands(Demand.Shares.class)).containsExactly(new Demand.Shares(0.5, 0.4, 0.1));
        assertThat(proposal.needs().rules()).anySatisfy(rule -> {
            assertThat(rule.demand()).isEqualTo(new Demand.Only(Role.OVERLAY_RIBBON, Trait.PATTERN, java.util.Set.of("metallic")));
            assertThat(rule.reason().text()).isEqualTo("The overlay ribbon is patterned or metallic: metallic.");
        });
    }

    @Test
    void a_stricter_caution_says_its_own_distance() {
        assertThat(nine(r -> r.withNumber(HouseNumber.HEAT_DISTANCE, "5 ft")).plan().cautions())
                .anySatisfy(c -> assertThat(c.text()).contains("at least 5 ft (1.52 m) from fireplaces"));
    }
}
