package boughwright.rulebook;

import boughwright.text.Language;
import boughwright.text.Text;
import boughwright.text.Words;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Reads what a rulebook's sentences are in other languages: {@code words/de.json} and its sisters, each one object from the exact English
 * text to its translation. A rulebook may come without any of them.
 */
final class RuleWords {

    private static final ObjectMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    private static final Pattern PLACE = Pattern.compile("\\{[a-z-]+}");

    private RuleWords() {
    }

    /** @param faults to which is added what is wrong; such a file brings no words */
    static Words read(Rulebook.Source source, List<RulebookFault> faults) throws IOException {
        Map<Language, Map<String, String>> words = new EnumMap<>(Language.class);
        for (Language language : Language.values()) {
            String file = "words/" + language.tag() + ".json";
            String json = text(source, file);
            if (json != null) {
                words.put(language, read(file, json, faults));
            }
        }
        return words.isEmpty() ? Words.NONE : new Words(words);
    }

    private static String text(Rulebook.Source source, String file) throws IOException {
        try {
            return source.read(file);
        } catch (NoSuchFileException | FileNotFoundException absent) {
            return null;
        }
    }

    private static Map<String, String> read(String file, String json, List<RulebookFault> faults) {
        Map<String, String> words = new TreeMap<>();
        try {
            JsonNode root = JSON.readTree(json);
            if (!root.isObject()) {
                faults.add(RulebookFault.ofFile(file, 1, Text.of("rulebook.words.object")));
            }
            root.fields().forEachRemaining(field -> {
                if (!field.getValue().isTextual() || field.getValue().asText().isBlank()) {
                    faults.add(RulebookFault.ofFile(file, 0, Text.of("rulebook.words.text", field.getKey())));
                } else if (!places(field.getKey()).equals(places(field.getValue().asText()))) {
                    faults.add(RulebookFault.ofFile(file, 0, Text.of("rulebook.words.places", field.getKey())));
                } else {
                    words.put(field.getKey(), field.getValue().asText());
                }
            });
        } catch (JsonProcessingException e) {
            faults.add(RulebookFault.ofFile(file, e.getLocation() == null ? 0 : e.getLocation().getLineNr(), Text.of("rulebook.words.json")));
        }
        return words;
    }

    private static TreeSet<String> places(String text) {
        TreeSet<String> places = new TreeSet<>();
        PLACE.matcher(text).results().forEach(place -> places.add(place.group()));
        return places;
    }
}
