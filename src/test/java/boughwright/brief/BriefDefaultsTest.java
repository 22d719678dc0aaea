package boughwright.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.measure.Length;
import boughwright.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The defaults are those that {@link BriefReader} states. */
class BriefDefaultsTest {

    private final Brief least = BriefFixture.read("{\"tree\": {\"height\": \"9 ft\"}}");

    @Test
    void only_the_height_is_required_and_the_tree_is_then_a_usual_one_against_a_wall() {
        assertThat(least.tree().height()).isEqualTo(Length.ofFeet(9));
        assertThat(least.tree().fullness()).isEqualTo(Fullness.MEDIUM);
        assertThat(least.tree().seenFrom()).isEqualTo(SeenFrom.WALL);
        assertThat(least.tree().lit()).isFalse();
        assertThat(least.tree().real()).isFalse();
    }

    @Test
    void room_household_and_owned_pieces_are_taken_as_nothing_in_the_way() {
        assertThat(least.room().ceiling()).isEmpty();
        assertThat(least.room().nearHeat()).isFalse();
        assertThat(least.household()).isEqualTo(new Household(false, false));
        assertThat(least.owned()).isEmpty();
    }

    @Test
    void the_shop_s_first_look_comes_in_its_own_palette_generously_and_without_a_budget() {
        assertThat(least.look()).isEqualTo(BriefFixture.ORCHARD);
        assertThat(least.palette()).isEqualTo(BriefFixture.APPLE);
        assertThat(least.abundance()).isEqualTo(Abundance.GENEROUS);
        assertThat(least.budget()).isEmpty();
    }

    @Test
    void another_look_brings_its_own_palette_unless_one_is_named() {
        assertThat(BriefFixture.read(BriefFixture.with("\"look\": \"frost\"")).palette()).isEqualTo(BriefFixture.ICE);
        assertThat(BriefFixture.read(BriefFixture.with("\"look\": \"frost\", \"palette\": \"plum\"")).palette()).isEqualTo(BriefFixture.PLUM);
    }

    /**
     * Medium is 62 in on 9 ft (common practice, no published source). Treetopia, "Christmas Tree 101: Full, Slim, Pencil", 14 April
     * 2016: of 7 ft trees the full are 50 in (0.60) and more, the slim below 47 in (0.56).
     */
    @Test
    void the_usual_diameter_follows_height_and_fullness() {
        assertThat(least.tree().widestDiameter().inches()).isCloseTo(62, within(1e-9));
        assertThat(diameter("7 ft", "full")).isGreaterThanOrEqualTo(50);
        assertThat(diameter("7 ft", "sparse")).isLessThan(47);
        assertThat(diameter("7 ft", "medium")).isBetween(47.0, 50.0);
    }

    /** USDA standard as quoted by Bishop &amp; Mathews: "normal taper" is 0.40 to 0.90 of the height. */
    @ParameterizedTest
    @CsvSource({"sparse", "medium", "full"})
    void every_usual_diameter_is_of_normal_taper(String fullness) {
        assertThat(diameter("10 ft", fullness) / 120).isBetween(0.40, 0.90);
    }

    @ParameterizedTest
    @CsvSource({"9 ft, FEET", "108 in, FEET", "274 cm, METRES", "2.74 m, METRES"})
    void the_answer_is_told_in_the_units_in_which_the_height_was_given(String height, Units units) {
        assertThat(BriefFixture.read("{\"tree\": {\"height\": \"" + height + "\"}}").units()).isEqualTo(units);
    }

    @Test
    void nothing_that_the_customer_said_is_lost() {
        assertThat(BriefFixture.read("{\"tree\": {\"height\": \"7 ft 6 in\"}}").asGiven()).isEqualTo("{\"tree\":{\"height\":\"7 ft 6 in\"}}");
    }

    private static double diameter(String height, String fullness) {
        return BriefFixture.read("{\"tree\": {\"height\": \"" + height + "\", \"fullness\": \"" + fullness + "\"}}").tree().widestDiameter().inches();
    }
}
