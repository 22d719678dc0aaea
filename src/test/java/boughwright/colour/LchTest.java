package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LchTest {

    /** The six full colours as ColorAide prints them in its space lch-d65, five digits, seen in a public notebook; our white has fewer digits. */
    @ParameterizedTest
    @CsvSource({"#ff0000, 53.237, 104.55, 40", "#00ff00, 87.736, 119.78, 136.01", "#0000ff, 32.301, 133.81, 306.29",
        "#00ffff, 91.115, 50.112, 196.38", "#ff00ff, 60.323, 115.55, 328.23", "#ffff00, 97.139, 96.912, 102.85"})
    void srgb_turns_into_the_published_lch_and_back(String hex, double l, double c, double h) {
        Srgb colour = Srgb.read(hex).orElseThrow();
        Lch lch = Lch.of(colour);
        assertThat(lch.l()).isCloseTo(l, within(0.02));
        assertThat(lch.c()).isCloseTo(c, within(0.02));
        assertThat(lch.h()).isCloseTo(h, within(0.02));
        assertThat(new Lch(l, c, h).toLinear().toSrgb()).isEqualTo(colour);
    }

    @Test
    void lab_and_light_come_back() {
        for (int i = 0; i < 17 * 17 * 17; i++) {
            Srgb colour = Grid.colour(i);
            Lab lab = Lab.of(colour);
            Lab back = Lch.of(lab).toLab();
            assertThat(back.difference(lab)).isLessThan(1e-4);
            assertThat(Lch.of(colour).toLinear().toSrgb()).isEqualTo(colour);
            LinearRgb light = lab.toLinear();
            assertThat(light.r()).isCloseTo(LinearRgb.of(colour).r(), within(1e-13));
            assertThat(light.g()).isCloseTo(LinearRgb.of(colour).g(), within(1e-13));
            assertThat(light.b()).isCloseTo(LinearRgb.of(colour).b(), within(1e-13));
        }
    }

    @Test
    void greys_have_no_hue_and_grow_lighter_with_their_parts() {
        double before = -1;
        for (int part = 0; part < 256; part++) {
            Lch grey = Lch.of(new Srgb(part, part, part));
            assertThat(grey.h()).isZero();
            assertThat(grey.c()).isLessThan(1e-4);
            assertThat(grey.l()).isGreaterThan(before);
            before = grey.l();
        }
    }

    @Test
    void hue_runs_from_0_to_below_360() {
        assertThat(Lch.of(new Lab(50, 10, -1e-18)).h()).isZero();
        assertThat(Lch.of(new Lab(50, 0, -10)).h()).isEqualTo(270);
        assertThat(Lch.of(new Lab(50, -10, 0)).h()).isEqualTo(180);
        for (int i = 0; i < 17 * 17 * 17; i++) {
            assertThat(Lch.of(Grid.colour(i)).h()).isGreaterThanOrEqualTo(0).isLessThan(360);
        }
    }
}
