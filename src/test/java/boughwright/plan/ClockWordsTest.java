package boughwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How one reads a clock face: common practice, no published source. */
class ClockWordsTest {

    @ParameterizedTest
    @CsvSource({"6,6 o’clock", "3,3 o’clock", "12,12 o’clock", "4.2,4 o’clock", "4.3,half past 4", "4.5,half past 4", "4.8,5 o’clock",
        "0.1,12 o’clock", "0.3,half past 12", "0.6,half past 12", "0.9,1 o’clock", "11.5,half past 11", "11.9,12 o’clock"})
    void a_clock_position_is_told_to_the_nearest_half_hour(double clock, String words) {
        assertThat(Planning.clock(clock)).isEqualTo(words);
    }
}
