package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.text.Language;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One proposal in several languages and units. */
class ToldAgainTest {

    private static final String BRIEF = "{\"tree\": {\"height\": \"7 ft 6 in\"}, \"budget\": \"650.00\", \"owned\": [{\"text\": \"24 matte red 80 mm balls\"}]}";

    private static Proposal made(Language language) {
        return Text.in(language, () -> ((Outcome.Made) KioskFixture.designer().propose(BRIEF, Adjustments.NONE, Designer.SEED)).proposal());
    }

    @ParameterizedTest
    @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void a_proposal_told_again_is_the_one_that_would_have_been_made_in_that_language(Language language) {
        Proposal english = made(Language.ENGLISH);
        Proposal told = Text.in(language, () -> KioskFixture.designer().told(english, Units.FEET));
        assertThat(text(language, told)).isEqualTo(text(language, made(language)));
        assertThat(text(language, told)).isNotEqualTo(text(Language.ENGLISH, english));
        assertThat(text(Language.ENGLISH, KioskFixture.designer().told(told, Units.FEET))).isEqualTo(text(Language.ENGLISH, english));
    }

    @Test
    void numbers_codes_and_fields_of_the_json_are_the_same_in_every_language() {
        Map<String, String> english = numbers("", ProposalJson.of(made(Language.ENGLISH)), new TreeMap<>());
        for (Language language : Language.values()) {
            Proposal proposal = made(language);
            assertThat(Text.in(language, () -> numbers("", ProposalJson.of(proposal), new TreeMap<>()))).isEqualTo(english);
            assertThat(Text.in(language, () -> PickList.csv(proposal)).replaceAll("(?m)^[^,]*own[^\n]*$", "")).isEqualTo(PickList.csv(made(Language.ENGLISH)).replaceAll("(?m)^[^,]*own[^\n]*$", ""));
        }
    }

    @Test
    void other_units_change_words_and_nothing_else() {
        Proposal feet = made(Language.ENGLISH);
        Proposal metres = KioskFixture.designer().told(feet, Units.METRES);
        assertThat(Phrases.title(metres.brief())).contains("2.29 m");
        assertThat(metres.layout()).isEqualTo(feet.layout());
        assertThat(metres.kit().total()).isEqualTo(feet.kit().total());
        assertThat(metres.plan().steps()).noneSatisfy(step -> assertThat(step.text() + step.places()).containsPattern("\\d (?:ft|in) (?:up|left)"));
        assertThat(metres.plan().steps()).anySatisfy(step -> assertThat(step.places().toString()).contains(" m up"));
        assertThat(text(Language.ENGLISH, KioskFixture.designer().told(metres, Units.FEET))).isEqualTo(text(Language.ENGLISH, feet));
    }

    private static String text(Language language, Proposal proposal) {
        return Text.in(language, () -> ProposalJson.text(ProposalJson.of(proposal)));
    }

    /** Every number, flag and field by its path; of texts only their paths. */
    private static Map<String, String> numbers(String path, JsonNode node, Map<String, String> into) {
        if (node.isObject()) {
            node.fields().forEachRemaining(f -> numbers(path + "." + f.getKey(), f.getValue(), into));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                numbers(path + "[" + i + "]", node.get(i), into);
            }
        } else {
            into.put(path, node.isTextual() ? "" : node.asText());
        }
        return into;
    }
}
