package boughwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Decimals of a currency: ISO 4217, two for USD, none for JPY, three for KWD (from memory). */
class MoneyTest {

    private static final Currency USD = Currency.getInstance("USD");
    private static final Currency JPY = Currency.getInstance("JPY");

    @ParameterizedTest
    @CsvSource({"650.00, 650.00", "650, 650.00", "650.5, 650.50", "0.01, 0.01", "0, 0.00", "999999999.99, 999999999.99", "650.0000, 650.00"})
    void plain_decimals_are_read_at_the_currency_s_own_decimals(String text, String decimal) {
        assertThat(Money.read(text, USD)).hasValueSatisfying(money -> assertThat(money.decimal()).isEqualTo(decimal));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "$650", "650 USD", "-5", "+5", "12,50", "1,000", "6e2", ".5", "5.", "650.005", "6 50", " 650", "1234567890", "٦٥٠", "NaN"})
    void anything_but_a_plain_decimal_is_refused(String text) {
        assertThat(Money.read(text, USD)).isEmpty();
    }

    @Test
    void no_text_at_all_is_refused() {
        assertThat(Money.read(null, USD)).isEmpty();
    }

    @Test
    void a_currency_without_small_coins_takes_whole_numbers_only() {
        assertThat(Money.read("650", JPY)).hasValueSatisfying(money -> assertThat(money.decimal()).isEqualTo("650"));
        assertThat(Money.read("650.5", JPY)).isEmpty();
        assertThat(Money.read("1.005", Currency.getInstance("KWD"))).isPresent();
    }

    @Test
    void a_customer_reads_dollars_with_their_sign_and_two_decimals() {
        assertThat(usd("38.97").show()).isEqualTo("$38.97");
        assertThat(usd("1234567.5").show()).isEqualTo("$1,234,567.50");
        assertThat(usd("0").show()).isEqualTo("$0.00");
        assertThat(usd("10").minus(usd("15.5")).show()).isEqualTo("-$5.50");
    }

    @Test
    void sums_and_multiples_are_exact_where_binary_fractions_are_not() {
        assertThat(usd("0.10").plus(usd("0.20"))).isEqualTo(usd("0.30"));
        assertThat(usd("19.99").times(3)).isEqualTo(usd("59.97"));
        assertThat(usd("5").minus(usd("7.25")).decimal()).isEqualTo("-2.25");
    }

    @Test
    void the_same_amount_is_equal_however_many_zeros_were_written() {
        assertThat(usd("5")).isEqualTo(usd("5.00")).hasSameHashCodeAs(usd("5.0"));
    }

    @Test
    void money_goes_to_coins_and_back() {
        assertThat(usd("38.97").coins()).isEqualTo(3897);
        assertThat(Money.ofCoins(3897, USD)).isEqualTo(usd("38.97"));
        assertThat(Money.ofCoins(650, JPY).coins()).isEqualTo(650);
        assertThat(Money.zero(USD)).isEqualTo(Money.ofCoins(0, USD));
    }

    @Test
    void an_amount_below_the_smallest_coin_is_a_defect() {
        assertThatThrownBy(() -> new Money(new BigDecimal("4.255"), USD)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("4.255");
    }

    @Test
    void two_currencies_are_never_mixed() {
        Money dollars = usd("5");
        Money yen = Money.ofCoins(5, JPY);
        assertThatThrownBy(() -> dollars.plus(yen)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("USD").hasMessageContaining("JPY");
        assertThatThrownBy(() -> dollars.minus(yen)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> dollars.compareTo(yen)).isInstanceOf(IllegalArgumentException.class);
        assertThat(dollars).isNotEqualTo(yen);
    }

    @Test
    void amounts_order_by_value() {
        assertThat(usd("9.99")).isLessThan(usd("10"));
        assertThat(usd("10.00")).isEqualByComparingTo(usd("10"));
    }

    private static Money usd(String amount) {
        return new Money(new BigDecimal(amount), USD);
    }
}
