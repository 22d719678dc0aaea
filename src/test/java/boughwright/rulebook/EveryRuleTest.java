package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.rulebook.RuleCases.Case;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class EveryRuleTest {

    static Stream<Case> cases() {
        return RuleCases.all().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void each_rule_fires_over_some_facts_and_is_silent_over_others(Case rule) {
        assertThat(fired(rule.fires())).contains(rule.id());
        assertThat(fired(rule.silent())).doesNotContain(rule.id());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void what_it_concludes_does_not_depend_on_the_order_of_the_facts(Case rule) {
        List<Object> facts = new ArrayList<>(rule.fires());
        facts.add(RulebookFixture.house());
        facts.addAll(rule.silent());
        List<Finding<Object>> expected = RulebookFixture.rules().run(facts, Object.class);
        Random random = new Random(rule.id().hashCode());
        for (int i = 0; i < 10; i++) {
            Collections.shuffle(facts, random);
            assertThat(RulebookFixture.rules().run(facts, Object.class)).isEqualTo(expected);
        }
    }

    @Test
    void no_rule_of_the_rulebook_is_without_its_case_and_no_case_without_its_rule() {
        List<String> declared = RulebookFixture.files(".drl").entrySet().stream()
                .flatMap(file -> DrlSource.read(file.getKey(), file.getValue()).rules().stream())
                .map(rule -> RuleName.read(rule.name()).orElseThrow().id()).sorted().toList();
        assertThat(RuleCases.all().stream().map(Case::id).sorted().toList()).isEqualTo(declared).doesNotHaveDuplicates();
    }

    @Test
    void each_rule_has_its_case_in_the_folder_that_is_named_as_its_file() {
        RulebookFixture.files(".drl").forEach((path, text) -> {
            List<String> declared = DrlSource.read(path, text).rules().stream().map(rule -> RuleName.read(rule.name()).orElseThrow().id()).sorted().toList();
            assertThat(RuleCases.of(CaseLine.topicOf(path)).stream().map(Case::id).sorted().toList()).as(path).isEqualTo(declared);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            S-01 fires over: a bush of 8 ft             ; "a bush of 8 ft"
            S-01 fires over: a tree of 8 furlongs       ; "a tree of 8 furlongs"
            S-01 fires over: a tree of 8 ft, lit, blue  ; "a tree of 8 ft, lit, blue"
            S-01 fires over: the look of things         ; "the look of things"
            S-01 fires over: toddlers and pets          ; a second Household
            S-01 sleeps over: a tree of 8 ft            ; a case reads
            S-01 fires over: a tree of 8 ft             ; is silent over none
            """)
    void what_a_case_file_does_not_know_is_told_with_its_file_and_line(String text, String fault) {
        List<CaseLine> lines = CaseLine.of("topper/cases.txt", List.of("# The topper", "", text));
        assertThatThrownBy(() -> RuleCases.read(lines)).isInstanceOf(AssertionError.class)
                .hasMessageContaining("topper/cases.txt:3: ").hasMessageContaining(fault);
    }

    /** A case may say of a tree all that a customer may. */
    @Test
    void a_tree_is_told_in_the_words_of_a_brief() {
        List<CaseLine> lines = CaseLine.of("topper/cases.txt", List.of(
                "S-01 fires over: a tree of 9 ft, lit, real, full, round", "S-01 silent over: a bare room"));
        assertThat(RuleCases.read(lines).get(0).fires()).singleElement()
                .isEqualTo(RulebookFixture.brief("9 ft", "lit=true", "real=true", "fullness=full", "seenFrom=round").tree());
    }

    /** A rule that is opened with an id of one kind and concludes another would be told under the wrong heading. */
    @Test
    void style_rules_are_named_s_and_safety_rules_c_as_their_folders_say() {
        Map<String, String> folders = new HashMap<>(Map.of("style/", "S-", "safety/", "C-"));
        RulebookFixture.files(".drl").forEach((path, text) -> DrlSource.read(path, text).rules().forEach(rule ->
                assertThat(rule.name()).as(path).startsWith(folders.get(path.substring(0, path.indexOf('/') + 1)))));
    }

    private static List<String> fired(List<?> facts) {
        List<Object> withHouse = new ArrayList<>(facts);
        withHouse.add(RulebookFixture.house());
        return RulebookFixture.rules().run(withHouse, Object.class).stream().map(finding -> finding.rule().id()).distinct().toList();
    }
}
