package boughwright.brief;

import boughwright.brief.OwnPieces.Kind;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads how customers describe what they own: how many, what colour, what it is, and if they say so its finish and size.
 *
 * <p>"24 matte red 80 mm balls", "ein Dutzend weiße Blüten", "luces blanco cálido para un árbol de 2,7 m". The words of each language are in {@code
 * own-words} beside this class; shades and families are what most people mean by a colour's name (common practice, no published source). A
 * description is read in whatever language it is written, so that it means the same wherever the brief is opened.
 */
final class OwnWords {

    private static final List<OwnWords> LANGUAGES = List.of(of("en"), of("de"), of("es"));
    private static final Pattern COUNT = Pattern.compile("^(\\d{1,5})(?: |$)");

    /** A file of words; of several that fit, the first is meant, so longer names stand before the shorter ones that they contain. */
    private record Vocabulary(String endings, List<String> treesWorth, Map<String, String> units, Map<String, Integer> numbers, List<List<String>> colours,
            List<List<String>> finishes, Map<String, List<String>> kinds) {
    }

    private record Named<T>(Pattern pattern, T meaning) {
    }

    private record Shade(Srgb colour, String family) {
    }

    private final List<Pattern> treesWorth;
    private final Pattern size;
    private final Map<String, String> units;
    private final Map<String, Integer> numbers;
    private final List<Named<Shade>> colours = new ArrayList<>();
    private final List<Named<String>> finishes = new ArrayList<>();
    private final List<Named<Kind>> kinds = new ArrayList<>();

    private OwnWords(Vocabulary words) {
        this.treesWorth = words.treesWorth().stream().map(Pattern::compile).toList();
        this.units = words.units();
        this.size = Pattern.compile("(?<![\\p{L}\\d])(\\d+(?:[.,]\\d+)?)[ -]?(" + String.join("|", units.keySet().stream().map(Pattern::quote).toList()) + ")(?!\\p{L})");
        this.numbers = words.numbers();
        words.colours().forEach(c -> colours.add(new Named<>(word(c.get(0), words.endings()), new Shade(Srgb.read(c.get(1)).orElseThrow(), c.get(2)))));
        words.finishes().forEach(f -> finishes.add(new Named<>(word(f.get(0), words.endings()), f.get(1))));
        words.kinds().forEach((kind, names) -> names.forEach(n -> kinds.add(new Named<>(word(n, ""), Word.read(Kind.class, kind).orElseThrow()))));
    }

    private static OwnWords of(String language) {
        try (InputStream file = OwnWords.class.getResourceAsStream("own-words/" + language + ".json")) {
            return new OwnWords(new ObjectMapper().readValue(file, new TypeReference<Vocabulary>() { }));
        } catch (IOException broken) {
            throw new IllegalStateException("own-words/" + language + ".json cannot be read", broken);
        }
    }

    private static Pattern word(String pattern, String endings) {
        return Pattern.compile("(?<!\\p{L})(?:" + pattern + ")" + endings + "(?!\\p{L})");
    }

    /** Empty when number, colour or kind cannot be made out in any language. */
    static Optional<OwnPieces> read(String text) {
        String plain = text.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
        return LANGUAGES.stream().flatMap(language -> language.read(text.strip(), plain).stream()).findFirst();
    }

    private Optional<OwnPieces> read(String text, String plain) {
        for (Pattern worth : treesWorth) {
            Matcher tree = worth.matcher(plain);
            if (tree.find()) {
                return Length.read(tree.group("height").replace('-', ' ')).filter(h -> h.compareTo(Tree.LEAST_HEIGHT) >= 0 && h.compareTo(Tree.GREATEST_HEIGHT) <= 0)
                        .flatMap(h -> read(text, tree.group("rest"), 0, Optional.of(h)));
            }
        }
        Matcher digits = COUNT.matcher(plain);
        int count = 0;
        String rest = plain;
        if (digits.find()) {
            count = Integer.parseInt(digits.group(1));
            rest = plain.substring(digits.end());
        } else {
            Optional<Map.Entry<String, Integer>> said = numbers.entrySet().stream().filter(n -> plain.startsWith(n.getKey() + " ")).findFirst();
            count = said.map(Map.Entry::getValue).orElse(0);
            rest = said.map(n -> plain.substring(n.getKey().length() + 1)).orElse(plain);
        }
        return count < 1 || count > BriefReader.MOST_OF_ONE ? Optional.empty() : read(text, rest, count, Optional.empty());
    }

    private Optional<OwnPieces> read(String text, String rest, int count, Optional<Length> worth) {
        Matcher said = size.matcher(rest);
        Optional<Length> across = said.find() ? Length.read(said.group(1) + " " + units.get(said.group(2))) : Optional.empty();
        Optional<Shade> colour = first(colours, rest);
        Optional<Kind> kind = first(kinds, rest);
        if (kind.isEmpty() || colour.isEmpty() || across.filter(a -> a.metres() < 0.005 || a.metres() > 0.6).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(new OwnPieces(text, kind.get(), count, worth, colour.get().colour(), colour.get().family(), first(finishes, rest), across));
    }

    private static <T> Optional<T> first(List<Named<T>> names, String text) {
        return names.stream().filter(n -> n.pattern().matcher(text).find()).findFirst().map(Named::meaning);
    }
}
