package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.text.Language;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The words of the shipped rulebook in the other languages. */
class RuleWordsTest {

    private static final Path RULES = Path.of("rules");
    private static final Pattern PLACE = Pattern.compile("\\{[a-z-]+}");
    private static final Pattern ADVICE = Pattern.compile("new Advice\\(\\s*\"(.*?)\",\\s*\"(.*?)\"\\)", Pattern.DOTALL);

    private static final Pattern ABOUT = Pattern.compile("<description>(.*?)</description>");

    /** Everything that the shipped rulebook says to people. */
    private static TreeSet<String> said() throws IOException {
        TreeSet<String> said = new TreeSet<>();
        Rulebook shipped = RulebookFixture.shipped();
        shipped.choices().looks().forEach(look -> said.addAll(List.of(look.title(), look.blurb())));
        shipped.choices().palettes().forEach(palette -> said.add(palette.title()));
        shipped.rules().forEach(rule -> said.add(rule.sentence()));
        for (String file : shipped.edition().sizing()) {
            said.add(shipped.tables().title(file));
            ABOUT.matcher(Files.readString(RULES.resolve(file))).results().forEach(about -> said.add(about.group(1)));
        }
        shipped.tables().tables().forEach(table -> table.rows().forEach(row -> said.add(table.reason(row))));
        for (String file : shipped.edition().rules()) {
            ADVICE.matcher(Files.readString(RULES.resolve(file))).results().forEach(advice -> said.addAll(List.of(advice.group(1), advice.group(2))));
        }
        said.remove("");
        return said;
    }

    @ParameterizedTest
    @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void each_language_has_every_text_of_the_shipped_rulebook_and_no_other(Language language) throws IOException {
        assertThat(RulebookFixture.shipped().words().of(language).keySet()).containsExactlyInAnyOrderElementsOf(said());
    }

    @ParameterizedTest
    @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void each_translation_has_the_places_of_the_english_text(Language language) throws IOException {
        // Read past the loader, which passes over what it refuses.
        Map<?, ?> words = new ObjectMapper().readValue(RULES.resolve("words/" + language.tag() + ".json").toFile(), TreeMap.class);
        assertThat(words).allSatisfy((english, translated) -> assertThat(places((String) translated)).as((String) english).isEqualTo(places((String) english)));
    }

    @Test
    void reasons_demands_and_cautions_are_told_in_the_language_that_is_spoken() {
        Text.in(Language.GERMAN, () -> {
            Map<String, String> german = RulebookFixture.shipped().words().of(Language.GERMAN);
            var needs = RulebookFixture.needs(RulebookFixture.brief("9 ft"));
            String english = "A tree of {height} takes {quantity} groupings of two sprays and two flowers.";
            assertThat(needs.needs()).anySatisfy(n -> assertThat(n.reason().text())
                    .startsWith(german.get(english).replace("{height}", "9 Fuß").replace("{quantity}", "3")));
            assertThat(needs.rules()).anySatisfy(r -> assertThat(r.reason().rule()).isEqualTo(german.get("Florals mix small heads with large ones")));
            assertThat(RulebookFixture.shipped().choices().looks().get(0).shownTitle()).isEqualTo(german.get("Woodland"));
        });
    }

    @Test
    void a_text_that_staff_have_written_is_told_as_they_wrote_it() {
        assertThat(Text.in(Language.GERMAN, () -> RulebookFixture.shipped().words().of("Our own sentence."))).isEqualTo("Our own sentence.");
    }

    @Test
    void a_rulebook_without_words_opens_and_speaks_english() throws IOException {
        Rulebook.Opening opening = Rulebook.open(path -> {
            if (path.startsWith("words/")) {
                throw new FileNotFoundException(path);
            }
            return Files.readString(RULES.resolve(path));
        });
        assertThat(opening).isInstanceOf(Rulebook.Opening.Open.class);
        Rulebook bare = ((Rulebook.Opening.Open) opening).rulebook();
        assertThat(Text.in(Language.GERMAN, () -> bare.choices().looks().get(0).shownTitle())).isEqualTo("Woodland");
        assertThat(bare.edition().id()).isEqualTo(RulebookFixture.shipped().edition().id());
    }

    @Test
    void words_that_are_no_json_or_lose_a_place_are_told_and_bring_nothing() throws IOException {
        List<RulebookFault> faults = new ArrayList<>();
        RuleWords.read(path -> path.equals("words/de.json") ? "{\"Keep {tail}\": \"Halte\", \"x\": 3}" : path.equals("words/es.json") ? "{" : null, faults);
        assertThat(faults).extracting(RulebookFault::file).containsExactly("words/de.json", "words/de.json", "words/es.json");
    }

    private static TreeSet<String> places(String text) {
        TreeSet<String> places = new TreeSet<>();
        PLACE.matcher(text).results().forEach(place -> places.add(place.group()));
        return places;
    }
}
