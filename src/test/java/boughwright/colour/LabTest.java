package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabTest {

    /** CIE Lab under D65 of the sRGB primaries and greys, as colour-conversion tables print them (from memory). */
    @ParameterizedTest
    @CsvSource({"#ffffff, 100, 0, 0", "#000000, 0, 0, 0", "#ff0000, 53.24, 80.09, 67.20", "#00ff00, 87.73, -86.18, 83.18",
        "#0000ff, 32.30, 79.19, -107.86", "#808080, 53.59, 0, 0", "#010101, 0.27, 0, 0"})
    void srgb_turns_into_lab(String hex, double l, double a, double b) {
        Lab lab = Lab.of(Srgb.read(hex).orElseThrow());
        assertThat(lab.l()).isCloseTo(l, within(0.02));
        assertThat(lab.a()).isCloseTo(a, within(0.02));
        assertThat(lab.b()).isCloseTo(b, within(0.02));
    }

    /** The same by light: kits and layouts rest on these values, to the last bit. */
    @Test
    void lab_is_the_same_from_srgb_and_from_its_light() {
        for (int i = 0; i < 17 * 17 * 17; i++) {
            assertThat(Lab.of(LinearRgb.of(Grid.colour(i)))).isEqualTo(Lab.of(Grid.colour(i)));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "8, 5, -5", "1, 0.5, 0.2", "50, 80, 90", "100, -150, 150", "5, -40, 20"})
    void light_turns_back_into_lab_within_the_gamut_and_beyond(double l, double a, double b) {
        Lab back = Lab.of(new Lab(l, a, b).toLinear());
        assertThat(back.l()).isCloseTo(l, within(1e-12));
        assertThat(back.a()).isCloseTo(a, within(1e-12));
        assertThat(back.b()).isCloseTo(b, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"3, 4, 5", "0, 0, 0", "-3, 4, 5"})
    void chroma_is_the_distance_from_grey(double a, double b, double chroma) {
        assertThat(new Lab(50, a, b).chroma()).isEqualTo(chroma);
    }
}
