package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarmLightTest {

    private static final double[] D65 = {0.95047, 1, 1.08883};
    private static final double[] D50 = {0.96422, 1, 0.82521};
    private static final double[] A = {1.09850, 1, 0.35585};

    private static Srgb colour(String hex) {
        return Srgb.read(hex).orElseThrow();
    }

    /** B. Lindbloom, "Chromatic Adaptation", Bradford matrices to seven decimals for these whites, as several programs print them in their tests. */
    @Test
    void the_bradford_matrices_are_the_published_ones() {
        assertThat(WarmLight.bradford(D65, A).rows()).containsExactly(new double[] {
            1.2164557, 0.1109905, -0.1549325, 0.1533326, 0.9152313, -0.0559953, -0.0239469, 0.0358984, 0.3147529}, within(1e-6));
        assertThat(WarmLight.bradford(A, D65).rows()).containsExactly(new double[] {
            0.8446965, -0.1179225, 0.3948108, -0.1366303, 1.1041226, 0.1291718, 0.0798489, -0.1348999, 3.1924009}, within(2e-6));
        assertThat(WarmLight.bradford(D65, D50).rows()).containsExactly(new double[] {
            1.0478112, 0.0228866, -0.0501270, 0.0295424, 0.9904844, -0.0170491, -0.0092345, 0.0150436, 0.7521316}, within(1e-6));
    }

    /** colour-science (colour/appearance/ciecam02.py), its own example: F = 1, 318.31 cd/m². */
    @Test
    void the_degree_of_adaptation_is_that_of_ciecam02() {
        assertThat(WarmLight.adaptation(1, 318.31)).isCloseTo(0.994468780088437, within(1e-12));
        assertThat(WarmLight.LAMP.adaptation()).isBetween(0.7, 0.8);
    }

    /** ColorAide (tests/test_cct.py): the black body of 2000 K has XYZ 1.2743, 1, 0.14524. */
    @Test
    void the_white_of_a_black_body_is_that_of_a_colour_library() {
        assertThat(WarmLight.white(2000)).containsExactly(new double[] {1.2743, 1, 0.14524}, within(0.004));
    }

    /** CIE standard illuminant A, 2856 K: x 0.44757, y 0.40745 (CIE 15). */
    @Test
    void the_white_of_2856_kelvin_is_illuminant_a() {
        double[] white = WarmLight.white(2856);
        double sum = white[0] + white[1] + white[2];
        assertThat(white[0] / sum).isCloseTo(0.44757, within(1e-3));
        assertThat(white[1] / sum).isCloseTo(0.40745, within(1e-3));
    }

    /** C. S. McCamy, "Correlated color temperature as an explicit function of chromaticity coordinates", Color Research &amp; Application 17, 1992. */
    @ParameterizedTest
    @CsvSource({"2200", "2223", "2700", "3000", "3900"})
    void a_published_formula_reads_the_temperature_back_from_the_white(double kelvin) {
        double[] white = WarmLight.white(kelvin);
        double sum = white[0] + white[1] + white[2];
        double n = (white[0] / sum - 0.3320) / (0.1858 - white[1] / sum);
        assertThat(((449 * n + 3525) * n + 6823.3) * n + 5520.33).isCloseTo(kelvin, within(0.01 * kelvin));
    }

    @Test
    void an_eye_that_is_wholly_used_to_the_lamp_sees_no_change() {
        WarmLight used = new WarmLight(2700, 1);
        for (String hex : new String[] {"#ffffff", "#b5713a", "#2f6f7c", "#1f2f55", "#000000"}) {
            assertThat(used.seen(colour(hex))).isEqualTo(colour(hex));
        }
    }

    @Test
    void an_eye_that_expects_daylight_sees_white_in_the_very_colour_of_the_lamp() {
        double[] matrix = new WarmLight(2700, 0).matrix();
        double[] light = LightMatrix.of(matrix).times(1, 1, 1);
        double[] xyz = LightMatrix.of(0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339, 0.1191920, 0.9503041)
                .times(light[0], light[1], light[2]);
        double[] lamp = WarmLight.white(2700);
        assertThat(xyz[0] / xyz[1]).isCloseTo(lamp[0], within(1e-9));
        assertThat(xyz[2] / xyz[1]).isCloseTo(lamp[2], within(1e-9));
    }

    @Test
    void white_grows_warm_blue_grows_dull_and_nothing_is_cut_off() {
        Srgb white = WarmLight.LAMP.seen(new Srgb(255, 255, 255));
        assertThat(white.red()).isEqualTo(255);
        assertThat(white.green()).isBetween(215, 240);
        assertThat(white.blue()).isLessThan(white.green() - 10);
        assertThat(Lab.of(WarmLight.LAMP.seen(colour("#2f6f7c"))).chroma()).isLessThan(Lab.of(colour("#2f6f7c")).chroma() * 0.8);
        assertThat(Lab.of(WarmLight.LAMP.seen(colour("#b5713a"))).b()).isGreaterThan(20);
        for (double part : LightMatrix.of(WarmLight.LAMP.matrix()).times(1, 1, 1)) {
            assertThat(part).isLessThanOrEqualTo(1 + 1e-12);
        }
    }

    @Test
    void candlelight_changes_more_than_lamplight_and_leaves_black_black() {
        assertThat(WarmLight.CANDLE.seen(new Srgb(255, 255, 255)).blue()).isLessThan(WarmLight.LAMP.seen(new Srgb(255, 255, 255)).blue());
        assertThat(WarmLight.CANDLE.seen(new Srgb(0, 0, 0))).isEqualTo(new Srgb(0, 0, 0));
    }

    @ParameterizedTest
    @CsvSource({"1500, 0.5", "4500, 0.5", "2700, -0.1", "2700, 1.1", "NaN, 0.5"})
    void a_light_or_a_degree_out_of_range_is_a_defect(double kelvin, double adaptation) {
        assertThatThrownBy(() -> new WarmLight(kelvin, adaptation)).isInstanceOf(IllegalArgumentException.class);
    }
}
