package boughwright.house;

import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Lengths as drafts keep them and staff type them, exact and the same in every language: unlike what customers are shown, reading one back gives the same length to the micrometre.
 * Feet and inches where they are whole halves of an inch; centimetres otherwise and in shops that measure in metres.
 */
public final class LengthText {

    /** In half inches: more than a millionth of a foot, to which tables hold heights, so that 8 ft 2 in is told as such. */
    private static final double WHOLE = 3e-5;

    private static final String CENTIMETRES = " cm";

    private LengthText() {
    }

    static String ofFeet(BigDecimal feet) {
        return of(Length.ofFeet(feet.doubleValue()), Units.FEET);
    }

    public static String of(Length length, Units units) {
        double halves = length.inches() * 2;
        boolean whole = Math.abs(halves - Math.rint(halves)) < WHOLE && halves <= 48 || Math.abs(halves / 2 - Math.rint(halves / 2)) < WHOLE;
        return units == Units.FEET && whole ? length.write(Units.FEET) : centimetres(length);
    }

    private static String centimetres(Length length) {
        BigDecimal cm = BigDecimal.valueOf(length.metres() * 100).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        return cm.toPlainString() + CENTIMETRES;
    }

    /** A bare number is taken in the shop's unit: feet or centimetres. Whatever else was typed is left as it is. */
    public static String completed(String typed, Units units) {
        String plain = typed.strip();
        return plain.matches("\\d{1,4}([.,]\\d{1,4})?") ? plain.replace(',', '.') + (units == Units.FEET ? " ft" : " cm") : plain;
    }

    /** The same length in the shop's unit and in the language that is spoken; what is no length is left as it is. */
    public static String shown(String text, Units units) {
        Optional<Length> length = Length.read(text);
        return length.map(l -> said(l, units)).orElse(text);
    }

    /** As {@link #of}, in the language that is spoken. */
    static String said(Length length, Units units) {
        String written = of(length, units);
        if (written.endsWith(CENTIMETRES)) {
            return Text.of("length.centimetres", Text.number(new BigDecimal(written.substring(0, written.length() - CENTIMETRES.length()))));
        }
        return length.show(Units.FEET);
    }
}
