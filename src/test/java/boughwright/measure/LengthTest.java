package boughwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    /** The foot is 0.3048 m and the inch 0.0254 m: international yard and pound agreement of 1959 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "9 ft, 2.7432", "9ft, 2.7432", "9 FT, 2.7432", "9 feet, 2.7432", "1 foot, 0.3048", "9', 2.7432", "7.5 ft, 2.286",
        "7 ft 6 in, 2.286", "7ft6in, 2.286", "7 feet 6 inches, 2.286", "62 in, 1.5748", "1 inch, 0.0254", "4.75 in, 0.12065",
        "228 cm, 2.28", "2.3 m, 2.3", "60 mm, 0.06", "'  2.3 m  ', 2.3", "0 ft, 0"})
    void a_length_with_its_unit_is_read_in_metres(String text, double metres) {
        assertThat(Length.read(text)).hasValueSatisfying(length -> assertThat(length.metres()).isCloseTo(metres, within(1e-12)));
    }

    @Test
    void halves_as_they_are_shown_are_read_too() {
        assertThat(Length.read("20½ in")).hasValue(Length.ofInches(20.5));
        assertThat(Length.read("½ in")).hasValue(Length.ofInches(0.5));
        assertThat(Length.read("7½ ft")).hasValue(Length.ofFeet(7.5));
    }

    @Test
    void feet_and_inches_in_signs_are_read_too() {
        assertThat(Length.read("7' 6\"")).isEqualTo(Length.read("7 ft 6 in"));
        assertThat(Length.read("7′6″")).isEqualTo(Length.read("7 ft 6 in"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "   ", "9", "9.5", "ft", "in", "-9 ft", "- 9 ft", "+9 ft", "9 ft ft", "9 ft 6", "7 6 in", "6 in 7 ft", "9 ft 2 m", "2 m 30 cm",
        "1,500 mm", "9,500 ft", "9,5,5 ft", ".5 m", "9. ft", "1e3 m", "NaN m", "Infinity m", "9 yd", "9 furlongs", "nine ft", "9 ft tall", "9 ft; drop", "９ ft", "7.5 ft 6 in", "5 ft 14 in", "½", "½½ in"})
    void anything_beside_a_plain_number_and_its_unit_is_refused(String text) {
        assertThat(Length.read(text)).isEmpty();
    }

    @Test
    void unit_words_and_the_decimal_comma_of_every_language_are_read_whichever_is_spoken() {
        assertThat(Length.read("7 Fuß 6 Zoll")).isEqualTo(Length.read("7 ft 6 in"));
        assertThat(Length.read("7 FUSS")).isEqualTo(Length.read("7 ft"));
        assertThat(Length.read("7 pies 6 pulgadas")).isEqualTo(Length.read("7 ft 6 in"));
        assertThat(Length.read("1 pie 1 pulgada")).isEqualTo(Length.read("1 ft 1 in"));
        assertThat(Length.read("2,3 m")).isEqualTo(Length.read("2.3 m"));
        assertThat(Length.read("7,5 Fuß")).isEqualTo(Length.read("7.5 ft"));
    }

    @Test
    void no_text_at_all_is_refused() {
        assertThat(Length.read(null)).isEmpty();
    }

    @Test
    void a_text_longer_than_any_length_is_refused_before_it_is_parsed() {
        assertThat(Length.read("9".repeat(400) + " ft")).isEmpty();
        assertThat(Length.read("9".repeat(50) + " m")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2.7432, 9 ft", "2.286, 7 ft 6 in", "2.29, 7 ft 6 in", "0.6096, 2 ft", "1.5748, 5 ft 2 in", "0.2032, 8 in",
        "0.0635, 2½ in", "0.0127, ½ in", "0, 0 in", "0.587, 23 in", "6.096, 20 ft"})
    void in_feet_it_shows_whole_inches_from_two_feet_up_and_half_inches_below(double metres, String shown) {
        assertThat(Length.ofMetres(metres).show(Units.FEET)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"2.286, 2.29 m", "2.3, 2.3 m", "1, 1 m", "10, 10 m", "0.995, 1 m", "0.9949, 99 cm", "0.43, 43 cm", "0, 0 cm"})
    void in_metres_it_shows_centimetres_and_below_one_metre_nothing_smaller(double metres, String shown) {
        assertThat(Length.ofMetres(metres).show(Units.METRES)).isEqualTo(shown);
    }

    @Test
    void what_is_shown_can_be_read_again_to_within_half_of_the_last_place_shown() {
        for (int millimetres = 610; millimetres <= 7000; millimetres++) {
            Length length = Length.ofMillimetres(millimetres);
            assertThat(Length.read(length.show(Units.FEET)).orElseThrow().metres()).isCloseTo(length.metres(), within(0.0127 + 1e-9));
            assertThat(Length.read(length.show(Units.METRES)).orElseThrow().metres()).isCloseTo(length.metres(), within(0.005 + 1e-9));
        }
    }

    @Test
    void the_same_length_comes_back_in_every_unit() {
        Length nine = Length.ofFeet(9);
        assertThat(nine.feet()).isCloseTo(9, within(1e-12));
        assertThat(nine.inches()).isCloseTo(108, within(1e-12));
        assertThat(nine.millimetres()).isCloseTo(2743.2, within(1e-9));
        assertThat(Length.ofInches(108)).usingComparator((a, b) -> Double.compare(Math.abs(a.metres() - b.metres()), 1e-12) > 0 ? 1 : 0).isEqualTo(nine);
    }

    @Test
    void lengths_order_by_size() {
        assertThat(Length.ofInches(30)).isGreaterThan(Length.ofFeet(2)).isLessThan(Length.ofMetres(1));
    }

    @Test
    void a_length_that_is_no_number_is_a_defect() {
        assertThatThrownBy(() -> new Length(Double.NaN)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Length(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"228 cm, METRES", "2.3 m, METRES", "60 mm, METRES", "2.3 M, METRES", "9 ft, FEET", "62 in, FEET", "7 ft 6 in, FEET", "9, FEET", "'', FEET"})
    void a_person_reads_lengths_in_the_units_that_they_wrote(String text, Units units) {
        assertThat(Units.of(text)).isEqualTo(units);
    }
}
