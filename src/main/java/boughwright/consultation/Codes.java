package boughwright.consultation;

import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Codes that people can say aloud: two short words with a digit between, {@code kelp-4-moss} in addresses and {@code KELP 4 MOSS}
 * on screen. No word sounds like another, and none can be taken for a digit.
 */
final class Codes {

    private static final List<String> WORDS = List.of(
            "acorn", "amber", "apple", "ash", "aspen", "aster", "basil", "birch", "bloom", "bough", "bramble", "brook", "bud", "cedar", "cherry",
            "clove", "clover", "cone", "copper", "coral", "crane", "daisy", "dell", "dove", "ember", "fern", "fig", "finch", "flax", "foxglove",
            "frost", "garnet", "ginger", "gorse", "grove", "hazel", "heath", "heron", "holly", "hop", "iris", "ivy", "juniper", "kelp", "lark",
            "larch", "laurel", "lilac", "linden", "linen", "lotus", "maple", "meadow", "mint", "moss", "myrtle", "nettle", "nutmeg", "oak", "olive",
            "opal", "orchid", "osier", "otter", "pearl", "pebble", "peony", "pepper", "pine", "plum", "poppy", "quail", "quartz", "quince", "reed",
            "robin", "rose", "rowan", "rush", "saffron", "sage", "sedge", "sloe", "sorrel", "spruce", "star", "swan", "tansy", "teasel", "thistle",
            "thyme", "tulip", "umber", "velvet", "violet", "walnut", "willow", "wren", "yarrow", "yew");

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
}
