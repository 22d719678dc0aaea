package boughwright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GtinTest {

    /** GS1, "How to calculate a check digit manually"; GS1 Sweden; GS1 India, in this order. */
    @ParameterizedTest
    @CsvSource({"629104150021, 3", "730001100001, 7", "890400021003, 7"})
    void published_numbers_have_their_published_check_digit(String twelve, int digit) {
        assertThat(Gtin.checkDigit(twelve)).isEqualTo(digit);
        assertThat(Gtin.rightCheckDigit(twelve + digit)).isTrue();
    }

    /** GS1 Sweden, note on its check-digit page. By hand: the digits at weight 3 add to 10, the others are 0, and 3·10 = 30. */
    @Test
    void a_sum_that_ends_in_0_gives_0() {
        assertThat(Gtin.checkDigit("000000000000")).isZero();
        assertThat(Gtin.checkDigit("010101010105")).isZero();
    }

    @Test
    void any_single_digit_mistyped_is_noticed() {
        String right = "6291041500213";
        for (int at = 0; at < 13; at++) {
            for (char other = '0'; other <= '9'; other++) {
                String typed = right.substring(0, at) + other + right.substring(at + 1);
                assertThat(Gtin.rightCheckDigit(typed)).as(typed).isEqualTo(typed.equals(right));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "629104150021", "62910415002130", "629104150021x", " 6291041500213", "6291041500213\n", "-291041500213", "６２９１０４１５００２１３"})
    void a_text_that_is_not_thirteen_digits_is_no_gtin(String text) {
        assertThat(Gtin.wellFormed(text)).isFalse();
    }
}
