package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GamutMappingTest {

    /**
     * Full colours of a display-P3 screen brought into sRGB by the algorithm of CSS Color 4, in percent: test suite of color.js
     * (color-js/color.js, test/gamut.js, "P3 primaries to sRGB, CSS algorithm", and its whites and blacks).
     */
    @ParameterizedTest
    @CsvSource({"1, 0, 0, 100, 4.457, 4.5932", "0, 1, 0, 0, 98.576, 15.974", "0, 0, 1, 0, 0, 100", "1, 1, 0, 99.623, 99.901, 0",
        "0, 1, 1, 0, 99.645, 98.471", "1, 0, 1, 100, 16.736, 98.264", "1, 1, 1, 100, 100, 100", "0, 0, 0, 0, 0, 0"})
    void full_colours_of_a_wider_screen_are_mapped_as_published(double r, double g, double b, double red, double green, double blue) {
        LinearRgb light = GamutMapping.of(Oklch.of(displayP3(r, g, b).toLinear()));
        // Published to five digits; the search itself ends within 0.0001.
        assertThat(light.r()).isCloseTo(LinearRgbTest.light(red), within(2e-4));
        assertThat(light.g()).isCloseTo(LinearRgbTest.light(green), within(2e-4));
        assertThat(light.b()).isCloseTo(LinearRgbTest.light(blue), within(2e-4));
    }

    /** W3C Web Platform Tests, oklch-008: display-P3 green is oklch(84.883% 0.36853 145.645). CSS Color 4: its yellow is (0.96476 0.24503 110.23). */
    @ParameterizedTest
    @CsvSource({"0, 1, 0, 0.84883, 0.36853, 145.645", "1, 1, 0, 0.96476, 0.24503, 110.23"})
    void full_colours_of_a_wider_screen_have_the_published_oklch(double r, double g, double b, double l, double c, double h) {
        Oklch oklch = Oklch.of(displayP3(r, g, b).toLinear());
        assertThat(oklch.l()).isCloseTo(l, within(1e-5));
        assertThat(oklch.c()).isCloseTo(c, within(1.1e-5));
        assertThat(oklch.h()).isCloseTo(h, within(5e-3));
        assertThat(oklch.inGamut()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"1, 0.3, 20, #ffffff", "1.2, 0, 0, #ffffff", "0, 0.3, 20, #000000", "-0.1, 0.1, 300, #000000"})
    void at_the_ends_of_lightness_there_is_white_and_black(double l, double c, double h, String shown) {
        assertThat(new Oklch(l, c, h).mapped().hex()).isEqualTo(shown);
    }

    @Test
    void what_is_shown_keeps_lightness_and_hue_and_gains_no_chroma_but_for_what_no_one_notices() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 20_000; i++) {
            Oklch wanted = new Oklch(random.nextDouble(), random.nextDouble(0.6), random.nextDouble(360));
            LinearRgb shown = GamutMapping.of(wanted);
            assertThat(shown.exactlyInGamut()).isTrue();
            Oklab seen = Oklab.of(shown);
            // Some chroma up to the wanted one gives a colour of that lightness and hue less than the just noticeable 0.02 away.
            double along = seen.a() * Math.cos(Math.toRadians(wanted.h())) + seen.b() * Math.sin(Math.toRadians(wanted.h()));
            double chroma = Math.max(0, Math.min(wanted.c(), along));
            assertThat(seen.difference(new Oklch(wanted.l(), chroma, wanted.h()).toOklab())).as(wanted.toString()).isLessThan(0.02);
        }
    }

    @Test
    void less_chroma_is_lost_than_by_moving_straight_to_the_edge_of_the_gamut() {
        SplittableRandom random = new SplittableRandom(5);
        double ours = 0;
        double edge = 0;
        for (int i = 0; i < 2_000; i++) {
            Oklch wanted = new Oklch(random.nextDouble(0.2, 0.95), 0.4, random.nextDouble(360));
            double low = 0;
            double high = wanted.c();
            while (high - low > 1e-6) {
                double middle = (low + high) / 2;
                if (new Oklch(wanted.l(), middle, wanted.h()).inGamut()) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            ours += Oklab.of(GamutMapping.of(wanted)).chroma();
            edge += low;
        }
        assertThat(ours / edge).isBetween(1.02, 1.2);
    }

    /** Linear display-P3 into XYZ by the fractions of CSS Color 4's sample code; 0 and 1 are the same in light and in code. */
    private static Xyz displayP3(double r, double g, double b) {
        return new Xyz(
                608311.0 / 1250200 * r + 189793.0 / 714400 * g + 198249.0 / 1000160 * b,
                35783.0 / 156275 * r + 247089.0 / 357200 * g + 198249.0 / 2500400 * b,
                32229.0 / 714400 * g + 5220557.0 / 5000800 * b);
    }
}
