package boughwright.rulebook;

import static boughwright.rulebook.RulebookFixture.brief;
import static boughwright.rulebook.RulebookFixture.briefWith;
import static boughwright.rulebook.RulebookFixture.needs;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.measure.Length;
import boughwright.needs.AccentChoice;
import boughwright.needs.AccentKind;
import boughwright.needs.Demand;
import boughwright.needs.Needs;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the house asks of a kit: common practice, no published source, unless another source stands beside the check. */
class StyleDemandsTest {

    private final Needs nine = needs(brief("9 ft"));

    @Test
    void the_overlay_is_patterned_or_metallic_on_an_open_weave_and_the_third_ribbon_is_closely_woven() {
        assertThat(nine.demands(Demand.Only.class)).contains(
                new Demand.Only(Role.OVERLAY_RIBBON, Trait.PATTERN, Set.of("dots", "stripe", "leaf", "plaid", "metallic")),
                new Demand.Only(Role.BASE_RIBBON, Trait.WEAVE, Set.of("open")),
                new Demand.Only(Role.ACCENT_RIBBON, Trait.WEAVE, Set.of("close")));
        assertThat(nine.demands(Demand.Narrower.class)).containsExactly(new Demand.Narrower(Role.OVERLAY_RIBBON, Role.BASE_RIBBON));
    }

    @Test
    void tails_take_eight_inches_of_ribbon_and_large_loops_twenty_four() {
        RibbonMeasures run = nine.ribbon();
        assertThat(run.tail()).isCloseTo(Length.ofInches(8).metres(), within(1e-9));
        assertThat(run.loop()).isCloseTo(Length.ofInches(24).metres(), within(1e-9));
        assertThat(run.smallLoop()).isLessThan(run.loop());
        assertThat(run.plainRun()).isCloseTo(Length.ofInches(64).metres(), within(1e-9));
        assertThat(needs(brief("4 ft")).ribbon().loop()).isLessThan(run.loop());
    }

    @Test
    void a_gap_takes_tails_then_a_one_loop_bow_then_a_two_loop_bow_as_it_widens() {
        assertThat(nine.accents()).extracting(AccentChoice::kind).containsExactly(AccentKind.TAILS, AccentKind.ONE_LOOP_BOW, AccentKind.TWO_LOOP_BOW);
        assertThat(nine.accents()).extracting(AccentChoice::ribbon).isSorted();
        // A pair of 8 in tails.
        assertThat(nine.accents().get(0).ribbon()).isCloseTo(Length.ofInches(16).metres(), within(1e-9));
    }

    @Test
    void balls_are_shatterproof() {
        assertThat(nine.demands(Demand.Only.class)).contains(new Demand.Only(Role.FILLER_BALL, Trait.MATERIAL, Set.of("shatterproof")));
    }

    @Test
    void one_darker_flower_gives_depth() {
        assertThat(nine.demands(Demand.DarkOne.class)).singleElement().satisfies(dark -> {
            assertThat(dark.roles()).containsExactly(Role.FACE_FLOWER, Role.SINGLE_FLOWER);
            assertThat(dark.lightness()).isBetween(20.0, 50.0);
        });
    }

    @Test
    void main_second_and_spark_share_what_is_seen_as_sixty_thirty_ten() {
        assertThat(nine.demands(Demand.Shares.class)).containsExactly(new Demand.Shares(0.6, 0.3, 0.1));
    }

    @Test
    void every_role_that_is_bought_for_its_colour_knows_how_well_each_colour_suits_it() {
        Set<Role> colourless = Set.of(Role.LIGHT_STRING, Role.GROUPING, Role.CLUSTER, Role.GAP_ACCENT);
        assertThat(nine.demands(Demand.PaletteParts.class)).extracting(Demand.PaletteParts::role).doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(java.util.Arrays.stream(Role.values()).filter(role -> !colourless.contains(role)).toList());
        assertThat(nine.demands(Demand.PaletteParts.class)).allSatisfy(parts -> {
            for (int part = 0; part < 4; part++) {
                assertThat(parts.of(part)).isBetween(0.0, 1.0);
            }
        });
    }

    @Test
    void a_topper_is_chosen_for_height_first_and_then_for_different_textures() {
        assertThat(lengths("9 ft").least()).isGreaterThan(lengths("6 ft").least());
        assertThat(nine.demands(Demand.Differ.class)).containsExactly(new Demand.Differ(Role.HEIGHT_STEM, Role.TEXTURE_STEM, Trait.TEXTURE));
    }

    private static Demand.Within lengths(String height) {
        return needs(brief(height)).demands(Demand.Within.class).stream().filter(within -> within.role() == Role.HEIGHT_STEM).findFirst().orElseThrow();
    }

    /** US Consumer Product Safety Commission on trimmings near small children; no tinsel for cats is common practice. */
    @Test
    void what_is_fragile_or_looks_like_food_is_left_out_where_toddlers_or_pets_live_and_tinsel_where_pets_do() {
        assertThat(nine.demands(Demand.Never.class)).isEmpty();
        assertThat(never("toddlers")).contains("safety fragile", "safety food-like", "safety small-parts", "finish glass", "material glass");
        assertThat(never("pets")).contains("safety fragile", "safety food-like", "safety tinsel", "finish glass", "material glass");
    }

    private static List<String> never(String who) {
        List<Demand.Never> never = needs(briefWith("9 ft", List.of(), "\"household\": {\"" + who + "\": true}")).demands(Demand.Never.class);
        assertThat(never).allSatisfy(demand -> assertThat(demand.roles()).as("no roles means all").isEmpty());
        return never.stream().flatMap(demand -> demand.values().stream().map(value -> demand.trait().word() + " " + value)).toList();
    }

    @Test
    void a_look_only_sways_and_never_forbids() {
        List<Demand> woodland = demands("woodland");
        List<Demand> frost = demands("frost-fair");
        assertThat(woodland).isNotEqualTo(frost);
        woodland.removeIf(Demand.Prefer.class::isInstance);
        frost.removeIf(Demand.Prefer.class::isInstance);
        assertThat(woodland).isEqualTo(frost);
    }

    private static List<Demand> demands(String look) {
        return new java.util.ArrayList<>(needs(briefWith("9 ft", List.of(), "\"look\": \"" + look + "\"")).demands(Demand.class));
    }
}
