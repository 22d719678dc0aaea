package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.colour.Deficiency.Cone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeficiencyTest {

    private static Srgb colour(String hex) {
        return Srgb.read(hex).orElseThrow();
    }

    private static double apart(Sight sight, String one, String other) {
        return Lab.of(sight.seen(colour(one))).difference(Lab.of(sight.seen(colour(other))));
    }

    /** ColorAide test suite (facelessuser/coloraide, tests/test_cvd.py), method machado: parts beyond the screen's range are cut off here. */
    @ParameterizedTest
    @CsvSource({
        "#ff0000, LONG, 1, 108.79, 95.027, -12.596", "#ffa500, LONG, 1, 195.42, 171.59, -40.805", "#ffff00, LONG, 1, 276.72, 243.54, -64.46",
        "#008000, LONG, 1, 131.07, 114.46, -26.091", "#0000ff, LONG, 1, -124.94, 88.706, 260.74", "#4b0082, LONG, 1, -52.54, 48.562, 133",
        "#ee82ee, LONG, 1, 120.65, 161.38, 241.7",
        "#ff0000, MIDDLE, 1, 163.22, 144.28, -28.312", "#ffa500, MIDDLE, 1, 216.62, 192.97, 13.854", "#ffff00, MIDDLE, 1, 279.03, 249.61, 49.346",
        "#008000, MIDDLE, 1, 119.39, 106.36, 24.233", "#0000ff, MIDDLE, 1, -131.27, 61.499, 251.48", "#4b0082, MIDDLE, 1, -43.863, 48.637, 127.89",
        "#ee82ee, MIDDLE, 1, 151.4, 175.26, 234.64",
        "#ff0000, SHORT, 1, 281.76, -79.111, 14.888", "#ffa500, SHORT, 1, 278.9, 142.32, 140.64", "#ffff00, SHORT, 1, 274.08, 237.68, 217.31",
        "#008000, SHORT, 1, -34.707, 123.82, 107.76", "#0000ff, SHORT, 1, -117.27, 107.2, 149.76", "#4b0082, SHORT, 1, 62.17, 46.101, 73.836",
        "#ee82ee, SHORT, 1, 243.86, 141.14, 173.06",
        "#ff0000, LONG, 0, 255, 0, 0", "#ff0000, LONG, 0.1, 238.14, 47.812, -9.4884", "#ff0000, LONG, 0.3, 207.94, 74.375, -18.565",
        "#ff0000, LONG, 0.5, 180.29, 85.877, -20.99", "#ff0000, LONG, 0.8, 139.3, 93.339, -18.496",
        "#ff0000, LONG, 0.42, 191.3, 82.103, -20.426", "#ff0000, LONG, 0.45, 187.27, 83.542, -20.639", "#ff0000, LONG, 0.49, 181.72, 85.416, -20.92"})
    void colours_are_seen_as_a_colour_library_sees_them_by_the_same_model(String hex, Cone cone, double severity, double red, double green, double blue) {
        Srgb seen = new Deficiency(cone, severity).seen(colour(hex));
        assertThat(new double[] {seen.red(), seen.green(), seen.blue()}).containsExactly(new double[] {cut(red), cut(green), cut(blue)}, within(0.51));
    }

    private static double cut(double part) {
        return Math.max(0, Math.min(255, part));
    }

    /** colorspacious (njsmith/colorspacious, cvd.py), its own test: deuteranomaly of 50 and of 53.1 in a hundred. */
    @Test
    void severities_between_the_published_ones_are_mixed_from_their_neighbours() {
        double[] half = {0.547494, 0.607765, -0.155259, 0.181692, 0.781742, 0.036566, -0.010410, 0.027275, 0.983136};
        double[] more = {0.498864, 0.674741, -0.173604, 0.205199, 0.754872, 0.039929, -0.011131, 0.030969, 0.980162};
        double[] mixed = new double[9];
        for (int i = 0; i < 9; i++) {
            mixed[i] = 0.31 * more[i] + 0.69 * half[i];
        }
        assertThat(new Deficiency(Cone.MIDDLE, 0.5).matrix()).containsExactly(half, within(1e-12));
        assertThat(new Deficiency(Cone.MIDDLE, 0.531).matrix()).containsExactly(mixed, within(1e-12));
    }

    /** White has no hue for anybody: each row of a published matrix adds up to 1 within its rounding. */
    @ParameterizedTest
    @EnumSource(Cone.class)
    void greys_stay_as_they_are_at_every_severity(Cone cone) {
        for (int tenth = 0; tenth <= 20; tenth++) {
            for (int grey = 0; grey < 256; grey += 15) {
                assertThat(new Deficiency(cone, tenth / 20.0).seen(new Srgb(grey, grey, grey))).isEqualTo(new Srgb(grey, grey, grey));
            }
        }
    }

    /** The red of cranberries and the green of pine, as one of the shipped palettes has them. */
    @Test
    void red_and_green_come_closer_the_fewer_long_cones_there_are_and_blue_and_yellow_do_not() {
        double before = 100;
        for (int tenth = 0; tenth <= 10; tenth++) {
            double now = apart(new Deficiency(Cone.LONG, tenth / 10.0), "#a3202e", "#24402f");
            assertThat(now).isLessThan(before);
            before = now;
        }
        assertThat(before).isLessThan(5);
        assertThat(Lab.of(colour("#a3202e")).difference(Lab.of(colour("#24402f")))).isGreaterThan(45);
        assertThat(apart(Deficiency.PROTANOPIA, "#1f2f8f", "#e8d23c")).isGreaterThan(60);
    }

    @Test
    void without_middle_cones_red_stays_lighter_than_without_long_ones() {
        Srgb red = colour("#c8102e");
        assertThat(Lab.of(Deficiency.DEUTERANOPIA.seen(red)).l()).isGreaterThan(Lab.of(Deficiency.PROTANOPIA.seen(red)).l() + 8);
    }

    /**
     * F. Viénot, H. Brettel, J. D. Mollon, "Digital video colourmaps for checking the legibility of displays by dichromats", Color
     * Research &amp; Application 24(4), 1999, as ColorAide (coloraide/filters/cvd.py) has it for linear light: another model, by other people.
     */
    @ParameterizedTest
    @CsvSource({"#a3202e, #24402f", "#a3202e, #5a4a1c", "#2d5b43, #7a3a22", "#8f2f4c, #33415e"})
    void another_published_model_brings_the_same_reds_and_greens_together(String one, String other) {
        LightMatrix vienot = LightMatrix.of(0.1123827612221641, 0.8876172387778365, 0, 0.11238276122216397, 0.8876172387778359, 0,
                0.004005768273046939, -0.004005768273046967, 1);
        double there = Lab.of(vienot.applied(colour(one))).difference(Lab.of(vienot.applied(colour(other))));
        double whole = Lab.of(colour(one)).difference(Lab.of(colour(other)));
        assertThat(apart(Deficiency.PROTANOPIA, one, other)).isCloseTo(there, within(6.0)).isLessThan(whole / 2);
        assertThat(there).isLessThan(whole / 2);
    }

    /** Tritanopes take blue-green and blue for one another, and yellow and pink (common knowledge of the field, from memory). */
    @Test
    void without_short_cones_yellow_and_pink_come_together() {
        assertThat(apart(Deficiency.TRITANOPIA, "#e8c35a", "#e3a5b5")).isLessThan(apart(new Deficiency(Cone.SHORT, 0), "#e8c35a", "#e3a5b5") / 2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void a_severity_outside_0_to_1_is_a_defect(double severity) {
        assertThatThrownBy(() -> new Deficiency(Cone.LONG, severity)).isInstanceOf(IllegalArgumentException.class);
    }
}
