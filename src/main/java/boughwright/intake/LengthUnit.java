package boughwright.intake;

import boughwright.brief.Word;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Units in which files give widths and lengths; the inch is exactly 25.4 mm (international yard and pound agreement of 1959). */
public enum LengthUnit implements Word {
    MM("1", "MMT", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    CM("10", "CMT", "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    M("1000", "MTR", "m", "metre", "metres", "meter", "meters"),
    IN("25.4", "INH", "in", "inch", "inches", "\"", "″", "”"),
    FT("304.8", "FOT", "ft", "foot", "feet", "'", "′", "’"),
    YD("914.4", "YRD", "yd", "yds", "yard", "yards");

    private final BigDecimal millimetres;
    private final String code;
    private final List<String> spellings;

    LengthUnit(String millimetres, String code, String... spellings) {
        this.millimetres = new BigDecimal(millimetres);
        this.code = code;
        this.spellings = List.of(spellings);
    }

    BigDecimal millimetres() {
        return millimetres;
    }

    /** Its three letters in UN/CEFACT Recommendation 20, as schema.org's {@code unitCode} has them. */
    String code() {
        return code;
    }

    /** The unit that a word, a mark or a UN/CEFACT code names. */
    static Optional<LengthUnit> named(String text) {
        for (LengthUnit unit : values()) {
            if (unit.code.equals(text) || unit.spellings.stream().anyMatch(s -> s.equalsIgnoreCase(text))) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
