package boughwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Gtin;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The four forms of a GTIN. In data they stand right-justified in one field with zeros before them, which changes no check digit (GS1 Hong
 * Kong and GS1 Sweden, on their pages about check digits).
 */
class GtinFormsTest {

    private static Tidy.Tidied tidied(String text) {
        return new Tidy(IntakeFixture.USD).cell("gtin", text, Optional.empty());
    }

    /**
     * 6291041500213: GS1, "How to calculate a check digit manually". 036000291452: the UPC-A of the worked example in Wikipedia, "Universal
     * Product Code". 73513537: the EAN-8 of Wikipedia, "EAN-8". The last two from memory, and by hand: 0·3+3+6·3+0+0·3+0+2·3+9+1·3+4+5·3 = 58.
     */
    @ParameterizedTest
    @CsvSource({"6291041500213, 6291041500213", "036000291452, 0036000291452", "73513537, 0000073513537", "06291041500213, 6291041500213",
        "6 291041 500213, 6291041500213", "629-1041-500213, 6291041500213", "00036000291452, 0036000291452"})
    void each_form_that_a_single_piece_can_have_is_kept_as_thirteen_digits(String text, String thirteen) {
        assertThat(tidied(text)).isEqualTo(Tidy.Tidied.as(thirteen));
        assertThat(Gtin.holds(thirteen)).isTrue();
    }

    @Test
    void zeros_that_a_spreadsheet_dropped_are_put_back_when_the_check_digit_then_holds_and_that_is_told() {
        assertThat(tidied("36000291452")).isEqualTo(Tidy.Tidied.told("0036000291452", "gtin"));
        assertThat(tidied("36000291453").mend()).contains("8, 12 or 13 digits");
        assertThat(tidied("36000291453").cell()).isEqualTo("36000291453");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1234567", "17", "629104150021x", "629104150021345", "６２９１０４１５００２１３", "62910415.00213"})
    void other_numbers_of_digits_are_no_gtin(String text) {
        assertThat(tidied(text).mend()).contains("8, 12 or 13 digits");
    }

    /** By hand, from the published 6291041500213: indicator 1 adds 3 to the sum of 57, 60 needs nothing to the next ten, so 16291041500210. */
    @Test
    void the_number_of_a_case_is_refused_and_the_piece_within_it_is_named() {
        assertThat(Gtin.caseHolds("16291041500210")).isTrue();
        assertThat(tidied("16291041500210").mend()).contains("case").contains("6291041500213");
        assertThat(tidied("16291041500211").mend()).doesNotContain("case");
    }

    @ParameterizedTest
    @ValueSource(strings = {"6.29104E+12", "6,29104E+12", "6.2910415e12"})
    void a_number_that_a_spreadsheet_shortened_is_told_as_such(String text) {
        assertThat(tidied(text).mend()).contains("shortened");
    }
}
