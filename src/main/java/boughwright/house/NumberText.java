package boughwright.house;

import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.rulebook.NumberInterval;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/** House numbers as staff read and type them: lengths with a unit, all others plain. */
public final class NumberText {

    private static final Pattern PLAIN = Pattern.compile("\\d{1,7}(?:\\.\\d{1,6})?");

    private NumberText() {
    }

    /** A plain decimal number of at least 0, with a point or a comma; empty when the text is anything else. */
    static Optional<BigDecimal> plain(String text) {
        String number = text.strip().replace(',', '.');
        return PLAIN.matcher(number).matches() ? Optional.of(new BigDecimal(number)) : Optional.empty();
    }

    /** The value in the unit of the number's measure; empty when the text is none. */
    public static Optional<BigDecimal> read(HouseNumber number, String text) {
        return number.measure() == HouseNumber.Measure.LENGTH
                ? Length.read(text).map(l -> BigDecimal.valueOf(l.metres()).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros())
                : plain(text);
    }

    /** The value as staff read it in the language that is spoken. */
    public static String said(HouseNumber number, BigDecimal value, Units units) {
        return number.measure() == HouseNumber.Measure.LENGTH ? LengthText.said(new Length(value.doubleValue()), units)
                : Text.number(new BigDecimal(NumberInterval.plain(value)));
    }

    /** As drafts keep it, the same in every language. */
    public static String of(HouseNumber number, BigDecimal value, Units units) {
        return number.measure() == HouseNumber.Measure.LENGTH ? LengthText.of(new Length(value.doubleValue()), units) : NumberInterval.plain(value);
    }
}
