package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OklchTest {

    /**
     * CSS Color Module Level 4: blue is oklch(0.452 0.313 264.1) and yellow oklch(0.968 0.211 109.8). W3C Web Platform Tests, css/css-color:
     * green is oklch(51.975% 0.17686 142.495).
     */
    @ParameterizedTest
    @CsvSource({"#0000ff, 0.452, 0.313, 264.1, 0.05", "#ffff00, 0.968, 0.211, 109.8, 0.05", "#008000, 0.51975, 0.17686, 142.495, 0.0005"})
    void srgb_turns_into_the_published_oklch_and_back(String hex, double l, double c, double h, double degrees) {
        Srgb colour = Srgb.read(hex).orElseThrow();
        Oklch oklch = Oklch.of(colour);
        assertThat(oklch.l()).isCloseTo(l, within(degrees / 100));
        assertThat(oklch.c()).isCloseTo(c, within(degrees / 100));
        assertThat(oklch.h()).isCloseTo(h, within(degrees));
        assertThat(oklch.toLinear().toSrgb()).isEqualTo(colour);
    }

    /** W3C Web Platform Tests, css/css-color, oklch-004, -005 and -007: OKLCH and the sRGB it stands for, in percent. */
    @ParameterizedTest
    @CsvSource({"0.50, 0.2, 0, 70.492, 2.351, 37.073", "0.50, 0.2, 270, 23.056, 31.73, 82.628", "0.55, 0.15, 345, 67.293, 27.791, 52.28",
        "0.55, 0.15, -15, 67.293, 27.791, 52.28"})
    void oklch_turns_into_the_published_srgb(double l, double c, double h, double red, double green, double blue) {
        LinearRgb light = new Oklch(l, c, h).toLinear();
        assertThat(light.r()).isCloseTo(LinearRgbTest.light(red), within(2e-5));
        assertThat(light.g()).isCloseTo(LinearRgbTest.light(green), within(2e-5));
        assertThat(light.b()).isCloseTo(LinearRgbTest.light(blue), within(2e-5));
    }

    @Test
    void what_srgb_can_show_is_in_gamut_comes_back_and_is_mapped_onto_itself() {
        for (int i = 0; i < 17 * 17 * 17; i++) {
            Srgb colour = Grid.colour(i);
            Oklch oklch = Oklch.of(colour);
            assertThat(oklch.inGamut()).isTrue();
            assertThat(oklch.mapped()).isEqualTo(colour);
            assertThat(oklch.toLinear().toSrgb()).isEqualTo(colour);
            assertThat(oklch.toOklab().difference(Oklab.of(colour))).isLessThan(1e-14);
        }
    }

    @Test
    void more_colour_than_a_screen_has_is_out_of_gamut() {
        for (int i = 0; i < 17 * 17 * 17; i++) {
            Oklch oklch = Oklch.of(Grid.colour(i));
            assertThat(new Oklch(oklch.l(), 0.4, oklch.h()).inGamut()).isFalse();
        }
    }

    @Test
    void greys_have_no_hue_and_grow_lighter_with_their_parts() {
        double before = -1;
        for (int part = 0; part < 256; part++) {
            Oklch grey = Oklch.of(new Srgb(part, part, part));
            assertThat(grey.h()).isZero();
            assertThat(grey.c()).isLessThan(1e-14);
            assertThat(grey.l()).isGreaterThan(before);
            before = grey.l();
        }
        assertThat(before).isCloseTo(1, within(1e-14));
    }
}
