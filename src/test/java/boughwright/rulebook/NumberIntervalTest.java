package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberIntervalTest {

    private static final NumberInterval HEIGHTS = NumberInterval.read("[3 .. 20]").orElseThrow();

    @ParameterizedTest
    @CsvSource({"[8 .. 10), 8, true", "[8 .. 10), 10, false", "(8 .. 10], 8, false", "(8 .. 10], 10, true", "]8 .. 10[, 9, true", "]8 .. 10[, 10, false",
        "[8..10], 8.0, true", "9, 9.00, true", "9, 9.01, false"})
    void an_end_belongs_to_a_range_as_its_bracket_says(String cell, BigDecimal number, boolean inside) {
        assertThat(NumberInterval.read(cell).orElseThrow().contains(number)).isEqualTo(inside);
    }

    @ParameterizedTest
    @CsvSource({"-, from 3 to 20", "< 5, from 3 to below 5", "<= 5, from 3 to 5", ">= 12, from 12 to 20", "> 12, 'above 12, up to 20'", "8, of 8"})
    void a_comparison_reaches_to_the_end_of_what_is_allowed(String cell, String words) {
        assertThat(NumberInterval.read(cell, HEIGHTS).orElseThrow().words()).isEqualTo(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "tall", "[8 ..", "[10 .. 8]", "(8 .. 8)", "[8 .. 8)", "< tall", "< 3", "[8, 10]", "not(8)"})
    void what_holds_no_number_is_no_range(String cell) {
        assertThat(NumberInterval.read(cell, HEIGHTS)).isEmpty();
    }

    @Test
    void the_middle_always_belongs_to_it() {
        for (String cell : new String[] {"[8 .. 10)", "(8 .. 10]", "]8 .. 8.001[", "8"}) {
            NumberInterval interval = NumberInterval.read(cell).orElseThrow();
            assertThat(interval.contains(interval.middle())).as(cell).isTrue();
        }
    }
}
