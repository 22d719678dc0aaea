package boughwright.rulebook;

import static boughwright.rulebook.RulebookFixture.brief;
import static boughwright.rulebook.RulebookFixture.briefWith;
import static boughwright.rulebook.RulebookFixture.needs;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Brief;
import boughwright.needs.Demand;
import boughwright.needs.Need;
import boughwright.needs.Reason;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rule, row and number of what a customer is told. Rows are counted in the shipped tables. */
class ReasonsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "lights/light-string | Light bulbs | row 8 | About a hundred bulbs for each foot: a tree of 9 ft takes 900.",
        "topper/grouping | Topper groupings | row 3 | A tree of 9 ft takes 3 groupings of two sprays and two flowers.",
        "ribbon/base-ribbon | Rolls of body ribbon | row 4 | A medium tree of 9 ft against a wall uses 2.55 ten-yard rolls of each body ribbon; with what your tree adds, whole rolls: 3.",
        "ribbon/accent-ribbon | Rolls of accent ribbon | row 3 | The third ribbon fills the gaps of a tree of 9 ft: whole rolls, 1.",
        "florals/cluster | Clusters | row 7 | About one cluster for each foot of height: a tree of 9 ft takes 9.",
        "florals/height-stem | Clusters | row 7 | One for each of the 9 clusters. About one cluster for each foot of height: a tree of 9 ft takes 9.",
        "florals/single-flower | Single flowers | row 4 | Single flowers cross the zigzag of the clusters: 5 on a tree of 9 ft.",
        "ornaments/feature-ornament/larger | Feature ornaments | row 8 | Feature shapes of this size hang last at the tips: 4 on a tree of 9 ft.",
        "accents/gap-accent | Gap accents | row 7 | About one gap for each foot of height: up to 9 accents on a tree of 9 ft, cut from the third ribbon."})
    void a_usual_tree_of_nine_feet_is_explained_by_the_row_for_nine_feet_alone(String need, String rule, String row, String text) {
        assertThat(reason(brief("9 ft"), need)).isEqualTo(new Reason(rule, row, text));
    }

    /** By hand: 3.5 % of the seen half of the cone of 62 in by 9 ft less 8 %, 3.268 m², over a disc of 80 mm, is 22.8. */
    @Test
    void balls_are_explained_by_the_share_that_they_cover_and_by_their_number() {
        Reason reason = reason(brief("9 ft"), "ornaments/filler-ball/80mm");
        assertThat(reason.row()).isEqualTo("row 2");
        assertThat(reason.text()).isEqualTo("Balls of this size cover about 3.5 % of what is seen of the tree: 23 of them.");
        assertThat(reason(brief("4 ft"), "ornaments/filler-ball/120mm")).isEqualTo(
                new Reason("Filler balls", "row 6", "Balls of this size are too large for a tree of 4 ft: 0."));
    }

    @Test
    void sprays_are_explained_by_their_number_and_by_the_number_of_styles() {
        assertThat(reason(brief("5 ft 6 in"), "florals/spray/2").text()).isEqualTo(
                "About one stem of each style for each foot of height: 5 on a tree of 5 ft 6 in. Two styles of spray are enough on a tree of 5 ft 6 in.");
    }

    @ParameterizedTest
    @CsvSource({"4.99 ft, row 1", "5 ft, row 2", "7.99 ft, row 2", "8 ft, row 3", "9.99 ft, row 3", "10 ft, row 4", "11.5 ft, row 5", "12 ft, row 5", "12.01 ft, row 6"})
    void the_row_is_the_one_whose_heights_hold_the_tree(String height, String row) {
        assertThat(reason(brief(height), "topper/grouping").row()).isEqualTo(row);
    }

    @Test
    void each_factor_that_is_not_one_adds_its_sentence_and_no_other_does() {
        Brief brief = briefWith("9 ft", List.of("fullness=full", "seenFrom=round"), "\"abundance\": \"lavish\"");
        assertThat(reason(brief, "lights/light-string").text()).isEqualTo("About a hundred bulbs for each foot: a tree of 9 ft takes 1868. "
                + "A full tree swallows light. Seen all round, the light must go the whole way round. A lavish scheme sparkles: half as many lights again.");
        assertThat(reason(brief("9 ft", "seenFrom=corner"), "topper/grouping").text()).doesNotContain("face the room");
    }

    /**
     * By hand, in inches: 3 ft less 8 % is 33.12; 15·√(15² + 33.12²) over 10.33·√(10.33² + 33.12²) is 1.521, of which the first tenth
     * above the usual does not count: 1.521 / 1.1 = 1.383, and 200 bulbs become 277.
     */
    @Test
    void a_wide_tree_is_told_what_its_girth_adds_and_a_slim_one_that_it_saves() {
        assertThat(reason(brief("3 ft", "widestDiameter=30 in"), "lights/light-string").text())
                .isEqualTo("About a hundred bulbs for each foot: a tree of 3 ft takes 277. Your tree is wide for its height: 38 % more is added.");
        assertThat(reason(brief("9 ft", "widestDiameter=30 in"), "lights/light-string").text()).contains("slim for its height").contains("% less is needed");
        assertThat(reason(brief("9 ft", "widestDiameter=60 in"), "lights/light-string").text()).doesNotContain("its height:");
        assertThat(reason(brief("9 ft", "widestDiameter=84 in"), "topper/grouping").text()).doesNotContain("wide");
    }

    @Test
    void a_lit_tree_needs_no_bulbs_and_is_told_why() {
        Need lights = needs(brief("9 ft", "lit=true")).need("lights/light-string").orElseThrow();
        assertThat(lights.quantity()).isZero();
        assertThat(lights.reason().text()).isEqualTo("The tree has its own lights already, so none are needed.");
    }

    @Test
    void heights_are_told_in_the_customer_s_own_units() {
        assertThat(reason(brief("274 cm"), "florals/cluster").text()).contains("a tree of 2.74 m");
        assertThat(reason(brief("7 ft 6 in"), "florals/cluster").text()).contains("a tree of 7 ft 6 in");
    }

    @Test
    void a_demand_carries_the_rule_that_makes_it() {
        assertThat(needs(brief("9 ft")).rules()).filteredOn(rule -> rule.demand() instanceof Demand.Narrower).singleElement().satisfies(rule ->
                assertThat(rule.reason()).isEqualTo(new Reason("The overlay is narrower than the base on which it runs", "S-22",
                        "The overlay is narrower than the base on which it runs.")));
    }

    @Test
    void no_reason_leaves_a_place_open() {
        for (String height : List.of("3 ft", "5 ft", "9 ft", "12 ft", "20 ft")) {
            for (String seenFrom : List.of("corner", "wall", "bay", "round")) {
                for (String abundance : List.of("restrained", "generous", "lavish")) {
                    Brief brief = briefWith(height, List.of("seenFrom=" + seenFrom, "fullness=sparse"), "\"abundance\": \"" + abundance + "\"");
                    assertThat(needs(brief).needs()).allSatisfy(need -> {
                        assertThat(need.reason().text()).isNotBlank().doesNotContain("{", "}", "null").endsWith(".");
                        assertThat(need.reason().row()).matches("row [1-9]\\d*");
                        assertThat(need.reason().rule()).isNotBlank();
                    });
                }
            }
        }
    }

    private static Reason reason(Brief brief, String need) {
        return needs(brief).need(need).orElseThrow().reason();
    }
}
