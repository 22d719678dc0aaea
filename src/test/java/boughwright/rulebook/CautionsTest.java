package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Brief;
import boughwright.measure.Length;
import boughwright.needs.Adjustments;
import boughwright.needs.Caution;
import boughwright.needs.Climb;
import boughwright.needs.LightLoad;
import boughwright.needs.Needs;
import boughwright.plan.Stepladder;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsTest {

    private static final Climb FROM_THE_FLOOR = new Climb(2, 0, false);

    /** By hand: 80 % of 15 A at 120 V is 1440 W (NEC 210.20(A)); floor(1440 / 40.8) = 35 strings, floor(1440 / 48) = 30. */
    @ParameterizedTest
    @CsvSource({"35, 40.8, false", "36, 40.8, true", "30, 48, false", "31, 48, true"})
    void lights_beyond_eighty_percent_of_a_circuit_are_spread(int strings, double watts, boolean over) {
        assertThat(ids(lights(new LightLoad(strings, watts, 5))).contains("C-11")).isEqualTo(over);
        if (over) {
            assertThat(text("C-11", lights(new LightLoad(strings, watts, 5)))).contains("1440 W").contains("electrician");
        }
    }

    /** By hand from the 210 W that UL 588 allows on 22 AWG wire (christmaslightsetc.com): 5 strings of 40.8 W, 4 of 48 W. */
    @ParameterizedTest
    @CsvSource({"9, 40.8, 5, 367 W", "10, 48, 4, 480 W"})
    void the_maker_s_run_limit_and_the_load_are_told(int strings, double watts, int run, String load) {
        assertThat((int) (210 / watts)).isEqualTo(run);
        assertThat(text("C-10", lights(new LightLoad(strings, watts, run)))).contains(load + " together").contains("no more than " + run + " strings end to end").contains("label says so");
    }

    @Test
    void a_maker_who_prints_no_limit_and_a_kit_without_lights_get_no_limit_of_ours() {
        assertThat(ids(lights(new LightLoad(9, 40.8, 0)))).doesNotContain("C-10");
        assertThat(ids(cautions(RulebookFixture.brief("9 ft"), FROM_THE_FLOOR))).doesNotContain("C-10", "C-11").contains("C-13");
    }

    @Test
    void a_tree_with_its_own_lights_keeps_to_its_label() {
        assertThat(ids(cautions(RulebookFixture.brief("9 ft", "lit=true"), FROM_THE_FLOOR))).contains("C-12");
        assertThat(ids(cautions(RulebookFixture.brief("9 ft"), FROM_THE_FLOOR))).doesNotContain("C-12");
    }

    /** safemt.com, "Three Steps for Selecting Ladders": an 8 ft stepladder reaches 12 ft 3 in, a 12 ft one 16 ft 1 in. */
    @ParameterizedTest
    @CsvSource({"6.5, none", "12, stepladder of 8 ft", "16, stepladder of 12 ft", "17, professional"})
    void the_ladder_follows_the_height_and_ends_at_twelve_feet(double feet, String told) {
        List<Caution> cautions = cautions(RulebookFixture.brief(feet + " ft"), Stepladder.forWorkAt(Length.ofFeet(feet)));
        List<String> ladders = ids(cautions).stream().filter(id -> id.equals("C-30") || id.equals("C-31")).toList();
        switch (told) {
            case "none" -> assertThat(ladders).isEmpty();
            case "professional" -> {
                assertThat(ladders).containsExactly("C-31");
                assertThat(text("C-31", cautions)).contains("Stop and call a professional");
            }
            default -> {
                assertThat(ladders).containsExactly("C-30");
                assertThat(text("C-30", cautions)).contains(told).contains("Never stand on its top or the step below it");
            }
        }
    }

    /** NFPA advice on tree placement: at least three feet from any heat source, and not in the way out. */
    @Test
    void heat_near_the_tree_asks_for_three_feet() {
        Brief near = RulebookFixture.briefWith("9 ft", List.of(), "\"room\": {\"nearHeat\": true}");
        assertThat(text("C-20", cautions(near, FROM_THE_FLOOR))).contains("at least 3 ft (91 cm)").contains("way out");
    }

    @Test
    void a_real_tree_is_watered_and_an_artificial_one_labelled() {
        assertThat(ids(cautions(RulebookFixture.brief("9 ft", "real=true"), FROM_THE_FLOOR))).contains("C-21").doesNotContain("C-22");
        assertThat(ids(cautions(RulebookFixture.brief("9 ft"), FROM_THE_FLOOR))).contains("C-22").doesNotContain("C-21");
    }

    /** US Consumer Product Safety Commission: no breakable, small or food-like trimmings within small children's reach. */
    @Test
    void toddlers_and_pets_each_bring_their_own_caution() {
        Brief both = RulebookFixture.briefWith("9 ft", List.of(), "\"household\": {\"toddlers\": true, \"pets\": true}");
        assertThat(text("C-01", cautions(both, FROM_THE_FLOOR))).contains("glass").contains("above 4 ft (1.22 m)");
        assertThat(text("C-02", cautions(both, FROM_THE_FLOOR))).contains("tinsel").contains("cat");
        assertThat(ids(cautions(RulebookFixture.brief("9 ft"), FROM_THE_FLOOR))).doesNotContain("C-01", "C-02");
    }

    /** Six inches between tip and ceiling: sizing guides, 6 to 12 in. */
    @ParameterizedTest
    @CsvSource({"9 ft, true", "9 ft 5.9 in, true", "9 ft 6.1 in, false", "10 ft, false"})
    void less_than_six_inches_under_the_ceiling_is_told(String ceiling, boolean told) {
        Brief brief = RulebookFixture.briefWith("9 ft", List.of(), "\"room\": {\"ceiling\": \"" + ceiling + "\"}");
        assertThat(ids(cautions(brief, FROM_THE_FLOOR)).contains("C-33")).isEqualTo(told);
    }

    @Test
    void a_ceiling_that_nobody_measured_is_not_warned_of() {
        assertThat(ids(cautions(RulebookFixture.brief("9 ft"), FROM_THE_FLOOR))).doesNotContain("C-33");
    }

    @ParameterizedTest
    @CsvSource({"12 ft, false", "144 in, false", "365.76 cm, false", "12 ft 1 in, true", "20 ft, true"})
    void beyond_twelve_feet_a_trained_eye_is_asked_for(String height, boolean told) {
        assertThat(ids(cautions(RulebookFixture.brief(height), FROM_THE_FLOOR)).contains("C-34")).isEqualTo(told);
    }

    /** Published recipes go up to 11.2 stems a foot (Waukesha Floral, 84 on 7.5 ft). */
    @Test
    void a_scheme_thicker_than_any_published_one_says_so() {
        Brief lavish = RulebookFixture.briefWith("9 ft", List.of("seenFrom=round"), "\"abundance\": \"lavish\"");
        assertThat(ids(cautions(lavish, FROM_THE_FLOOR))).contains("S-15");
        assertThat(ids(cautions(RulebookFixture.brief("9 ft"), FROM_THE_FLOOR))).doesNotContain("S-15");
    }

    @Test
    void cautions_come_in_the_order_of_their_rules_each_with_its_source() {
        Brief brief = RulebookFixture.briefWith("14 ft", List.of("real=true", "lit=true"), "\"household\": {\"toddlers\": true, \"pets\": true}, \"room\": {\"ceiling\": \"14 ft\", \"nearHeat\": true}");
        List<Caution> cautions = cautions(brief, Stepladder.forWorkAt(brief.tree().height()));
        assertThat(ids(cautions)).isSorted().doesNotHaveDuplicates();
        assertThat(cautions).allSatisfy(caution -> assertThat(caution.source()).isNotBlank());
    }

    private static List<Caution> lights(LightLoad load) {
        Brief brief = RulebookFixture.brief("9 ft");
        return RulebookFixture.shipped().cautions(brief, RulebookFixture.needs(brief), FROM_THE_FLOOR, Optional.of(load), Optional.empty());
    }

    private static List<Caution> cautions(Brief brief, Climb climb) {
        Needs needs = RulebookFixture.shipped().needs(brief, Adjustments.NONE);
        return RulebookFixture.shipped().cautions(brief, needs, climb, Optional.empty(), Optional.empty());
    }

    private static List<String> ids(List<Caution> cautions) {
        return cautions.stream().map(Caution::id).toList();
    }

    private static String text(String id, List<Caution> cautions) {
        return cautions.stream().filter(caution -> caution.id().equals(id)).findFirst().orElseThrow().text();
    }
}
