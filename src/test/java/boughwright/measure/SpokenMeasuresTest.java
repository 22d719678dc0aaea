package boughwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.text.Language;
import boughwright.text.Text;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths and money in the words of each language; what files read stays the same. */
class SpokenMeasuresTest {

    /**
     * CLDR 39, standard currency patterns: en ¤#,##0.00; de and es #,##0.00 ¤ with a space that does not break. Signs: USD is $ in en and de,
     * US$ in es; CHF has none of its own.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "ENGLISH | USD | 1234.50 | $1,234.50", "GERMAN | USD | 1234.50 | 1.234,50_$", "SPANISH | USD | 1234.50 | 1.234,50_US$",
        "ENGLISH | EUR | 1234.50 | €1,234.50", "GERMAN | EUR | 1234.50 | 1.234,50_€", "SPANISH | EUR | 1234.50 | 1.234,50_€",
        "GERMAN | EUR | 0.05 | 0,05_€", "ENGLISH | JPY | 1234 | ¥1,234", "GERMAN | CHF | 38.97 | 38,97_CHF"})
    void money_is_written_as_each_language_writes_the_shop_s_currency(Language language, String currency, String amount, String shown) {
        Money money = Money.read(amount, Currency.getInstance(currency)).orElseThrow();
        assertThat(Text.in(language, money::show)).isEqualTo(shown.replace('_', '\u00a0'));
        assertThat(Text.in(language, money::decimal)).isEqualTo(amount);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "GERMAN | 7 ft 6 in | 7 Fuß 6 Zoll | 2,29 m", "SPANISH | 7 ft 6 in | 7 pies 6 pulgadas | 2,29 m", "GERMAN | 9 ft | 9 Fuß | 2,74 m",
        "SPANISH | 9 ft 1 in | 9 pies 1 pulgada | 2,77 m", "GERMAN | 2½ in | 2½ Zoll | 6 cm", "SPANISH | 1 in | 1 pulgada | 3 cm", "SPANISH | ½ in | ½ pulgada | 1 cm",
        "SPANISH | 2½ in | 2½ pulgadas | 6 cm", "ENGLISH | 7 ft 6 in | 7 ft 6 in | 2.29 m"})
    void lengths_are_shown_in_each_language_s_words_and_read_again(Language language, String written, String feet, String metres) {
        Length length = Length.read(written).orElseThrow();
        Text.in(language, () -> {
            assertThat(length.show(Units.FEET)).isEqualTo(feet);
            assertThat(length.show(Units.METRES)).isEqualTo(metres);
            assertThat(length.write(Units.FEET)).isEqualTo(written);
            assertThat(Length.read(feet)).hasValueSatisfying(read -> assertThat(read.metres()).isCloseTo(length.metres(), org.assertj.core.api.Assertions.within(1e-9)));
            assertThat(Length.read(metres)).isPresent();
            assertThat(Units.of(feet)).isEqualTo(Units.FEET);
            assertThat(Units.of(metres)).isEqualTo(Units.METRES);
        });
    }

    @Test
    void what_is_shown_in_one_language_is_read_in_any_other() {
        String german = Text.in(Language.GERMAN, () -> Length.ofInches(90).show(Units.FEET));
        assertThat(Text.in(Language.SPANISH, () -> Length.read(german))).hasValue(Length.ofInches(90));
    }
}
