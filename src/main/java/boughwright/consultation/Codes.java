package boughwright.consultation;

import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Codes that people can say aloud: two short words with a digit between, {@code kelp-4-moss} in addresses and {@code KELP 4 MOSS}
 * on screen. Letters stand in words alone, so that none is taken for another or for a digit; any two words differ by two slips of the pen, by
 * three where they sound alike.
 */
final class Codes {

    static final List<String> WORDS = List.of(
            "acorn", "amber", "apple", "ash", "aspen", "aster", "basil", "birch", "bloom", "bough", "bracken", "bramble", "brook", "bud",
            "cedar", "cherry", "clove", "cone", "copper", "coral", "crane", "daisy", "dell", "dove", "fennel", "fern", "fig", "finch",
            "flax", "foxglove", "frost", "garnet", "ginger", "gorse", "grove", "hawthorn", "hazel", "heath", "heron", "holly", "hop",
            "iris", "ivy", "jasmine", "juniper", "kelp", "lark", "laurel", "lilac", "linen", "lotus", "magpie", "maple", "meadow", "mint",
            "moss", "myrtle", "nettle", "nutmeg", "oak", "olive", "opal", "orchid", "osier", "otter", "pearl", "pebble", "peony", "pepper",
            "pine", "plum", "poppy", "quail", "quartz", "quince", "reed", "robin", "rose", "rowan", "saffron", "sage", "sedge", "sloe",
            "sorrel", "spruce", "star", "swan", "tansy", "teasel", "thistle", "thyme", "tulip", "vanilla", "velvet", "violet", "walnut",
            "willow", "wren", "yarrow", "yew");

    private static final Pattern FORM = Pattern.compile("([a-z]+)[\\s-]*([2-9])[\\s-]*([a-z]+)");
    private static final SecureRandom RANDOM = new SecureRandom();

    private Codes() {
    }

    /** One of some seventy thousand; whether it is free the caller must see. */
    static String any() {
        return word() + "-" + (2 + RANDOM.nextInt(8)) + "-" + word();
    }

    private static String word() {
        return WORDS.get(RANDOM.nextInt(WORDS.size()));
    }

    /** A code as somebody typed it, with spaces, hyphens or neither, in any case; empty when it has another form. */
    static Optional<String> read(String typed) {
        Matcher code = FORM.matcher(typed.strip().toLowerCase(Locale.ROOT));
        return code.matches() ? Optional.of(code.group(1) + "-" + code.group(2) + "-" + code.group(3)) : Optional.empty();
    }

    /** The code as it is shown and said: {@code KELP 4 MOSS}. */
    static String spoken(String code) {
        return code.replace('-', ' ').toUpperCase(Locale.ROOT);
    }
}
