package boughwright.needs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightLoadTest {

    /** NEC 210.20(A): a load of three hours and more takes at most 80 % of 15 A × 120 V. */
    private static final double CIRCUIT = 0.8 * 15 * 120;

    /**
     * By hand: floor(1440 / W). A string of 100 incandescent bulbs takes 40.8 W (pfeiffertheface.com) or 48 W (christmascentral.com),
     * one of 50 LEDs 4.8 W (christmascentral.com).
     */
    @ParameterizedTest
    @CsvSource({"40.8, 35", "48, 30", "4.8, 300", "1440, 1", "1441, 0"})
    void strings_for_each_circuit(double watts, int strings) {
        assertThat(new LightLoad(1, watts, 0).stringsWithin(CIRCUIT)).isEqualTo(strings);
    }

    @ParameterizedTest
    @CsvSource({"40.8", "48", "4.8", "0.1", "7", "12.5", "33.3"})
    void as_many_strings_as_a_circuit_carries_are_not_over_it_and_one_more_is(double watts) {
        int most = new LightLoad(1, watts, 0).stringsWithin(CIRCUIT);
        assertThat(new LightLoad(most, watts, 0).totalWatts()).isLessThanOrEqualTo(CIRCUIT + 1e-9);
        assertThat(new LightLoad(most + 1, watts, 0).totalWatts()).isGreaterThan(CIRCUIT);
    }
}
