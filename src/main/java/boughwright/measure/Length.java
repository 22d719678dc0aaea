package boughwright.measure;

import boughwright.text.Language;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length, held in metres.
 *
 * <p>Inside the program lengths are SI; feet, inches and centimetres exist only where a person writes or reads one. The
 * foot is exactly 0.3048 m and the inch 0.0254 m (international yard and pound agreement of 1959).
 *
 * @param metres finite; may be negative only as an intermediate difference, never as a size that a user gave
 */
public record Length(double metres) implements Comparable<Length> {

    /** Metres in one international foot, exact by definition. */
    public static final double METRES_PER_FOOT = 0.3048;
    /** Metres in one international inch, exact by definition. */
    public static final double METRES_PER_INCH = 0.0254;

    private static final String NUMBER = "\\d+(?:[.,]\\d+)?";
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "(?:(?<ft>" + NUMBER + ")\\s*(?:ft|foot|feet|fuß|fuss|pies|pie|'|′))?\\s*"
                    + "(?:(?<in>" + NUMBER + ")\\s*(?:in|inch|inches|zoll|pulgadas|pulgada|pulg|\"|″))?");
    private static final Pattern HALF = Pattern.compile("(\\d*)½");
    private static final Pattern METRIC = Pattern.compile("(?<n>" + NUMBER + ")\\s*(?<u>mm|cm|m)");
    /** May be a thousand or a decimal: which one depends on where the writer went to school. */
    private static final Pattern IN_DOUBT = Pattern.compile(".*\\d,\\d{3}(?!\\d).*");

    public Length {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("a length must be finite, not " + metres);
        }
    }

    public static Length ofMetres(double metres) {
        return new Length(metres);
    }

    public static Length ofFeet(double feet) {
        return new Length(feet * METRES_PER_FOOT);
    }

    public static Length ofInches(double inches) {
        return new Length(inches * METRES_PER_INCH);
    }

    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres / 1000);
    }

    /**
     * Reads a length that a person wrote: {@code 9 ft}, {@code 7 ft 6 in}, {@code 62 in}, {@code 228 cm}, {@code 2.3 m}; with the unit words
     * and the decimal comma of every language that is spoken here, whichever it is: {@code 7 Fuß 6 Zoll}, {@code 2,3 m}.
     *
     * @return empty when the text holds no unit, an unknown unit, a sign or anything else beside the length, or a comma that may part
     *     thousands ({@code 1,500 mm})
     */
    public static Optional<Length> read(String text) {
        if (text == null) {
            return Optional.empty();
        }
        String plain = HALF.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll(h -> (h.group(1).isEmpty() ? "0" : h.group(1)) + ".5");
        if (plain.isEmpty() || plain.length() > 40 || IN_DOUBT.matcher(plain).matches()) {
            return Optional.empty();
        }
        Matcher metric = METRIC.matcher(plain);
        if (metric.matches()) {
            double perUnit = switch (metric.group("u")) {
                case "mm" -> 0.001;
                case "cm" -> 0.01;
                default -> 1;
            };
            return finite(number(metric.group("n")) * perUnit);
        }
        Matcher imperial = FEET_AND_INCHES.matcher(plain);
        if (imperial.matches()) {
            double feet = imperial.group("ft") == null ? 0 : number(imperial.group("ft"));
            double inches = imperial.group("in") == null ? 0 : number(imperial.group("in"));
            boolean both = imperial.group("ft") != null && imperial.group("in") != null;
            if (both && (inches >= 12 || feet != Math.rint(feet))) {
                // "5 ft 14 in" and "7.5 ft 6 in" are slips; guessing what was meant would size the wrong tree.
                return Optional.empty();
            }
            return finite(feet * METRES_PER_FOOT + inches * METRES_PER_INCH);
        }
        return Optional.empty();
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static Optional<Length> finite(double metres) {
        return Double.isFinite(metres) ? Optional.of(new Length(metres)) : Optional.empty();
    }

    /** Rounded to a millionth of a foot: 96 in is 8 ft, whatever the last bits of a conversion say. */
    public double feet() {
        return Math.rint(metres / METRES_PER_FOOT * 1e6) / 1e6;
    }

    public double inches() {
        return metres / METRES_PER_INCH;
    }

    public double millimetres() {
        return metres * 1000;
    }

    /**
     * The length as a customer reads it, in the language that is spoken, rounded to what can be measured on a tree.
     *
     * @return feet and whole inches from two feet up, else inches to the half ({@code 7 ft 6 in}, {@code 2½ in}); or metres to
     *     the centimetre from one metre up, else whole centimetres ({@code 2.29 m}, {@code 43 cm})
     */
    public String show(Units units) {
        return switch (units) {
            case FEET -> showFeet();
            case METRES -> showMetres();
        };
    }

    /** As {@link #show}, in the words that files and programs know, whatever language is spoken. */
    public String write(Units units) {
        return Text.in(Language.ENGLISH, () -> show(units));
    }

    private String showFeet() {
        if (Math.abs(metres) < 2 * METRES_PER_FOOT - METRES_PER_INCH / 4) {
            long halves = Math.round(inches() * 2);
            String whole = halves / 2 == 0 && halves % 2 != 0 ? "" : Long.toString(halves / 2);
            return Text.of("length.inches", whole + (halves % 2 == 0 ? "" : "½"), halves / 2.0);
        }
        long inches = Math.round(inches());
        return inches % 12 == 0 ? Text.of("length.feet", Long.toString(inches / 12))
                : Text.of("length.feet.inches", Long.toString(inches / 12), Long.toString(inches % 12), Math.abs(inches % 12));
    }

    private String showMetres() {
        if (Math.abs(metres) < 0.995) {
            return Text.of("length.centimetres", Long.toString(Math.round(metres * 100)));
        }
        return Text.of("length.metres", Text.number(new BigDecimal(
                BigDecimal.valueOf(metres).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString())));
    }

    /** The least length that is shown exactly and is not below this one. */
    public Length roundedUp(Units units) {
        double step = step(units, metres);
        return new Length(Math.ceil(metres / step - 1e-9) * step);
    }

    /** The greatest length that is shown exactly and is not above this one. */
    public Length roundedDown(Units units) {
        double step = step(units, metres);
        return new Length(Math.floor(metres / step + 1e-9) * step);
    }

    private static double step(Units units, double metres) {
        return units == Units.METRES ? 0.01 : metres < 2 * METRES_PER_FOOT - METRES_PER_INCH ? METRES_PER_INCH / 2 : METRES_PER_INCH;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
