package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.colour.Scheme.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SchemeTest {

    /** Colours as {@code #rrggbb 60, …}: each with its share. */
    private static List<ColourShare> colours(String text) {
        return Arrays.stream(text.split(",")).map(String::strip)
                .map(c -> new ColourShare(Srgb.read(c.substring(0, 7)).orElseThrow(), Double.parseDouble(c.substring(8)))).toList();
    }

    private static Kind kind(String text) {
        return Scheme.of(colours(text)).kind();
    }

    /** J. Itten, "Kunst der Farbe", 1961: the opposites of the painters' wheel; the colours are CSS's red, green, blue, orange, yellow, purple. */
    @ParameterizedTest
    @ValueSource(strings = {"#ff0000 60, #008000 40", "#0000ff 60, #ffa500 40", "#ffff00 60, #800080 40", "#a3202e 60, #24402f 40"})
    void red_and_green_blue_and_orange_yellow_and_violet_are_opposites(String text) {
        assertThat(kind(text)).isEqualTo(Kind.OPPOSITES);
    }

    /** Itten's first triad. */
    @Test
    void red_yellow_and_blue_are_three_apart() {
        assertThat(kind("#ff0000 40, #ffee00 30, #0000ff 30")).isEqualTo(Kind.THREE_APART);
        assertThat(kind("#ff0000 40, #0000ff 30")).isEqualTo(Kind.TWO_APART);
    }

    @Test
    void light_and_dark_of_one_red_are_one_hue_whatever_whites_and_blacks_stand_beside_them() {
        assertThat(kind("#a3202e 50, #e07a7f 10, #5c1018 10, #f3ead9 20, #1c1a1a 10")).isEqualTo(Kind.ONE_HUE);
    }

    @Test
    void red_orange_and_amber_are_neighbours() {
        assertThat(kind("#b33a2c 40, #c96f2f 30, #d69a3c 30")).isEqualTo(Kind.NEIGHBOURS);
    }

    @Test
    void hues_all_round_are_many() {
        assertThat(kind("#ff0000 20, #ffa500 20, #ffff00 20, #008000 20, #0000ff 20")).isEqualTo(Kind.MANY);
        assertThat(kind("#ff0000 25, #ffff00 25, #008000 25, #800080 25")).isEqualTo(Kind.MANY);
    }

    @Test
    void white_silver_and_slate_are_neutral_and_a_tenth_of_green_is_their_spark() {
        assertThat(kind("#e9e8e3 60, #b9bec4 30, #4f5560 10")).isEqualTo(Kind.NEUTRAL);
        assertThat(kind("#e9e8e3 60, #b9bec4 30, #6f8f7c 10")).isEqualTo(Kind.NEUTRAL_WITH_SPARK);
        assertThat(kind("#e9e8e3 60, #6f8f7c 40")).isEqualTo(Kind.ONE_HUE);
        assertThat(kind("#e9e8e3 98, #6f8f7c 2")).isEqualTo(Kind.NEUTRAL);
    }

    @Test
    void a_sliver_of_another_hue_does_not_change_the_scheme() {
        assertThat(kind("#ff0000 58, #008000 40, #0000ff 2")).isEqualTo(Kind.OPPOSITES);
        assertThat(kind("#ff0000 50, #008000 40, #0000ff 10")).isNotEqualTo(Kind.OPPOSITES);
    }

    @Test
    void groups_come_with_the_largest_first_each_named_by_its_twelfth_of_the_wheel() {
        Scheme scheme = Scheme.of(colours("#1f2f55 20, #b98d3e 60, #2a2a33 20"));
        assertThat(scheme.groups()).extracting(Scheme.Group::part).containsExactly(3, 8);
        assertThat(scheme.groups().get(0).share()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void nothing_at_all_is_neutral() {
        assertThat(Scheme.of(List.of()).kind()).isEqualTo(Kind.NEUTRAL);
        assertThat(kind("#ff0000 0")).isEqualTo(Kind.NEUTRAL);
        assertThatThrownBy(() -> new ColourShare(new Srgb(0, 0, 0), -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void order_and_the_scale_of_shares_do_not_matter() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            List<ColourShare> colours = new ArrayList<>();
            for (int n = 0; n < 1 + random.nextInt(6); n++) {
                colours.add(new ColourShare(new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256)), random.nextInt(50)));
            }
            Scheme scheme = Scheme.of(colours);
            Collections.shuffle(colours, random);
            assertThat(Scheme.of(colours.stream().map(c -> new ColourShare(c.colour(), c.share() * 2)).toList()).kind()).isEqualTo(scheme.kind());
        }
    }

    @ParameterizedTest
    @CsvSource({"#fe2712, 0", "#fb9902, 2", "#fefe33, 4", "#66b032, 6", "#0247fe, 8", "#8601af, 10"})
    void the_six_colours_of_the_painters_wheel_stand_a_sixth_apart(String hex, int part) {
        double position = PaintersWheel.position(Oklab.of(Srgb.read(hex).orElseThrow()).hue());
        assertThat(PaintersWheel.apart(position, 30.0 * part)).isLessThan(1e-6);
        assertThat(PaintersWheel.part(position)).isEqualTo(part);
    }

    @Test
    void the_wheel_goes_round_without_a_step_back() {
        double before = PaintersWheel.position(0);
        double turned = 0;
        for (int hue = 1; hue <= 360; hue++) {
            double now = PaintersWheel.position(hue % 360);
            double step = (now - before + 360) % 360;
            assertThat(step).isBetween(0.1, 4.0);
            turned += step;
            before = now;
        }
        assertThat(turned).isCloseTo(360, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0, ALIKE", "3, ALIKE", "3.01, NEAR_MISS", "5.1, NEAR_MISS", "7.99, NEAR_MISS", "8, APART", "50, APART"})
    void colours_match_up_to_three_and_are_two_from_eight(double difference, Match match) {
        assertThat(Match.of(difference)).isEqualTo(match);
    }

    @Test
    void two_reds_that_nearly_match_are_a_near_miss() {
        assertThat(Match.of(new Srgb(0xa3, 0x20, 0x2e), new Srgb(0xb0, 0x2c, 0x30))).isEqualTo(Match.NEAR_MISS);
        assertThat(Match.of(new Srgb(0xa3, 0x20, 0x2e), new Srgb(0xa5, 0x21, 0x2f))).isEqualTo(Match.ALIKE);
    }
}
