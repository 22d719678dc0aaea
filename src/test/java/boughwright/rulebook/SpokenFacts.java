package boughwright.rulebook;

import boughwright.brief.Abundance;
import boughwright.brief.Fullness;
import boughwright.brief.Household;
import boughwright.brief.Room;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.brief.Word;
import boughwright.measure.Length;
import boughwright.needs.Climb;
import boughwright.needs.Density;
import boughwright.needs.LightLoad;
import boughwright.needs.TopperReach;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words in which a case file tells the facts that rules are run over: {@code a tree of 9 ft, lit and a bare room}. */
final class SpokenFacts {

    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";

    /** A way to tell a fact, and the fact that it tells; none when some word in it is unknown. */
    private record Phrase(Pattern form, Function<MatchResult, Optional<?>> fact) {

        Phrase(String form, Function<MatchResult, Optional<?>> fact) {
            this(Pattern.compile(form), fact);
        }
    }

    private static final List<Phrase> PHRASES = List.of(
            new Phrase("a tree of ([^,]+)((?:, [a-z]+)*)", words -> tree(words.group(1), words.group(2))),
            new Phrase("a room with a ceiling of (.+)", words -> Length.read(words.group(1)).map(ceiling -> new Room(Optional.of(ceiling), false))),
            new Phrase("a room near heat", words -> Optional.of(new Room(Optional.empty(), true))),
            new Phrase("a bare room", words -> Optional.of(new Room(Optional.empty(), false))),
            new Phrase("toddlers", words -> Optional.of(new Household(true, false))),
            new Phrase("pets", words -> Optional.of(new Household(false, true))),
            new Phrase("a palette", words -> Optional.of(RulebookFixture.brief("9 ft").palette())),
            new Phrase("the look (\\S+)", words -> RulebookFixture.shipped().choices().look(words.group(1))),
            new Phrase("a ([a-z]+) scheme", words -> Word.read(Abundance.class, words.group(1))),
            new Phrase("(\\d+) strings of " + NUMBER + " W(?:, (\\d+) end to end)?", words -> Optional.of(new LightLoad(Integer.parseInt(words.group(1)),
                    Double.parseDouble(words.group(2)), words.group(3) == null ? 0 : Integer.parseInt(words.group(3))))),
            new Phrase("a climb to " + NUMBER + " m without a ladder", words -> Optional.of(new Climb(Double.parseDouble(words.group(1)), 0, false))),
            new Phrase("a climb to " + NUMBER + " m on a (\\d+) ft ladder",
                    words -> Optional.of(new Climb(Double.parseDouble(words.group(1)), Integer.parseInt(words.group(2)), false))),
            new Phrase("a climb to " + NUMBER + " m beyond any ladder", words -> Optional.of(new Climb(Double.parseDouble(words.group(1)), 0, true))),
            new Phrase("a topper up to " + NUMBER + " m", words -> Optional.of(new TopperReach(Double.parseDouble(words.group(1))))),
            new Phrase("(\\d+) stems on " + NUMBER + " ft",
                    words -> Optional.of(new Density(Integer.parseInt(words.group(1)), Double.parseDouble(words.group(2))))));

    private SpokenFacts() {
    }

    static List<Object> read(String text, CaseLine line) {
        List<Object> facts = new ArrayList<>();
        for (String phrase : text.split(" and ")) {
            Object fact = fact(phrase).orElseThrow(() -> line.fault("no fact is known as \"" + phrase + "\""));
            // A brief has one of each: "toddlers and pets" would be two households, which no rule ever meets.
            if (facts.stream().anyMatch(other -> other.getClass() == fact.getClass())) {
                throw line.fault("a second " + fact.getClass().getSimpleName() + ", \"" + phrase + "\"");
            }
            facts.add(fact);
        }
        return facts;
    }

    private static Optional<?> fact(String text) {
        for (Phrase phrase : PHRASES) {
            Matcher words = phrase.form().matcher(text);
            if (words.matches()) {
                return phrase.fact().apply(words);
            }
        }
        return Optional.empty();
    }

    private static Optional<Tree> tree(String height, String words) {
        List<String> fields = new ArrayList<>();
        for (String word : words.isEmpty() ? new String[0] : words.substring(2).split(", ")) {
            Optional<String> field = field(word);
            if (field.isEmpty()) {
                return Optional.empty();
            }
            fields.add(field.get());
        }
        boolean standing = Length.read(height).filter(tall -> tall.compareTo(Tree.LEAST_HEIGHT) >= 0 && tall.compareTo(Tree.GREATEST_HEIGHT) <= 0).isPresent();
        return standing ? Optional.of(RulebookFixture.brief(height, fields.toArray(String[]::new)).tree()) : Optional.empty();
    }

    private static Optional<String> field(String word) {
        if (List.of("lit", "real").contains(word)) {
            return Optional.of(word + "=true");
        }
        return Word.words(Fullness.class).contains(word) ? Optional.of("fullness=" + word)
                : Word.words(SeenFrom.class).contains(word) ? Optional.of("seenFrom=" + word)
                : Optional.empty();
    }
}
