package boughwright.house;

import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.rulebook.NumberInterval;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * The heights of trees that a row is about, as somebody has typed them: {@code 8 ft}, {@code 7 ft 6 in}, {@code 240 cm}.
 *
 * @param from blank together with {@code to} when the row is about every height
 * @param above whether {@code from} itself is left out
 * @param upTo whether {@code to} itself is meant too
 */
public record Heights(String from, boolean above, String to, boolean upTo) {

    public static final Heights ANY = new Heights("", false, "", true);
    /** The heights that a table may be asked for, in feet. */
    static final NumberInterval ALLOWED = new NumberInterval(feet(Tree.LEAST_HEIGHT), true, feet(Tree.GREATEST_HEIGHT), true);

    public Heights {
        from = from.strip();
        to = to.strip();
    }

    public boolean any() {
        return from.isEmpty() && to.isEmpty();
    }

    /** In feet to the millionth, as tables hold heights; empty when the text is no length. */
    static Optional<BigDecimal> feet(String text) {
        return Length.read(text).map(Heights::feet);
    }

    private static BigDecimal feet(Length length) {
        return BigDecimal.valueOf(length.feet()).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
    }

    /** The heights in feet; empty when either end cannot be read or no height lies between them. */
    Optional<NumberInterval> interval() {
        if (any()) {
            return Optional.of(ALLOWED);
        }
        Optional<BigDecimal> low = feet(from);
        Optional<BigDecimal> high = feet(to);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        int order = low.get().compareTo(high.get());
        return order < 0 || order == 0 && !above && upTo ? Optional.of(new NumberInterval(low.get(), !above, high.get(), upTo)) : Optional.empty();
    }

    static Heights of(NumberInterval feet) {
        return new Heights(LengthText.ofFeet(feet.from()), !feet.fromIncluded(), LengthText.ofFeet(feet.to()), feet.toIncluded());
    }
}
