package boughwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The payloads are those of OWASP, "CSV Injection", and of CWE-1236. */
class FormulasTest {

    private static final String CHARACTERS = "=+-@\t\r\n,;'\" a\u0000＝＠";

    @ParameterizedTest
    @ValueSource(strings = {"=cmd|' /C calc'!A0", "+1+1", "-2+3", "@SUM(1+1)*cmd|' /C calc'!A0", "\t=1", "\r=1",
            "=HYPERLINK(\"http://loopback\")", "＝1+1", "\u0000=1"})
    void text_that_begins_a_formula_gets_an_apostrophe_and_loses_it_again(String text) {
        assertThat(Formulas.harden(text)).startsWith("'");
        assertThat(Formulas.soften(Formulas.harden(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '§', value = {"bell;=1+1|bell;'=1+1", "bell,-1|bell,'-1", "'=1|''=1", "'@x|''@x"})
    void what_would_begin_a_cell_with_other_separators_is_made_harmless_too(String text, String hardened) {
        assertThat(Formulas.harden(text)).isEqualTo(hardened);
        assertThat(Formulas.soften(hardened)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Silver bauble, 2⅜ in", "A1-4", "'tis the season", "“Star”", "a=b", "3 - 4", "x@y", "bell; -1", "'", "it''s"})
    void other_text_stays_as_it_is(String text) {
        assertThat(Formulas.harden(text)).isEqualTo(text);
        assertThat(Formulas.soften(text)).isEqualTo(text);
    }

    @Test
    void whatever_is_hardened_begins_no_formula_after_any_separator_and_comes_back_the_same() {
        SplittableRandom random = new SplittableRandom(1236);
        for (int n = 0; n < 20_000; n++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(8); i >= 0; i--) {
                text.append(CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
            }
            String hardened = Formulas.harden(text.toString());
            assertThat(hardened).doesNotContainPattern("(^|[,;\\t\\r\\n])[=+\\-@\\t\\r\\x00＝＠]");
            assertThat(Formulas.soften(hardened)).isEqualTo(text.toString());
        }
    }
}
