package boughwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyShownTest {

    /** Decimals of a currency: ISO 4217 (from memory). */
    @ParameterizedTest
    @CsvSource({"JPY, 650, ¥650", "KWD, 1.005, KWD1.005", "USD, 38.97, $38.97", "EUR, 38.97, €38.97"})
    void an_amount_is_shown_with_its_currency_s_own_decimals(String currency, BigDecimal amount, String shown) {
        assertThat(new Money(amount, Currency.getInstance(currency)).show().replace("\u00a0", "")).isEqualTo(shown);
    }
}
