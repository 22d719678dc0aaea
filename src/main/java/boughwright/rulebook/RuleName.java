package boughwright.rulebook;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A rule's name, which carries both its stable id and the sentence that a customer reads: {@code "S-04: A full tree swallows colour"}.
 *
 * <p>The id is one capital letter, a hyphen and two or three digits. It stays the same when the sentence is reworded, so that a saved
 * reason still finds its rule. Names are ordered by letter, then by number.
 *
 * @param id       such as {@code S-04}
 * @param sentence what follows the colon, never blank
 */
public record RuleName(String id, String sentence) implements Comparable<RuleName> {

    private static final Pattern FORM = Pattern.compile("([A-Z]-\\d{2,3}): (\\S.*)");
    private static final Comparator<RuleName> ORDER = Comparator.<RuleName>comparingInt(name -> name.id.charAt(0))
            .thenComparingInt(name -> Integer.parseInt(name.id.substring(2)))
            .thenComparing(RuleName::id)
            .thenComparing(RuleName::sentence);

    /** Reads a full rule name; empty when it does not have the form. */
    static Optional<RuleName> read(String name) {
        var parts = FORM.matcher(name);
        return parts.matches() ? Optional.of(new RuleName(parts.group(1), parts.group(2))) : Optional.empty();
    }

    @Override
    public int compareTo(RuleName other) {
        return ORDER.compare(this, other);
    }

    /** The full name, as the rule file has it. */
    @Override
    public String toString() {
        return id + ": " + sentence;
    }
}
