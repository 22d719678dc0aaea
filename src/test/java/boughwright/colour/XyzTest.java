package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class XyzTest {

    /** ColorAide test suite (facelessuser/coloraide, tests/test_xyz_d65.py), five digits; green also in W3C Web Platform Tests, xyz-001. */
    @ParameterizedTest
    @CsvSource({
        "#ff0000, 0.41239, 0.21264, 0.01933", "#ffa500, 0.54694, 0.48173, 0.06418", "#ffff00, 0.76998, 0.92781, 0.13853",
        "#008000, 0.07719, 0.15438, 0.02573", "#0000ff, 0.18048, 0.07219, 0.95053", "#4b0082, 0.0693, 0.03108, 0.21355",
        "#ee82ee, 0.58672, 0.40317, 0.85583", "#ffffff, 0.95046, 1, 1.0891", "#808080, 0.20517, 0.21586, 0.23508", "#000000, 0, 0, 0"})
    void srgb_turns_into_the_published_xyz_and_back(String hex, double x, double y, double z) {
        Srgb colour = Srgb.read(hex).orElseThrow();
        Xyz xyz = Xyz.of(colour);
        assertThat(xyz.x()).isCloseTo(x, within(5.1e-6));
        assertThat(xyz.y()).isCloseTo(y, within(5.1e-6));
        assertThat(xyz.z()).isCloseTo(z, within(5.1e-5));
        assertThat(new Xyz(x, y, z).toLinear().toSrgb()).isEqualTo(colour);
    }

    @Test
    void light_comes_back_within_the_gamut_and_beyond() {
        for (double r = -0.5; r <= 1.5; r += 0.25) {
            for (double g = -0.5; g <= 1.5; g += 0.25) {
                for (double b = -0.5; b <= 1.5; b += 0.25) {
                    LinearRgb back = Xyz.of(new LinearRgb(r, g, b)).toLinear();
                    assertThat(back.r()).isCloseTo(r, within(1e-14));
                    assertThat(back.g()).isCloseTo(g, within(1e-14));
                    assertThat(back.b()).isCloseTo(b, within(1e-14));
                }
            }
        }
    }
}
