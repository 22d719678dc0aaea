package boughwright.rulebook;

import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The numbers between two ends, each end belonging to it or not.
 *
 * <p>Both ends are finite and {@code from <= to}; a single number is the closed interval from itself to itself. Units are those of the
 * table's column.
 *
 * @param from         lower end
 * @param fromIncluded whether {@code from} itself belongs to the interval
 * @param to           upper end
 * @param toIncluded   whether {@code to} itself belongs to the interval
 */
public record NumberInterval(BigDecimal from, boolean fromIncluded, BigDecimal to, boolean toIncluded) {

    private static final String NUMBER = "\\s*(-?\\d+(?:\\.\\d+)?)\\s*";
    private static final Pattern RANGE = Pattern.compile("([\\[(\\]])" + NUMBER + "\\.\\." + NUMBER + "([])\\[])");
    private static final Pattern COMPARED = Pattern.compile("(<=?|>=?)" + NUMBER);
    private static final Pattern SINGLE = Pattern.compile(NUMBER);

    public NumberInterval {
        int order = from.compareTo(to);
        if (order > 0 || order == 0 && !(fromIncluded && toIncluded)) {
            throw new IllegalArgumentException("no number lies from " + from + " to " + to);
        }
    }

    /** Reads a bounded range such as {@code [3 .. 20]}, {@code [8 .. 10)} or {@code ]12 .. 20]}, or a single number. */
    static Optional<NumberInterval> read(String cell) {
        var range = RANGE.matcher(cell.strip());
        if (range.matches()) {
            return of(new BigDecimal(range.group(2)), range.group(1).equals("["), new BigDecimal(range.group(3)), range.group(4).equals("]"));
        }
        if (SINGLE.matcher(cell).matches()) {
            var number = new BigDecimal(cell.strip());
            return of(number, true, number, true);
        }
        return Optional.empty();
    }

    /**
     * Reads an input cell of a column whose allowed values are {@code allowed}: besides what {@link #read(String)} takes, a comparison
     * ({@code < 5}, {@code >= 12}) reaches to the end of the allowed values, and {@code -} means all of them. Empty when the cell is
     * something else or names no number.
     */
    static Optional<NumberInterval> read(String cell, NumberInterval allowed) {
        var text = cell.strip();
        if (text.equals("-")) {
            return Optional.of(allowed);
        }
        var compared = COMPARED.matcher(text);
        if (!compared.matches()) {
            return read(text);
        }
        var number = new BigDecimal(compared.group(2));
        boolean included = compared.group(1).endsWith("=");
        return compared.group(1).startsWith("<")
                ? of(allowed.from, allowed.fromIncluded, number, included)
                : of(number, included, allowed.to, allowed.toIncluded);
    }

    private static Optional<NumberInterval> of(BigDecimal from, boolean fromIncluded, BigDecimal to, boolean toIncluded) {
        int order = from.compareTo(to);
        boolean holdsSome = order < 0 || order == 0 && fromIncluded && toIncluded;
        return holdsSome ? Optional.of(new NumberInterval(from, fromIncluded, to, toIncluded)) : Optional.empty();
    }

    public boolean contains(BigDecimal number) {
        int low = number.compareTo(from);
        int high = number.compareTo(to);
        return (low > 0 || low == 0 && fromIncluded) && (high < 0 || high == 0 && toIncluded);
    }

    /** Whether every number of {@code other} lies in this interval. */
    public boolean covers(NumberInterval other) {
        int low = other.from.compareTo(from);
        int high = other.to.compareTo(to);
        return (low > 0 || low == 0 && (fromIncluded || !other.fromIncluded)) && (high < 0 || high == 0 && (toIncluded || !other.toIncluded));
    }

    /** The number half way between the ends, which always belongs to the interval. */
    BigDecimal middle() {
        return from.add(to).divide(BigDecimal.valueOf(2));
    }

    /** In words that follow a column's name: "from 8 to below 10", "above 12, up to 20", "of 8". */
    public String words() {
        if (from.compareTo(to) == 0) {
            return Text.of("rulebook.range.single", plain(from));
        }
        return Text.of("rulebook.range." + (fromIncluded ? "from-" : "above-") + (toIncluded ? "to" : "below"), plain(from), plain(to));
    }

    /** A number without needless noughts or powers of ten. */
    public static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
