package boughwright.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.measure.Money;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaxTest {

    private static Money money(String amount, String currency) {
        return new Money(new BigDecimal(amount), Currency.getInstance(currency));
    }

    private static Tax onTop(String percent, Tax.Basis basis, Tax.Rounding rounding) {
        return new Tax("Tax", new BigDecimal(percent), false, basis, rounding);
    }

    private static Tax within(String percent) {
        return new Tax("VAT", new BigDecimal(percent), true, Tax.Basis.TOTAL, Tax.Rounding.HALF_UP);
    }

    /**
     * R.I. Gen. Laws § 44-18.1-25 (Streamlined Sales and Use Tax Agreement, section 324): to the third decimal, and up to the next cent when
     * that is above four. The amounts are chosen so that the third decimal is 4, 5, and 4 with more behind it; the rule gives the tax.
     */
    @ParameterizedTest
    @CsvSource({"7, 0.92, 0.06", "7, 0.50, 0.04", "7, 1.07, 0.07", "6.25, 0.72, 0.05", "6.25, 0.88, 0.06", "8.875, 10.00, 0.89", "5, 0.10, 0.01", "5, 0.09, 0.00"})
    void a_third_decimal_above_four_goes_up_as_the_streamlined_agreement_has_it(String percent, String amount, String tax) {
        assertThat(onTop(percent, Tax.Basis.TOTAL, Tax.Rounding.HALF_UP).of(money(amount, "USD"))).isEqualTo(money(tax, "USD"));
    }

    /**
     * The example that a supplier of booking software publishes for VAT at 20 %, tucasi.atlassian.net/wiki/x/f4DQCQ: ten sessions at £11.31
     * are £2.26 of VAT each and £135.70 in all when every line is rounded, £22.62 and £135.72 when the whole is.
     */
    @Test
    void ten_sessions_at_11_31_differ_by_two_pence_between_line_and_total() {
        List<Money> sessions = Collections.nCopies(10, money("11.31", "GBP"));
        assertThat(onTop("20", Tax.Basis.LINE, Tax.Rounding.HALF_UP).ofAll(sessions)).isEqualTo(money("22.60", "GBP"));
        assertThat(onTop("20", Tax.Basis.TOTAL, Tax.Rounding.HALF_UP).ofAll(sessions)).isEqualTo(money("22.62", "GBP"));
    }

    /**
     * The specimen of a VAT breakdown, business group BG-23, in Peppol BIS Billing 3 as einvoice-explorer.com gives it: 25 % of −625743.54
     * is −156435.89, a half coin (…885) rounded away from zero.
     */
    @Test
    void the_specimen_of_the_european_invoice_is_met_to_the_coin() {
        assertThat(onTop("25", Tax.Basis.TOTAL, Tax.Rounding.HALF_UP).of(money("-625743.54", "DKK"))).isEqualTo(money("-156435.89", "DKK"));
    }

    /** VAT fraction of a rate of 20 %: one sixth of the price (HMRC, VAT guide, Notice 700, from memory). 19 % in Germany: 15.97 % of it (UStAE 15.4, from memory). */
    @Test
    void tax_within_a_price_is_its_vat_fraction() {
        assertThat(within("20").of(money("6.00", "GBP"))).isEqualTo(money("1.00", "GBP"));
        assertThat(within("20").of(money("100.00", "GBP"))).isEqualTo(money("16.67", "GBP"));
        assertThat(within("19").of(money("100.00", "EUR"))).isEqualTo(money("15.97", "EUR"));
    }

    /** IEEE 754's roundTiesToEven, which some laws and cash registers ask for. */
    @Test
    void a_half_coin_goes_to_the_even_one_or_is_dropped_where_the_shop_says_so() {
        assertThat(onTop("5", Tax.Basis.TOTAL, Tax.Rounding.HALF_EVEN).of(money("0.50", "USD"))).isEqualTo(money("0.02", "USD"));
        assertThat(onTop("5", Tax.Basis.TOTAL, Tax.Rounding.HALF_EVEN).of(money("0.70", "USD"))).isEqualTo(money("0.04", "USD"));
        assertThat(onTop("7", Tax.Basis.TOTAL, Tax.Rounding.DOWN).of(money("1.12", "USD"))).isEqualTo(money("0.07", "USD"));
    }

    @Test
    void a_currency_without_coins_is_taxed_in_whole_units() {
        assertThat(onTop("10", Tax.Basis.TOTAL, Tax.Rounding.DOWN).of(money("1985", "JPY"))).isEqualTo(money("198", "JPY"));
    }

    @Test
    void what_is_rounded_line_by_line_adds_up_to_the_tax_of_the_whole() {
        List<Money> lines = List.of(money("3.33", "USD"), money("0.07", "USD"), money("129.99", "USD"));
        Tax tax = onTop("8.875", Tax.Basis.LINE, Tax.Rounding.HALF_UP);
        assertThat(tax.ofLines(lines).stream().reduce(Money::plus)).hasValue(tax.ofAll(lines));
    }

    @Test
    void a_rate_is_never_negative_nor_all_of_the_price() {
        assertThatThrownBy(() -> onTop("-1", Tax.Basis.TOTAL, Tax.Rounding.DOWN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> onTop("100", Tax.Basis.TOTAL, Tax.Rounding.DOWN)).isInstanceOf(IllegalArgumentException.class);
        assertThat(onTop("0.00", Tax.Basis.TOTAL, Tax.Rounding.DOWN).none()).isTrue();
    }
}
