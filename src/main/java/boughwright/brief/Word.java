package boughwright.brief;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** A choice that files and rules write as a lower-case word with hyphens. */
public interface Word {

    String name();

    /** The word: {@code SEEN_FROM} → {@code seen-from}. */
    default String word() {
        return Written.WORDS.computeIfAbsent(this, w -> w.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Each word is written once: shortlists ask for those of every product. */
    final class Written {

        private static final Map<Word, String> WORDS = new ConcurrentHashMap<>();

        private Written() {
        }
    }

    static <W extends Enum<W> & Word> Optional<W> read(Class<W> choices, String word) {
        return Arrays.stream(choices.getEnumConstants()).filter(c -> c.word().equals(word)).findFirst();
    }

    static <W extends Enum<W> & Word> List<String> words(Class<W> choices) {
        return Arrays.stream(choices.getEnumConstants()).map(Word::word).toList();
    }
}
