package boughwright.brief;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A choice that files and rules write as a lower-case word with hyphens. */
public interface Word {

    String name();

    /** The word: {@code SEEN_FROM} → {@code seen-from}. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <W extends Enum<W> & Word> Optional<W> read(Class<W> choices, String word) {
        return Arrays.stream(choices.getEnumConstants()).filter(c -> c.word().equals(word)).findFirst();
    }

    static <W extends Enum<W> & Word> List<String> words(Class<W> choices) {
        return Arrays.stream(choices.getEnumConstants()).map(Word::word).toList();
    }
}
