package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinearRgbTest {

    /** IEC 61966-2-1: the linear foot ends at 0.04045, so that 10 of 255 is on it and 11 is not; 0.5 becomes 0.2140 (both reckoned by hand). */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 0.00303527", "11, 0.00334654", "128, 0.21586050", "255, 1"})
    void light_follows_the_transfer_function(int part, double light) {
        LinearRgb grey = LinearRgb.of(new Srgb(part, part, part));
        assertThat(grey.r()).isCloseTo(light, within(5e-9)).isEqualTo(grey.g()).isEqualTo(grey.b());
    }

    @Test
    void every_part_comes_back() {
        for (int part = 0; part < 256; part++) {
            Srgb colour = new Srgb(part, 255 - part, part / 2);
            assertThat(LinearRgb.of(colour).toSrgb()).isEqualTo(colour);
        }
    }

    @Test
    void more_light_never_gives_a_lower_part_and_each_part_takes_the_light_nearest_to_it() {
        int before = 0;
        for (double light = 0; light <= 1; light += 1e-4) {
            int part = new LinearRgb(light, 0, 0).toSrgb().red();
            assertThat(part).isGreaterThanOrEqualTo(before);
            double encoded = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
            assertThat(255 * encoded).isBetween(part - 0.5, part + 0.5);
            before = part;
        }
        assertThat(before).isEqualTo(255);
    }

    @ParameterizedTest
    @CsvSource({"-0.2, 0.5, 1.3, #00bcff", "-5, -5, -5, #000000", "7, 7, 7, #ffffff"})
    void what_lies_outside_is_clipped_in_8_bits(double r, double g, double b, String shown) {
        assertThat(new LinearRgb(r, g, b).toSrgb().hex()).isEqualTo(shown);
        assertThat(new LinearRgb(r, g, b).clipped().inGamut()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5, 1, true", "-1e-9, 0.5, 1.000000001, true", "-1e-5, 0.5, 1, false", "0, 1.00001, 0, false",
        "0, 0, 1.00001, false", "NaN, 0, 0, false"})
    void the_gamut_is_0_to_1_but_for_rounding(double r, double g, double b, boolean within) {
        assertThat(new LinearRgb(r, g, b).inGamut()).isEqualTo(within);
    }

    /** Takes percentages as CSS writes them back to light; for the tests of this package. */
    static double light(double percent) {
        double v = percent / 100;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
