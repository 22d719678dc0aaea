package boughwright.rulebook;

import static boughwright.rulebook.RulebookFixture.brief;
import static boughwright.rulebook.RulebookFixture.briefWith;
import static boughwright.rulebook.RulebookFixture.needs;
import static boughwright.rulebook.RulebookFixture.quantity;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a medium tree against a wall takes when it is dressed generously. All of it common practice, no published source.
 */
class TradeFactsTest {

    @ParameterizedTest
    @CsvSource({"6.5 ft, 2", "7.5 ft, 2", "9 ft, 3", "12 ft, 5"})
    void topper_groupings_of_two_sprays_and_two_flowers_each(String height, int groupings) {
        Needs needs = needs(brief(height));
        assertThat(needs.quantity(Layer.TOPPER, Role.GROUPING)).isEqualTo(groupings);
        assertThat(needs.quantity(Layer.TOPPER, Role.HEIGHT_STEM) + needs.quantity(Layer.TOPPER, Role.TEXTURE_STEM)).isEqualTo(2 * groupings);
        assertThat(needs.quantity(Layer.TOPPER, Role.FACE_FLOWER)).isEqualTo(2 * groupings);
    }

    @ParameterizedTest
    @CsvSource({"6.5 ft, 2, 3", "7.5 ft, 2, 3", "9 ft, 3, 4", "12 ft, 5, 6"})
    void rolls_of_each_body_ribbon_and_one_more_on_a_full_tree_dressed_all_round(String height, int wall, int fullAllRound) {
        for (String ribbon : List.of("ribbon/base-ribbon", "ribbon/overlay-ribbon")) {
            assertThat(quantity(brief(height), ribbon)).isEqualTo(wall);
            assertThat(quantity(brief(height, "fullness=full", "seenFrom=round"), ribbon)).isEqualTo(fullAllRound);
        }
    }

    @ParameterizedTest
    @CsvSource({"7.5 ft, 7, 7", "9 ft, 9, 9", "12 ft, 12, 18"})
    void clusters_in_the_body_each_with_one_of_each_of_the_four_stems(String height, int least, int most) {
        Needs needs = needs(brief(height));
        int clusters = needs.quantity(Layer.FLORALS, Role.CLUSTER);
        assertThat(clusters).isBetween(least, most);
        assertThat(needs.need("florals/height-stem").orElseThrow().quantity()).isEqualTo(clusters);
        assertThat(needs.need("florals/texture-stem").orElseThrow().quantity()).isEqualTo(clusters);
        assertThat(needs.need("florals/face-flower/1").orElseThrow().quantity()).isEqualTo(clusters);
        assertThat(needs.need("florals/face-flower/2").orElseThrow().quantity()).isEqualTo(clusters);
    }

    @Test
    void a_cluster_is_made_of_the_same_four_stems_as_a_topper_grouping() {
        Needs needs = needs(brief("9 ft"));
        for (String stem : List.of("height-stem", "texture-stem", "face-flower/1", "face-flower/2")) {
            assertThat(needs.need("topper/" + stem).map(Need::slot)).isPresent().isEqualTo(needs.need("florals/" + stem).map(Need::slot));
        }
    }

    @Test
    void nine_stems_of_each_spray_style_on_nine_feet_and_dozens_when_lavish() {
        assertThat(sprays("generous")).isNotEmpty().allSatisfy(need -> assertThat(need.quantity()).isEqualTo(9));
        assertThat(sprays("lavish")).isNotEmpty().allSatisfy(need -> assertThat(need.quantity()).isGreaterThanOrEqualTo(24));
    }

    private static List<Need> sprays(String abundance) {
        Needs needs = needs(briefWith("9 ft", List.of(), "\"abundance\": \"" + abundance + "\""));
        return needs.needs().stream().filter(need -> need.role() == Role.SPRAY).toList();
    }

    @Test
    void a_scheme_may_start_small_with_one_or_two_spray_styles() {
        assertThat(sprays("restrained")).hasSizeBetween(1, 2);
        assertThat(sprays("generous")).hasSizeGreaterThan(sprays("restrained").size());
    }

    @Test
    void about_four_styles_of_balls_go_in_the_larger_the_fewer() {
        List<Need> balls = needs(brief("9 ft")).needs().stream().filter(need -> need.role() == Role.FILLER_BALL).toList();
        assertThat(balls).hasSize(4);
        assertThat(balls).extracting(need -> need.diameter().orElseThrow().millimetres()).isSorted();
        assertThat(balls).extracting(Need::quantity).isSortedAccordingTo((a, b) -> Integer.compare(b, a));
    }

    @ParameterizedTest
    @ValueSource(strings = {"108 in", "274.32 cm", "2.7432 m", "9 feet"})
    void the_same_tree_takes_the_same_in_whatever_unit_it_was_measured(String height) {
        assertThat(quantities(needs(brief(height)))).isEqualTo(quantities(needs(brief("9 ft"))));
    }

    /** Sixty-two inches is the usual width of a medium tree of nine feet: common practice, no published source. */
    @Test
    void measuring_a_usual_tree_changes_nothing() {
        assertThat(quantities(needs(brief("9 ft", "widestDiameter=62 in")))).isEqualTo(quantities(needs(brief("9 ft"))));
    }

    @ParameterizedTest
    @CsvSource({"14 ft", "16 ft", "18 ft", "20 ft"})
    void beyond_twelve_feet_numbers_follow_the_surface(String height) {
        Needs twelve = needs(brief("12 ft"));
        Needs tall = needs(brief(height));
        double growth = brief(height).tree().dressedArea() / brief("12 ft").tree().dressedArea();
        for (String id : List.of("lights/light-string", "topper/grouping", "florals/cluster", "florals/single-flower", "florals/spray/1")) {
            assertThat((double) tall.need(id).orElseThrow().quantity()).as(id).isCloseTo(twelve.need(id).orElseThrow().quantity() * growth, within(0.5 + 1e-6));
        }
    }

    private static List<String> quantities(Needs needs) {
        return needs.needs().stream().map(need -> need.id() + " " + need.quantity()).toList();
    }
}
