package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SrgbTest {

    @Test
    void a_hash_and_six_digits_are_read_in_either_case_and_written_in_lower() {
        assertThat(Srgb.read("#b5713a")).contains(new Srgb(0xb5, 0x71, 0x3a));
        assertThat(Srgb.read("#B5713A").orElseThrow().hex()).isEqualTo("#b5713a");
        assertThat(new Srgb(0, 10, 255).hex()).isEqualTo("#000aff");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "b5713a", "#fff", "#b5713", "#b5713aa", "#b5713aff", "#12g45z", " #b5713a", "#b5713a ", "#-12345", "red", "rgb(1,2,3)", "#１２３４５６"})
    void any_other_text_is_no_colour(String text) {
        assertThat(Srgb.read(text)).isEmpty();
    }

    @Test
    void no_text_is_no_colour() {
        assertThat(Srgb.read(null)).isEmpty();
    }

    @Test
    void every_colour_survives_writing_and_reading() {
        for (int part = 0; part < 256; part++) {
            Srgb colour = new Srgb(part, 255 - part, part / 2);
            assertThat(Srgb.read(colour.hex())).contains(colour);
        }
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, 0", "0, 256, 0", "0, 0, 1000", "-1, -1, -1"})
    void a_part_outside_eight_bits_is_a_defect(int red, int green, int blue) {
        assertThatThrownBy(() -> new Srgb(red, green, blue)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * WCAG 2.2, contrast ratio and relative luminance: 21 and 1 are the definition's own ends. 4.54, 4.48, 8.59 and 2.15 are worked values that
     * public guides and checkers print (#777777 as the one that must not be rounded up to 4.5, WCAG working group, 27 October 2016).
     */
    @ParameterizedTest
    @CsvSource({"#000000, #ffffff, 21.00", "#767676, #ffffff, 4.54", "#777777, #ffffff, 4.48", "#0000ff, #ffffff, 8.59", "#0000ff, #ff0000, 2.15",
        "#a3202e, #a3202e, 1.00"})
    void contrast_is_as_published_whichever_colour_comes_first(String one, String other, double ratio) {
        assertContrast(one, other, ratio, 0.005);
    }

    /** W3C ACT rule afw4f7, "Text has minimum contrast", passed example 1: #333 on white, to one decimal. */
    @Test
    void contrast_is_as_in_the_rule_of_the_w3c() {
        assertContrast("#333333", "#ffffff", 12.6, 0.05);
    }

    private static void assertContrast(String one, String other, double ratio, double tolerance) {
        Srgb a = Srgb.read(one).orElseThrow();
        Srgb b = Srgb.read(other).orElseThrow();
        assertThat(a.contrast(b)).isCloseTo(ratio, within(tolerance));
        assertThat(b.contrast(a)).isEqualTo(a.contrast(b));
    }

    /** WCAG 2.2: 4.5 is a threshold, and #777777 misses what #767676 just makes. */
    @Test
    void the_grey_next_to_the_threshold_misses_it() {
        assertThat(new Srgb(0x77, 0x77, 0x77).contrast(new Srgb(255, 255, 255))).isLessThan(4.5);
        assertThat(new Srgb(0x76, 0x76, 0x76).contrast(new Srgb(255, 255, 255))).isGreaterThan(4.5);
    }

    @Test
    void contrast_with_white_falls_and_with_black_rises_as_a_grey_grows_lighter() {
        for (int part = 1; part < 256; part++) {
            Srgb darker = new Srgb(part - 1, part - 1, part - 1);
            Srgb lighter = new Srgb(part, part, part);
            assertThat(lighter.contrast(new Srgb(255, 255, 255))).isLessThan(darker.contrast(new Srgb(255, 255, 255)));
            assertThat(lighter.contrast(new Srgb(0, 0, 0))).isGreaterThan(darker.contrast(new Srgb(0, 0, 0)));
        }
    }
}
