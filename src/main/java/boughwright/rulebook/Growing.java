package boughwright.rulebook;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number that grows with the surface of the tree: {@code amount} at a height of {@code from}, and as the square of the height beyond,
 * since a cone of one shape has a surface that goes with the square of its height. Written {@code 5 * (height / 12) ** 2}.
 *
 * @param amount at the height {@code from}, at least 0
 * @param from in the unit of the table's height, above 0
 */
public record Growing(BigDecimal amount, BigDecimal from) {

    private static final String NUMBER = "(\\d{1,7}(?:\\.\\d{1,9})?)";
    private static final Pattern FORM = Pattern.compile(NUMBER + "\\s*\\*\\s*\\(\\s*height\\s*/\\s*" + NUMBER + "\\s*\\)\\s*\\*\\*\\s*2");

    /** Reads an output cell; empty when it has another form or grows from nothing. */
    public static Optional<Growing> read(String cell) {
        var form = FORM.matcher(cell.strip());
        return form.matches() && new BigDecimal(form.group(2)).signum() > 0
                ? Optional.of(new Growing(new BigDecimal(form.group(1)), new BigDecimal(form.group(2)))) : Optional.empty();
    }

    /** As an output cell holds it. */
    public String cell() {
        return NumberInterval.plain(amount) + " * (height / " + NumberInterval.plain(from) + ") ** 2";
    }

    /** The number at a height of the same unit. */
    public double at(double height) {
        return amount.doubleValue() * Math.pow(height / from.doubleValue(), 2);
    }
}
