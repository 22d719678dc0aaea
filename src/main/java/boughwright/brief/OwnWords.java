package boughwright.brief;

import boughwright.brief.OwnPieces.Kind;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads how customers describe what they own: how many, what colour, what it is, and if they say so its finish and size.
 *
 * <p>"24 matte red 80 mm balls", "a dozen white poinsettias", "a 9 ft tree's worth of warm white lights".
 */
final class OwnWords {

    private static final Pattern TREES_WORTH = Pattern.compile("^(?:a |an |one )?(.+?) tree(?:['’]?s)?(?:['’])? worth of ");
    private static final Pattern SIZE = Pattern.compile("\\b(\\d+(?:\\.\\d+)?) ?(mm|cm|in|inch|inches|\")(?![a-z])(?: wide| long| across)?");
    private static final Pattern COUNT = Pattern.compile("^(\\d{1,5})(?: |$)");

    private static final Map<String, Integer> NUMBERS = new LinkedHashMap<>();
    /** Colour words with the shade and the family that most people mean by them (common practice, no published source). */
    private static final Map<String, String[]> COLOURS = new LinkedHashMap<>();
    private static final Map<String, String> FINISHES = new LinkedHashMap<>();
    private static final Map<String, Kind> KINDS = new LinkedHashMap<>();

    static {
        // Longer names stand before the shorter ones that they contain.
        number("half a dozen", 6);
        number("two dozen", 24);
        number("three dozen", 36);
        number("a dozen", 12);
        number("dozen", 12);
        number("a pair of", 2);
        String[] small = {"one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"};
        for (int i = 0; i < small.length; i++) {
            number(small[i], i + 1);
        }
        number("a", 1);
        number("an", 1);
        colour("warm white", "#ffdca0", "champagne");
        colour("cool white", "#eef3ff", "white");
        colour("rose gold", "#c98b78", "copper");
        colour("dark red", "#7a1f2a", "burgundy");
        colour("dark green", "#24402f", "green");
        colour("dark blue", "#1f2f55", "blue");
        colour("burgundy", "#6d1f35", "burgundy");
        colour("champagne", "#e6cfa0", "champagne");
        colour("turquoise", "#2f8f93", "blue");
        colour("copper", "#b5713a", "copper");
        colour("bronze", "#8c6239", "copper");
        colour("orange", "#d9772e", "copper");
        colour("purple", "#5e2750", "purple");
        colour("lilac", "#a58bb8", "purple");
        colour("silver", "#b9bec4", "silver");
        colour("yellow", "#e3b93c", "gold");
        colour("cream", "#efe4cf", "cream");
        colour("ivory", "#f3ead9", "cream");
        colour("brown", "#6b4a2f", "brown");
        colour("black", "#26262a", "black");
        colour("green", "#3f6b45", "green");
        colour("white", "#f4f3ef", "white");
        colour("clear", "#eef1f2", "white");
        colour("navy", "#1f2f55", "blue");
        colour("blue", "#2c5f94", "blue");
        colour("gold", "#c79a3a", "gold");
        colour("grey", "#8f9296", "silver");
        colour("gray", "#8f9296", "silver");
        colour("pink", "#d78a9c", "pink");
        colour("teal", "#2f6f7c", "blue");
        colour("plum", "#5e2750", "purple");
        colour("red", "#a3202e", "red");
        for (String[] finish : new String[][] {{"matte", "matte"}, {"matt", "matte"}, {"satin", "satin"}, {"shiny", "shiny"}, {"glossy", "shiny"},
                {"metallic", "metallic"}, {"glittery", "glitter"}, {"glittered", "glitter"}, {"glitter", "glitter"}, {"glass", "glass"}}) {
            FINISHES.put(finish[0], finish[1]);
        }
        kind(Kind.BALL, "balls?", "baubles?");
        kind(Kind.LIGHT_STRING, "(?:light )?strings?(?: of .*)?", "strands?(?: of .*)?");
        kind(Kind.LIGHTS, "lights?", "bulbs?", "leds?");
        kind(Kind.RIBBON, "ribbons?", "rolls?");
        kind(Kind.FLOWER, "flowers?", "poinsettias?", "magnolias?", "roses?", "peon(?:y|ies)", "anemones?", "dahlias?");
        kind(Kind.SPRAY, "sprays?", "picks?", "twigs?", "branch(?:es)?", "berries", "ferns?", "stems?");
        kind(Kind.ORNAMENT, "ornaments?", "stars?", "birds?", "icicles?", "bells?", "snowflakes?", "figures?", "houses?", "acorns?", "pine ?cones?",
                "drops?", "finials?");
    }

    private OwnWords() {
    }

    private static void number(String word, int value) {
        NUMBERS.put(word, value);
    }

    private static void colour(String word, String hex, String family) {
        COLOURS.put(word, new String[] {hex, family});
    }

    private static void kind(Kind kind, String... words) {
        for (String word : words) {
            KINDS.put(word, kind);
        }
    }

    /** Empty when number, colour or kind cannot be made out. */
    static Optional<OwnPieces> read(String text) {
        String rest = text.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
        Optional<Length> worth = Optional.empty();
        int count = 0;
        Matcher tree = TREES_WORTH.matcher(rest);
        if (tree.find()) {
            worth = Length.read(tree.group(1)).filter(h -> h.compareTo(Tree.LEAST_HEIGHT) >= 0 && h.compareTo(Tree.GREATEST_HEIGHT) <= 0);
            rest = rest.substring(tree.end());
            if (worth.isEmpty()) {
                return Optional.empty();
            }
        } else {
            Matcher digits = COUNT.matcher(rest);
            if (digits.find()) {
                count = Integer.parseInt(digits.group(1));
                rest = rest.substring(digits.end());
            } else {
                for (Map.Entry<String, Integer> number : NUMBERS.entrySet()) {
                    if (rest.startsWith(number.getKey() + " ")) {
                        count = number.getValue();
                        rest = rest.substring(number.getKey().length() + 1);
                        break;
                    }
                }
            }
            if (count < 1 || count > BriefReader.MOST_OF_ONE) {
                return Optional.empty();
            }
        }
        return read(text.strip(), rest, count, worth);
    }

    private static Optional<OwnPieces> read(String text, String rest, int count, Optional<Length> worth) {
        Matcher size = SIZE.matcher(rest);
        Optional<Length> across = size.find() ? Length.read(size.group(1) + " " + (size.group(2).startsWith("in") || size.group(2).equals("\"") ? "in"
                : size.group(2))) : Optional.empty();
        Optional<String> colour = COLOURS.keySet().stream().filter(w -> has(rest, w)).findFirst();
        Optional<String> finish = FINISHES.keySet().stream().filter(w -> has(rest, w)).findFirst().map(FINISHES::get);
        Optional<Kind> kind = KINDS.keySet().stream().filter(w -> has(rest, w)).findFirst().map(KINDS::get);
        if (kind.isEmpty() || colour.isEmpty() || across.filter(a -> a.metres() < 0.005 || a.metres() > 0.6).isPresent()) {
            return Optional.empty();
        }
        String[] shade = COLOURS.get(colour.get());
        return Optional.of(new OwnPieces(text, kind.get(), count, worth, Srgb.read(shade[0]).orElseThrow(), shade[1], finish, across));
    }

    private static boolean has(String text, String word) {
        return Pattern.compile("(?<![a-z])" + word + "(?![a-z])").matcher(text).find();
    }
}
