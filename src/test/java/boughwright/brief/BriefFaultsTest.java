package boughwright.brief;

import static boughwright.brief.BriefFixture.faults;
import static boughwright.brief.BriefFixture.with;
import static boughwright.brief.BriefFixture.withTree;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BriefFaultsTest {

    @Test
    void a_brief_without_a_height_is_told_that_it_is_missing() {
        for (String json : new String[] {"{}", "{\"tree\": {}}", "{\"look\": \"frost\"}"}) {
            assertThat(faults(json)).singleElement().satisfies(fault -> {
                assertThat(fault.field()).isEqualTo("tree.height");
                assertThat(fault.value()).isEmpty();
                assertThat(fault.sentence()).startsWith("tree.height is missing. Write the height");
            });
        }
    }

    @Test
    void a_field_that_is_unknown_is_told_at_every_level_with_those_that_are_known() {
        assertThat(faults(with("\"loook\": \"frost\""))).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo("loook");
            assertThat(fault.value()).isEqualTo("frost");
            assertThat(fault.mend()).contains("tree, room, household, look, palette, abundance, budget, owned");
        });
        assertThat(faults(withTree("\"colour\": \"green\""))).extracting(BriefFault::field).containsExactly("tree.colour");
        assertThat(faults(with("\"room\": {\"floor\": 3}"))).extracting(BriefFault::field).containsExactly("room.floor");
        assertThat(faults(with("\"household\": {\"dogs\": 2}"))).extracting(BriefFault::field).containsExactly("household.dogs");
        assertThat(faults("{\"tree\": {\"height\": \"9 ft\"}, \"Tree\": {}}")).extracting(BriefFault::field).containsExactly("Tree");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{\"tree\": {\"height\": 9}} | tree.height | 9",
        "{\"tree\": {\"height\": [\"9 ft\"]}} | tree.height | [\"9 ft\"]",
        "{\"tree\": {\"height\": \"9 ft\", \"widestDiameter\": 62}} | tree.widestDiameter | 62",
        "{\"tree\": {\"height\": \"9 ft\", \"fullness\": true}} | tree.fullness | true",
        "{\"tree\": {\"height\": \"9 ft\"}, \"room\": \"small\"} | room | small",
        "{\"tree\": {\"height\": \"9 ft\"}, \"room\": {\"ceiling\": 10}} | room.ceiling | 10",
        "{\"tree\": {\"height\": \"9 ft\"}, \"household\": 2} | household | 2",
        "{\"tree\": {\"height\": \"9 ft\"}, \"look\": 1} | look | 1",
        "{\"tree\": {\"height\": \"9 ft\"}, \"abundance\": {}} | abundance | {}"})
    void a_value_of_the_wrong_kind_is_told_with_its_field(String json, String field, String value) {
        assertThat(faults(json)).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo(field);
            assertThat(fault.value()).isEqualTo(value);
            assertThat(fault.mend()).isNotBlank();
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{\"tree\": {\"height\": \"9 ft\", \"lit\": null}} | tree.lit",
        "{\"tree\": {\"height\": \"9 ft\", \"widestDiameter\": null}} | tree.widestDiameter",
        "{\"tree\": {\"height\": null}} | tree.height",
        "{\"tree\": {\"height\": \"9 ft\"}, \"room\": null} | room",
        "{\"tree\": {\"height\": \"9 ft\"}, \"look\": null} | look",
        "{\"tree\": {\"height\": \"9 ft\"}, \"palette\": null} | palette",
        "{\"tree\": {\"height\": \"9 ft\"}, \"budget\": null} | budget",
        "{\"tree\": {\"height\": \"9 ft\"}, \"owned\": null} | owned"})
    void null_is_told_as_something_to_leave_out(String json, String field) {
        assertThat(faults(json)).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo(field);
            assertThat(fault.value()).isEqualTo("null");
            assertThat(fault.mend()).contains("Leave the field out");
        });
    }

    @Test
    void all_faults_are_told_at_once_each_with_field_value_and_mend() {
        var faults = faults("""
                {"tree": {"height": "40 ft", "fullness": "bushy", "lit": "no", "age": 3},
                 "room": {"ceiling": "tall"}, "household": {"toddlers": 1}, "look": "moon", "palette": {"main": "red"},
                 "abundance": "heaps", "budget": "$5", "owned": [{"sku": "A", "quantity": 0}], "extra": {"a": 1}}""");
        assertThat(faults).extracting(BriefFault::field).containsExactlyInAnyOrder("tree.height", "tree.fullness", "tree.lit", "tree.age",
                "room.ceiling", "household.toddlers", "look", "palette.main", "palette.second", "palette.spark", "palette.ground", "abundance",
                "budget", "owned[0].quantity", "extra");
        assertThat(faults).allSatisfy(fault -> assertThat(fault.sentence()).contains(fault.field()).contains(fault.value()).contains(fault.mend()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "[]", "\"9 ft\"", "9", "true", "null"})
    void what_is_no_json_object_is_one_fault_with_an_example(String text) {
        assertThat(faults(text)).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo("brief");
            assertThat(fault.mend()).contains("{ \"tree\": { \"height\": \"9 ft\" } }");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{'tree': 1} | line 1, column 2",
        "{\"tree\": {\"height\": \"9 ft\"} | line 1",
        "{\"tree\": {\"height\": \"9 ft\"}} tail | line 1",
        "{\"tree\": {\"height\": NaN}} | line 1",
        "{\"tree\": {\"height\": \"9 ft\",}} | line 1, column 28"})
    void what_is_no_json_is_one_fault_that_names_line_and_column(String text, String where) {
        assertThat(faults(text)).singleElement().satisfies(fault -> assertThat(fault.sentence()).contains(where).contains("no JSON"));
    }

    @Test
    void the_line_is_counted_from_one() {
        assertThat(faults("{\n  \"tree\": {\n    \"height\": oops\n  }\n}")).singleElement()
                .satisfies(fault -> assertThat(fault.sentence()).contains("line 3, column"));
    }

    @Test
    void a_key_that_stands_twice_is_a_fault_and_not_the_last_one_silently() {
        assertThat(faults("{\"tree\": {\"height\": \"9 ft\", \"height\": \"8 ft\"}}")).singleElement()
                .satisfies(fault -> assertThat(fault.sentence()).contains("height").contains("line 1, column"));
        assertThat(faults("{\"tree\": {\"height\": \"9 ft\"}, \"tree\": {\"height\": \"8 ft\"}}")).hasSize(1);
    }

    @Test
    void a_text_nested_without_end_is_a_fault() {
        assertThat(faults("[".repeat(100_000))).hasSize(1);
    }
}
