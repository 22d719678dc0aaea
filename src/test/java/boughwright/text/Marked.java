package boughwright.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** A language of the tests' own: every message is English between two marks, so that words which are no message stand out. */
public final class Marked {

    /** Signs that no message holds and that the printed plan's fonts have. */
    private static final char OPEN = '‹';
    private static final char CLOSE = '›';
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

    private Marked() {
    }

    /** From now on everything that is told is marked, on every thread. */
    public static void begin() {
        Text.told = words -> OPEN + words + CLOSE;
    }

    public static void end() {
        Text.told = words -> words;
    }

    /**
     * The words outside the marks, each with what stands round it.
     *
     * @param data words that are names or codes, not told by anybody; taken away before it is looked
     */
    public static List<String> strays(String text, Set<String> data) {
        String rest = outside(text);
        // The longest first, so that a name goes as a whole.
        for (String name : data.stream().sorted((a, b) -> b.length() - a.length()).toList()) {
            rest = rest.replace(name, " ");
        }
        // A stretch between two messages is one find, however many words it has.
        Set<String> strays = new LinkedHashSet<>();
        for (String stretch : rest.split("[|\n]")) {
            if (WORD.matcher(stretch).find()) {
                strays.add(stretch.strip().replaceAll("\\s+", " "));
            }
        }
        return List.copyOf(strays);
    }

    static String outside(String text) {
        StringBuilder rest = new StringBuilder();
        int deep = 0;
        for (char c : text.toCharArray()) {
            if (c == OPEN) {
                deep++;
            } else if (c == CLOSE) {
                deep = Math.max(0, deep - 1);
                rest.append('|');
            } else if (deep == 0) {
                rest.append(c);
            }
        }
        return rest.toString();
    }
}
