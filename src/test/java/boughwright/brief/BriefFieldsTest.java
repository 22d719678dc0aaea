package boughwright.brief;

import static boughwright.brief.BriefFixture.faults;
import static boughwright.brief.BriefFixture.read;
import static boughwright.brief.BriefFixture.with;
import static boughwright.brief.BriefFixture.withTree;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BriefFieldsTest {

    @ParameterizedTest
    @ValueSource(strings = {"3 ft", "36 in", "20 ft", "240 in", "6.096 m", "609.6 cm", "0.9144 m", "7 ft 6 in"})
    void trees_from_three_to_twenty_feet_are_served_ends_included(String height) {
        assertThat(read("{\"tree\": {\"height\": \"" + height + "\"}}").tree().height()).isEqualTo(Length.read(height).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.99 ft", "20.01 ft", "0 ft", "91 cm", "6.1 m", "9", "nine feet", "-9 ft", "", "9 ft ft", "900 ft"})
    void any_other_height_is_told_with_what_is_served(String height) {
        BriefFault fault = only(faults("{\"tree\": {\"height\": \"" + height + "\"}}"));
        assertThat(fault.field()).isEqualTo("tree.height");
        assertThat(fault.value()).isEqualTo(height);
        assertThat(fault.mend()).contains("with a unit").contains("3 ft to 20 ft").contains("7 ft 6 in");
    }

    @ParameterizedTest
    @CsvSource({"62 in, 1.5748", "157 cm, 1.57", "16.2 in, 0.41148", "108 in, 2.7432", "9 ft, 2.7432"})
    void a_measured_diameter_replaces_the_usual_one(String diameter, double metres) {
        assertThat(read(withTree("\"widestDiameter\": \"" + diameter + "\"")).tree().widestDiameter().metres()).isCloseTo(metres, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"15 in", "9 ft 1 in", "62", "wide", "0 in", ""})
    void a_diameter_that_no_such_tree_has_is_told_for_this_height(String diameter) {
        BriefFault fault = only(faults(withTree("\"widestDiameter\": \"" + diameter + "\"")));
        assertThat(fault.field()).isEqualTo("tree.widestDiameter");
        assertThat(fault.value()).isEqualTo(diameter);
        assertThat(fault.mend()).contains("tree of 9 ft").contains("62 in");
    }

    @Test
    void every_word_of_every_choice_is_understood() {
        for (Fullness fullness : Fullness.values()) {
            assertThat(read(withTree("\"fullness\": \"" + fullness.word() + "\"")).tree().fullness()).isEqualTo(fullness);
        }
        for (SeenFrom seenFrom : SeenFrom.values()) {
            assertThat(read(withTree("\"seenFrom\": \"" + seenFrom.word() + "\"")).tree().seenFrom()).isEqualTo(seenFrom);
        }
        for (Abundance abundance : Abundance.values()) {
            assertThat(read(with("\"abundance\": \"" + abundance.word() + "\"")).abundance()).isEqualTo(abundance);
        }
    }

    @Test
    void the_words_are_the_trade_s() {
        assertThat(Word.words(Fullness.class)).containsExactly("sparse", "medium", "full");
        assertThat(Word.words(SeenFrom.class)).containsExactly("corner", "wall", "bay", "round");
        assertThat(Word.words(Abundance.class)).containsExactly("restrained", "generous", "lavish");
    }

    @Test
    void corner_wall_bay_and_round_are_quarters_of_a_turn() {
        assertThat(SeenFrom.values()).extracting(SeenFrom::degrees).containsExactly(90, 180, 270, 360);
        assertThat(SeenFrom.BAY.share()).isEqualTo(0.75);
        assertThat(SeenFrom.WALL.radians()).isCloseTo(Math.PI, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"fullness, Full", "fullness, bushy", "seenFrom, everywhere", "seenFrom, ''"})
    void an_unknown_word_is_told_with_the_words_that_are_known(String field, String word) {
        BriefFault fault = only(faults(withTree("\"" + field + "\": \"" + word + "\"")));
        assertThat(fault.field()).isEqualTo("tree." + field);
        assertThat(fault.value()).isEqualTo(word);
        assertThat(fault.mend()).contains(field.equals("fullness") ? "sparse, medium, full" : "corner, wall, bay, round");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"true\"", "1", "\"yes\"", "[]"})
    void yes_or_no_is_true_or_false_without_quotes(String value) {
        assertThat(only(faults(withTree("\"lit\": " + value)))).satisfies(fault -> {
            assertThat(fault.field()).isEqualTo("tree.lit");
            assertThat(fault.mend()).contains("true or false");
        });
        assertThat(read(withTree("\"lit\": true, \"real\": true")).tree()).matches(tree -> tree.lit() && tree.real());
    }

    @Test
    void room_and_household_are_read() {
        Brief brief = read(with("\"room\": {\"ceiling\": \"10 ft\", \"nearHeat\": true}, \"household\": {\"toddlers\": true, \"pets\": true}"));
        assertThat(brief.room().ceiling()).contains(Length.ofFeet(10));
        assertThat(brief.room().nearHeat()).isTrue();
        assertThat(brief.household()).isEqualTo(new Household(true, true));
    }

    @Test
    void a_ceiling_lower_than_the_tree_is_told_with_the_tree() {
        BriefFault fault = only(faults(with("\"room\": {\"ceiling\": \"8 ft\"}")));
        assertThat(fault.field()).isEqualTo("room.ceiling");
        assertThat(fault.value()).isEqualTo("8 ft");
        assertThat(fault.mend()).contains("tree of 9 ft").contains("lower tree");
        assertThat(read(with("\"room\": {\"ceiling\": \"9 ft\"}")).room().ceiling()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"10", "3 ft", "61 ft", "high"})
    void a_ceiling_that_no_room_has_is_told(String ceiling) {
        List<BriefFault> faults = faults("{\"tree\": {\"height\": \"3 ft\"}, \"room\": {\"ceiling\": \"" + ceiling + "\"}}");
        assertThat(only(faults).field()).isEqualTo("room.ceiling");
        assertThat(only(faults).mend()).contains("4 ft to 60 ft");
    }

    private static BriefFault only(List<BriefFault> faults) {
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }
}
