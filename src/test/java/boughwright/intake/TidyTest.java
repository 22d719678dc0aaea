package boughwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Currency;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells as people write them, and the one thing that they can mean. */
class TidyTest {

    private static final Tidy TIDY = new Tidy(IntakeFixture.USD);

    private static Tidy.Tidied tidied(String column, String text) {
        return TIDY.cell(column, text, Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"$1,299.00|1299.00", "USD 12.50|12.50", "12.50 usd|12.50", "12,50|12.50", "12,5|12.5", "1.299,00|1299.00",
        "1 299.00|1299.00", "1'299.00|1299.00", "1,299,000|1299000", "$ 4|4"})
    void a_price_that_can_be_one_amount_only_is_read_and_that_is_told(String text, String price) {
        assertThat(tidied("price", text)).isEqualTo(Tidy.Tidied.told(price, "number"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,299", "1.299", "12.500", "$1,299"})
    void a_price_that_may_be_a_thousand_or_one_is_left_as_it_stands_and_the_doubt_is_told(String text) {
        assertThat(tidied("price", text).cell()).isEqualTo(text);
        assertThat(tidied("price", text).mend()).contains("may be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.50", "7", "0.99", "free", "€5", "12.50 EUR", "-4", "1,2,3", "12..5", "1,29,900.00", "$", "USD"})
    void a_plain_price_and_what_is_none_stay_as_they_are(String text) {
        assertThat(tidied("price", text)).isEqualTo(Tidy.Tidied.as(text));
    }

    @Test
    void where_money_has_no_small_coins_a_comma_parts_thousands() {
        Tidy yen = new Tidy(Currency.getInstance("JPY"));
        assertThat(yen.cell("price", "1,299", Optional.empty())).isEqualTo(Tidy.Tidied.told("1299", "number"));
        assertThat(yen.cell("price", "1.290", Optional.empty()).cell()).isEqualTo("1.290");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"54|54", "54.0|54", "1,200|1200", "12,345,678|12345678", "1 200|1200", "1.200|1.200", "7.5|7.5",
            "1,20|1,20", "-3|-3",
        "many|many"})
    void whole_numbers_lose_what_parts_their_thousands_and_an_empty_fraction(String text, String whole) {
        assertThat(tidied("stock", text).cell()).isEqualTo(whole);
    }

    /** The inch is exactly 25.4 mm and the foot 304.8 mm (international yard and pound agreement, 1959): 2 3/8 in = 60.325 mm, 10 yd = 9144 mm. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '§', value = {"60 mm|60", "6 cm|60", "6,5 cm|65", "0.06 m|60", "2.5 in|63.5", "2.5in.|63.5",
            "2 3/8 in|60.325", "2-3/8\"|60.325",
        "3½ in|88.9", "½\"|12.7", "3/4 inch|19.05", "10 yd|9144", "30 ft|9144", "30'|9144", "2⅜ in|60.325"})
    void a_length_with_its_own_unit_is_turned_into_millimetres(String text, String millimetres) {
        assertThat(tidied("width_mm", text).cell()).isEqualTo(millimetres);
        assertThat(TIDY.cell("length_mm", text, Optional.of(LengthUnit.FT)).cell()).as("whatever the heading says").isEqualTo(millimetres);
    }

    @Test
    void a_length_without_a_unit_takes_that_of_its_heading_or_is_taken_as_millimetres_and_that_is_told() {
        assertThat(TIDY.cell("width_mm", "2.5", Optional.of(LengthUnit.IN))).isEqualTo(Tidy.Tidied.told("63.5", "length"));
        assertThat(TIDY.cell("width_mm", "60", Optional.of(LengthUnit.MM))).isEqualTo(Tidy.Tidied.as("60"));
        assertThat(TIDY.cell("width_mm", "60", Optional.empty())).isEqualTo(Tidy.Tidied.told("60", "millimetres"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"wide", "6 ells", "1/0 in", "60 x 40 mm", "-6 mm", "1e2", "2 3/8 3/8 in", "1,250"})
    void a_length_that_is_none_stays_as_it_is(String text) {
        assertThat(tidied("width_mm", text).cell()).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"family|Burgundy|burgundy", "shape|Berry Spray|berry-spray", "shape|berry_spray|berry-spray",
            "level|FINE|fine",
        "roles|filler-ball feature-ornament|filler-ball feature-ornament", "roles|Filler ball, Feature ornament|filler-ball feature-ornament",
        "safety|fragile; small parts;|fragile small-parts", "looks|woodland/frost fair|woodland frost-fair", "roles|spray spray|spray",
        "colour|B5713A|#b5713a", "colour|#b73|#bb7733", "colour|gold|gold", "currency|usd|USD", "currency|$|USD", "watts|5 W|5", "watts|40,8|40.8",
        "name|  Ball  |Ball", "sku|00123|00123"})
    void words_lists_colours_and_texts_are_tidied(String column, String text, String cell) {
        assertThat(tidied(column, text).cell()).isEqualTo(cell);
    }

    @Test
    void spaces_that_cannot_be_seen_are_no_text() {
        assertThat(tidied("name", "\u00A0Ball\u200B\uFEFF ").cell()).isEqualTo("Ball");
        assertThat(tidied("shelf", "\u00A0").cell()).isEmpty();
    }

    @Test
    void a_character_that_nothing_can_show_is_found() {
        assertThat(Tidy.unprintable("Ball\u0007")).contains(7);
        assertThat(Tidy.unprintable("\uD83C ball")).contains(0xD83C);
        assertThat(Tidy.unprintable("Ball \uD83C\uDF84,\n3½ in\t!")).isEmpty();
    }
}
