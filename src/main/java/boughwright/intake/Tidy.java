package boughwright.intake;

import boughwright.catalogue.Gtin;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes canonical cells of what people write, where that can mean one thing only; anything else is left for {@code CatalogueRows} to find
 * at fault.
 *
 * <ul>
 * <li>Prices: the shop's own currency mark or code is taken off; {@code 1,299.00}, {@code 1.299,00}, {@code 1 299.00} and {@code 12,50} are
 *     read. {@code 1,299} and {@code 1.299} are not: each may be a thousand or one.
 * <li>Whole numbers: {@code 1,200} and {@code 12.0} are read; {@code 1.200} is not.
 * <li>Lengths: a unit in the cell counts before one in the heading, and {@code 2 3/8 in} or {@code 2½"} are read.
 * <li>Words: capitals, spaces and underscores do not matter; words of a list may also be parted by commas, semicolons, bars or slashes.
 * <li>Colours: {@code b5713a} and {@code #b73} are read as CSS Color 4 would with their mark.
 * <li>GTINs: spaces and hyphens are taken off; eight and twelve digits get their zeros; nine to eleven too, if the check digit then
 *     holds (a spreadsheet that takes a number for a quantity drops the zeros before it); fourteen lose a leading zero.
 * </ul>
 */
final class Tidy {

    /**
     * @param cell canonical, as far as it could be made so
     * @param how end of the key, under {@code intake.note.}, of the sentence that tells what was understood; empty when nothing needs telling
     * @param mend what to do when the cell is at fault nevertheless; empty for the usual
     */
    record Tidied(String cell, String how, String mend) {

        static Tidied as(String cell) {
            return new Tidied(cell, "", "");
        }

        static Tidied told(String cell, String how) {
            return new Tidied(cell, how, "");
        }

        static Tidied wrong(String cell, String mend) {
            return new Tidied(cell, "", mend);
        }
    }

    private static final Set<String> WORDS = Set.of("family", "texture", "finish", "material", "shape", "pattern", "weave", "level");
    private static final Set<String> LISTS = Set.of("roles", "looks", "safety");
    private static final Set<String> WHOLES = Set.of("bulbs", "max_run", "pack", "stock");
    private static final Set<String> NUMBERS = Set.of("gtin", "width_mm", "length_mm", "bulbs", "watts", "max_run", "pack", "price", "stock");

    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2007\\u202F]+");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:,\\d{3})+\\.\\d{1,6}|\\d{1,3}(?:,\\d{3}){2,}");
    private static final Pattern GROUPED_BY_SPACE = Pattern.compile("\\d{1,3}(?:[ ’']\\d{3})+(?:\\.\\d{1,6})?");
    private static final Pattern GROUPED_BY_POINT = Pattern.compile("\\d{1,3}(?:\\.\\d{3})+,\\d{1,6}|\\d{1,3}(?:\\.\\d{3}){2,}");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d{1,9},(?:\\d{1,2}|\\d{4,6})");
    private static final Pattern IN_DOUBT = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern WHOLE_GROUPED = Pattern.compile("\\d{1,3}(?:[, ]\\d{3})+");
    private static final Pattern WHOLE_WITH_POINT = Pattern.compile("(\\d{1,9})\\.0{1,2}");
    private static final Pattern WITH_UNIT = Pattern.compile("(?<number>.*[\\d½¼¾⅛⅜⅝⅞⅓⅔])\\s*(?<unit>\\p{L}{1,11}|[\"'″′”’])\\.?");
    private static final Pattern MEASURED = Pattern.compile(
            "(?<whole>\\d{1,6})(?:[ -]+(?<top>\\d{1,2})/(?<bottom>\\d{1,2}))?|(?<part>\\d{1,2})/(?<of>\\d{1,2})|(?<decimal>\\d{1,6}\\.\\d{1,6})");
    private static final String FRACTIONS = "½1/2¼1/4¾3/4⅛1/8⅜3/8⅝5/8⅞7/8⅓1/3⅔2/3";
    private static final Pattern HEX = Pattern.compile("#?(?:[0-9a-fA-F]{3}|[0-9a-fA-F]{6})");
    private static final Pattern EXPONENT = Pattern.compile("\\d[.,]\\d+[eE][+]?\\d+");
    private static final Pattern PARTED = Pattern.compile("[,;|/\\n]");
    private static final Pattern NOT_OF_GTINS = Pattern.compile("[\\s\\u00A0-]");
    private static final Pattern GTINS = Pattern.compile("[0-9]{8,14}");
    private static final Pattern WATTS = Pattern.compile("(?i)\\s*(?:w|watts?)$");

    private final Currency currency;

    Tidy(Currency currency) {
        this.currency = currency;
    }

    static boolean number(String column) {
        return NUMBERS.contains(column);
    }

    /** The first character of a text that no page or sheet can hold: a control, half of a pair, or one that is none. */
    static Optional<Integer> unprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
            if (Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r' || Character.isSurrogate(c) && !pair || c >= '\uFFFE') {
                return Optional.of((int) c);
            }
            i += pair ? 1 : 0;
        }
        return Optional.empty();
    }

    /** Whether a text is digits, with one point among them or none: as cells should be, and most are. */
    private static boolean plain(String text) {
        int points = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < '0' || c > '9') && (c != '.' || i == 0 || i == text.length() - 1 || ++points > 1)) {
                return false;
            }
        }
        return true;
    }

    /** @param unit of plain numbers in a column of lengths; empty when neither mapping nor heading says */
    Tidied cell(String column, String raw, Optional<LengthUnit> unit) {
        String text = stripped(raw);
        if (text.isEmpty()) {
            return Tidied.as("");
        }
        if (WORDS.contains(column)) {
            return Tidied.as(word(text));
        }
        if (LISTS.contains(column)) {
            return Tidied.as(list(text));
        }
        if (WHOLES.contains(column)) {
            return whole(text);
        }
        return switch (column) {
            case "gtin" -> gtin(text);
            case "price" -> price(text);
            case "currency" -> Tidied.as(text.equals(mark()) ? currency.getCurrencyCode() : text.toUpperCase(Locale.ROOT));
            case "width_mm", "length_mm" -> length(text, unit);
            case "watts" -> decimal(WATTS.matcher(text).replaceFirst(""));
            case "colour", "second_colour" -> Tidied.as(HEX.matcher(text).matches() ? hex(text) : text);
            default -> Tidied.as(text);
        };
    }

    private static String stripped(String raw) {
        int from = 0;
        int to = raw.length();
        while (from < to && space(raw.charAt(from))) {
            from++;
        }
        while (to > from && space(raw.charAt(to - 1))) {
            to--;
        }
        return raw.substring(from, to);
    }

    private static boolean space(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF' || c == '\u200B';
    }

    private static String word(String text) {
        return SPACES.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("-").replace('_', '-');
    }

    private static String list(String text) {
        String[] parts = (PARTED.matcher(text).find() ? PARTED : SPACES).split(text);
        Set<String> words = new LinkedHashSet<>();
        for (String part : parts) {
            if (!part.isBlank()) {
                words.add(word(part.strip()));
            }
        }
        return String.join(" ", words);
    }

    private String mark() {
        return currency.getSymbol(Locale.US);
    }

    private Tidied price(String text) {
        String code = currency.getCurrencyCode();
        String bare = text;
        for (String mark : List.of(mark(), code)) {
            if (bare.regionMatches(true, 0, mark, 0, mark.length())) {
                bare = stripped(bare.substring(mark.length()));
            } else if (bare.regionMatches(true, bare.length() - mark.length(), mark, 0, mark.length())) {
                bare = stripped(bare.substring(0, bare.length() - mark.length()));
            }
        }
        if (bare.isEmpty()) {
            return Tidied.as(text);
        }
        boolean decimals = currency.getDefaultFractionDigits() > 0;
        if (currency.getDefaultFractionDigits() < 3 && IN_DOUBT.matcher(bare).matches()) {
            return decimals || bare.indexOf(',') < 0 ? Tidied.wrong(text, inDoubt(bare)) : Tidied.told(bare.replace(",", ""), "number");
        }
        Tidied number = decimal(bare);
        return number.how().isEmpty() && !bare.equals(text) && Character.isDigit(bare.charAt(0))
                ? Tidied.told(bare, "number") : number;
    }

    private static String inDoubt(String text) {
        String digits = text.replaceAll("[.,]", "");
        return Text.of("intake.in-doubt", digits, text.replace(',', '.'));
    }

    /** A number with a point, from one with a decimal comma or with its thousands parted, where it can be no other. */
    private static Tidied decimal(String text) {
        if (plain(text)) {
            return Tidied.as(text);
        }
        String spaced = SPACES.matcher(text).replaceAll(" ");
        if (GROUPED.matcher(text).matches()) {
            return Tidied.told(text.replace(",", ""), "number");
        }
        if (GROUPED_BY_SPACE.matcher(spaced).matches()) {
            return Tidied.told(spaced.replaceAll("[ ’']", ""), "number");
        }
        if (GROUPED_BY_POINT.matcher(text).matches()) {
            return Tidied.told(text.replace(".", "").replace(',', '.'), "number");
        }
        if (DECIMAL_COMMA.matcher(text).matches()) {
            return Tidied.told(text.replace(',', '.'), "number");
        }
        return IN_DOUBT.matcher(text).matches() && text.indexOf(',') > 0 ? Tidied.wrong(text, inDoubt(text)) : Tidied.as(text);
    }

    private static Tidied whole(String text) {
        if (plain(text) && text.indexOf('.') < 0) {
            return Tidied.as(text);
        }
        Matcher point = WHOLE_WITH_POINT.matcher(text);
        if (point.matches()) {
            return Tidied.as(point.group(1));
        }
        String spaced = SPACES.matcher(text).replaceAll(" ");
        return WHOLE_GROUPED.matcher(spaced).matches() ? Tidied.told(spaced.replaceAll("[, ]", ""), "number") : Tidied.as(text);
    }

    private static Tidied length(String text, Optional<LengthUnit> unit) {
        if (unit.filter(u -> u == LengthUnit.MM).isPresent() && plain(text)) {
            return Tidied.as(text);
        }
        Matcher ended = WITH_UNIT.matcher(text);
        Optional<LengthUnit> own = ended.matches() ? LengthUnit.named(ended.group("unit")) : Optional.empty();
        Tidied number = decimal(spelt(own.isPresent() ? ended.group("number") : text));
        Matcher measured = MEASURED.matcher(number.cell());
        BigDecimal value = measured.matches() ? value(measured) : null;
        if (value == null) {
            return number.mend().isEmpty() ? Tidied.as(text) : Tidied.wrong(text, number.mend());
        }
        LengthUnit of = own.or(() -> unit).orElse(LengthUnit.MM);
        String millimetres = value.multiply(of.millimetres()).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
        if (own.isEmpty() && unit.isEmpty()) {
            return Tidied.told(millimetres, "millimetres");
        }
        return of == LengthUnit.MM ? new Tidied(millimetres, number.how(), "") : Tidied.told(millimetres, "length");
    }

    private static String spelt(String text) {
        String spelt = text;
        for (int i = 0; i < FRACTIONS.length(); i += 4) {
            spelt = spelt.replace(FRACTIONS.substring(i, i + 1), " " + FRACTIONS.substring(i + 1, i + 4));
        }
        return spelt.strip();
    }

    private static BigDecimal value(Matcher measured) {
        if (measured.group("decimal") != null) {
            return new BigDecimal(measured.group("decimal"));
        }
        BigDecimal whole = new BigDecimal(measured.group("whole") == null ? "0" : measured.group("whole"));
        String top = measured.group("top") == null ? measured.group("part") : measured.group("top");
        String bottom = measured.group("bottom") == null ? measured.group("of") : measured.group("bottom");
        if (top == null) {
            return whole;
        }
        BigDecimal parts = new BigDecimal(bottom);
        return parts.signum() == 0 ? null : whole.add(new BigDecimal(top).divide(parts, 9, RoundingMode.HALF_EVEN));
    }

    private static String hex(String text) {
        String digits = text.replace("#", "").toLowerCase(Locale.ROOT);
        return "#" + (digits.length() == 6 ? digits : digits.replaceAll("(.)", "$1$1"));
    }

    private static Tidied gtin(String text) {
        if (EXPONENT.matcher(text).matches()) {
            return Tidied.wrong(text, Text.of("intake.gtin.exponent"));
        }
        String digits = NOT_OF_GTINS.matcher(text).replaceAll("");
        if (!GTINS.matcher(digits).matches()) {
            return Tidied.wrong(text, Text.of("intake.gtin.digits"));
        }
        return switch (digits.length()) {
            case 13 -> Tidied.as(digits);
            case 8, 12 -> Tidied.as(Gtin.thirteen(digits));
            case 14 -> ofCase(digits);
            default -> Gtin.holds(digits) ? Tidied.told(Gtin.thirteen(digits), "gtin") : Tidied.wrong(digits, Text.of("intake.gtin.digits"));
        };
    }

    private static Tidied ofCase(String digits) {
        if (digits.charAt(0) == '0') {
            return Tidied.as(digits.substring(1));
        }
        return Tidied.wrong(digits, Gtin.caseHolds(digits) ? Text.of("intake.gtin.case", Gtin.within(digits)) : Text.of("intake.gtin.digits"));
    }
}
