package boughwright.intake;

import java.util.regex.Pattern;

/**
 * Keeps text from being taken for a formula by the spreadsheet that opens a file (CWE-1236, "Improper Neutralization of Formula Elements in
 * a CSV File").
 *
 * <p>An apostrophe goes before = + − @ tab, carriage return and the zero character where a cell begins with one (OWASP, "CSV Injection";
 * ASVS 5, 1.2.10). The same is done behind a comma, semicolon, tab or line break within the text, since a spreadsheet that expects other
 * separators than ours would begin a cell there. The full-width forms of these characters count as they do.
 *
 * <p>Apostrophes that stand at such a place already are taken for text and gain one more, so that {@link #soften} gives back exactly what
 * {@link #harden} was given.
 */
final class Formulas {

    private static final String PLACE = "(?:^|(?<=[,;\\t\\r\\n]))";
    private static final String BEGINS_FORMULA = "[=+\\-@\\t\\r\\x00＝＋－＠]";
    private static final Pattern HARDEN = Pattern.compile(PLACE + "(?='*+" + BEGINS_FORMULA + ")");
    private static final Pattern SOFTEN = Pattern.compile(PLACE + "'(?='*+" + BEGINS_FORMULA + ")");

    private Formulas() {
    }

    static String harden(String text) {
        return HARDEN.matcher(text).replaceAll("'");
    }

    static String soften(String text) {
        return text.indexOf('\'') < 0 ? text : SOFTEN.matcher(text).replaceAll("");
    }
}
