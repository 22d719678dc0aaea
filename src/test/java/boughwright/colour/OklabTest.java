package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OklabTest {

    /** B. Ottosson, "A perceptual color space for image processing", 23 December 2020, "Table of example XYZ and Oklab pairs". */
    @ParameterizedTest
    @CsvSource({"0.950, 1.000, 1.089, 1.000, 0.000, 0.000", "1, 0, 0, 0.450, 1.236, -0.019", "0, 1, 0, 0.922, -0.671, 0.263", "0, 0, 1, 0.153, -1.415, -0.449"})
    void xyz_turns_into_the_published_oklab(double x, double y, double z, double l, double a, double b) {
        assertClose(Oklab.of(new Xyz(x, y, z)), l, a, b, 5.0001e-4);
    }

    /** W3C Web Platform Tests, css/css-color, oklab-004 to -007: Oklab and the sRGB it stands for, in percent. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.05, 0, 48.477, 34.29, 38.412", "0.7, -0.1, 0, 29.264, 70.096, 63.017", "0.7, 0, 0.125, 73.942, 60.484, 19.65",
        "0.55, 0, -0.2, 27.888, 38.072, 89.414"})
    void oklab_turns_into_the_published_srgb_and_back(double l, double a, double b, double red, double green, double blue) {
        LinearRgb light = new Oklab(l, a, b).toLinear();
        assertThat(light.r()).isCloseTo(LinearRgbTest.light(red), within(2e-5));
        assertThat(light.g()).isCloseTo(LinearRgbTest.light(green), within(2e-5));
        assertThat(light.b()).isCloseTo(LinearRgbTest.light(blue), within(2e-5));
        assertClose(Oklab.of(light), l, a, b, 1e-14);
    }

    /** ColorAide test suite (facelessuser/coloraide, tests/test_oklab.py), five decimals. */
    @ParameterizedTest
    @CsvSource({
        "#ff0000, 0.62796, 0.22486, 0.12585", "#ffa500, 0.79269, 0.05661, 0.16138", "#ffff00, 0.96798, -0.07137, 0.19857",
        "#008000, 0.51975, -0.14030, 0.10768", "#0000ff, 0.45201, -0.03246, -0.31153", "#4b0082, 0.33898, 0.09416, -0.15255",
        "#ee82ee, 0.76190, 0.15647, -0.10080", "#ffffff, 1.00000, 0.00000, 0.00000"})
    void srgb_turns_into_the_published_oklab(String hex, double l, double a, double b) {
        assertClose(Oklab.of(Srgb.read(hex).orElseThrow()), l, a, b, 1.5e-5);
    }

    /** W3C Web Platform Tests, css/css-color: oklch(51.975% 0.17686 142.495) is #008000. */
    @Test
    void green_has_the_published_chroma_and_hue() {
        Oklab green = Oklab.of(Srgb.read("#008000").orElseThrow());
        assertThat(green.chroma()).isCloseTo(0.17686, within(1e-5));
        assertThat(green.hue()).isCloseTo(142.495, within(5e-3));
    }

    /** W3C Web Platform Tests, css/css-color: OKLCH and the sRGB it stands for; ours is rounded to 8 bits first. */
    @ParameterizedTest
    @CsvSource({"180, 6, 95, 0.50, 0.20, 0", "59, 81, 211, 0.50, 0.20, 270", "172, 71, 133, 0.55, 0.15, 345"})
    void published_hues_come_back_from_srgb(int red, int green, int blue, double l, double chroma, double hue) {
        Oklab colour = Oklab.of(new Srgb(red, green, blue));
        assertThat(colour.l()).isCloseTo(l, within(2e-3));
        assertThat(colour.chroma()).isCloseTo(chroma, within(2e-3));
        assertThat(Math.abs(Math.IEEEremainder(colour.hue() - hue, 360))).isLessThan(0.5);
    }

    @Test
    void hue_runs_from_0_to_below_360_and_is_0_for_greys() {
        for (int red = 0; red < 256; red += 15) {
            for (int green = 0; green < 256; green += 15) {
                for (int blue = 0; blue < 256; blue += 15) {
                    assertThat(Oklab.of(new Srgb(red, green, blue)).hue()).isGreaterThanOrEqualTo(0).isLessThan(360);
                }
            }
        }
        for (int part = 0; part < 256; part++) {
            assertThat(Oklab.of(new Srgb(part, part, part)).hue()).isZero();
        }
    }

    @Test
    void difference_is_the_distance_and_1_from_black_to_white() {
        assertThat(new Oklab(0.5, 0.1, -0.2).difference(new Oklab(0.4, 0.3, 0))).isCloseTo(0.3, within(1e-15));
        assertThat(Oklab.of(new Srgb(0, 0, 0)).difference(Oklab.of(new Srgb(255, 255, 255)))).isCloseTo(1, within(1e-14));
    }

    private static void assertClose(Oklab colour, double l, double a, double b, double tolerance) {
        assertThat(colour.l()).isCloseTo(l, within(tolerance));
        assertThat(colour.a()).isCloseTo(a, within(tolerance));
        assertThat(colour.b()).isCloseTo(b, within(tolerance));
    }
}
