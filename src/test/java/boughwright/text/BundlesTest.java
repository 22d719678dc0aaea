package boughwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The bundles of all languages say the same, each in its own way. */
class BundlesTest {

    private static final Path FOLDER = Path.of("src/main/resources/boughwright/text");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)[,}]");
    private static final Map<String, String> ENGLISH = bundle(Language.ENGLISH);

    private static Map<String, String> bundle(Language language) {
        Properties messages = new Properties();
        try (Reader file = Files.newBufferedReader(FOLDER.resolve("messages" + (language == Language.ENGLISH ? "" : "_" + language.tag()) + ".properties"),
                StandardCharsets.UTF_8)) {
            messages.load(file);
        } catch (IOException missing) {
            throw new IllegalStateException(missing);
        }
        Map<String, String> sorted = new TreeMap<>();
        messages.forEach((key, value) -> sorted.put((String) key, (String) value));
        return sorted;
    }

    @ParameterizedTest
    @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void each_language_has_every_message_and_no_other(Language language) {
        TreeSet<String> missing = new TreeSet<>(ENGLISH.keySet());
        missing.removeAll(bundle(language).keySet());
        TreeSet<String> superfluous = new TreeSet<>(bundle(language).keySet());
        superfluous.removeAll(ENGLISH.keySet());
        assertThat(missing).as("missing").isEmpty();
        assertThat(superfluous).as("superfluous").isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void no_message_stands_twice_and_none_is_blank(Language language) throws IOException {
        Path file = FOLDER.resolve("messages" + (language == Language.ENGLISH ? "" : "_" + language.tag()) + ".properties");
        List<String> keys = Files.readAllLines(file).stream().filter(l -> l.matches("[a-z][^=\\s]*=.*")).map(l -> l.substring(0, l.indexOf('='))).toList();
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(bundle(language)).allSatisfy((key, value) -> assertThat(value).as(key).isNotEmpty());
        assertThat(bundle(language).entrySet().stream().filter(e -> e.getValue().isBlank()).map(Map.Entry::getKey)).allMatch(k -> ENGLISH.get(k).isBlank());
    }

    @ParameterizedTest
    @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void each_message_has_the_places_of_the_english_one(Language language) {
        List<String> wrong = new ArrayList<>();
        bundle(language).forEach((key, value) -> {
            if (ENGLISH.containsKey(key) && !places(value).equals(places(ENGLISH.get(key)))) {
                wrong.add(key + ": " + places(value) + " instead of " + places(ENGLISH.get(key)));
            }
        });
        assertThat(wrong).isEmpty();
    }

    /** A language may need more choices than English, never fewer numbers told apart: what is said of one thing is not said of many. */
    @ParameterizedTest
    @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void each_message_tells_the_same_numbers_apart(Language language) {
        List<String> wrong = new ArrayList<>();
        bundle(language).forEach((key, value) -> {
            if (ENGLISH.containsKey(key) && !choices(key, value, language).containsAll(choices(key, ENGLISH.get(key), Language.ENGLISH))) {
                wrong.add(key + ": " + choices(key, value, language) + " instead of " + choices(key, ENGLISH.get(key), Language.ENGLISH));
            }
        });
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void every_message_can_be_filled_and_leaves_no_place_open(Language language) {
        bundle(language).keySet().forEach(key -> Text.in(language, () -> {
            String filled = Text.of(key, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2);
            assertThat(filled).as(key).doesNotContainPattern("\\{\\d");
        }));
    }

    @ParameterizedTest
    @EnumSource
    void no_message_holds_a_straight_apostrophe_that_would_swallow_a_place(Language language) {
        bundle(language).forEach((key, value) -> assertThat(value.replace("'{'", "").replace("'}'", "")).as(key).doesNotContain("'"));
    }

    @Test
    void a_message_that_a_language_lacks_is_told_in_english() {
        assertThat(Text.in(Language.GERMAN, () -> Text.of("layer.lights"))).isEqualTo(bundle(Language.GERMAN).get("layer.lights"));
        assertThat(Text.in(Language.GERMAN, () -> Text.or("no.such.key", "as the shop says"))).isEqualTo("as the shop says");
    }

    private static TreeSet<String> places(String pattern) {
        TreeSet<String> places = new TreeSet<>();
        Matcher place = PLACE.matcher(pattern);
        while (place.find()) {
            places.add(place.group(1));
        }
        return places;
    }

    /** The limits of every choice on the first level and within choices, by its place. */
    private static TreeSet<String> choices(String key, String pattern, Language language) {
        TreeSet<String> found = new TreeSet<>();
        try {
            MessageFormat format = new MessageFormat(pattern, language.locale());
            Format[] formats = format.getFormatsByArgumentIndex();
            for (int i = 0; i < formats.length; i++) {
                if (formats[i] instanceof ChoiceFormat choice) {
                    found.add(i + Arrays.toString(choice.getLimits()));
                }
            }
        } catch (IllegalArgumentException unreadable) {
            throw new IllegalStateException(key + " of " + language + " is no pattern: " + pattern, unreadable);
        }
        return found;
    }
}
