package boughwright.text;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * Translations of words that are no messages, such as a shop's house rules: by the exact English text. A text without one, as one that
 * staff have written, is told as it stands.
 */
public record Words(Map<Language, Map<String, String>> translations) {

    public static final Words NONE = new Words(Map.of());

    public Words {
        Map<Language, Map<String, String>> copy = new EnumMap<>(Language.class);
        translations.forEach((language, words) -> copy.put(language, Map.copyOf(words)));
        translations = copy;
    }

    /** Always, for other words: how something is told in another language is no part of what it is, so looks that differ in that alone are equal. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Words;
    }

    @Override
    public int hashCode() {
        return 1;
    }

    @Override
    public String toString() {
        return "Words";
    }

    /** A text in the language that is spoken. */
    public String of(String english) {
        Map<String, String> spoken = translations.get(Language.now());
        return Text.told.apply(spoken == null ? english : spoken.getOrDefault(english, english));
    }

    /** What it brings for one language, in the order of the English texts. */
    public Map<String, String> of(Language language) {
        return new TreeMap<>(translations.getOrDefault(language, Map.of()));
    }
}
