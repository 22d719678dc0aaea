package boughwright.palette;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Palette;
import boughwright.colour.Deficiency;
import boughwright.colour.HueTemplate;
import boughwright.colour.Scheme;
import boughwright.colour.Srgb;
import boughwright.needs.Demand;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColourReadingTest {

    private static final Demand.Shares USUAL = new Demand.Shares(0.6, 0.3, 0.1);

    private static Palette palette(String main, String second, String spark, String ground) {
        return new Palette("own", "Own", colour(main), colour(second), colour(spark), colour(ground));
    }

    private static Srgb colour(String hex) {
        return Srgb.read(hex).orElseThrow();
    }

    private static Tone product(String id, String hex, double share) {
        return new Tone(id, "The " + id, colour(hex), share, 0);
    }

    @Test
    void a_palette_is_read_in_the_shares_that_are_wanted_with_a_third_of_second_for_ground() {
        ColourReading reading = ColourReading.of(palette("#a3202e", "#f3ead9", "#c79a3a", "#24402f"), USUAL);
        assertThat(reading.tones()).extracting(Tone::share).satisfiesExactly(s -> assertThat(s).isCloseTo(0.6, within(1e-12)),
                s -> assertThat(s).isCloseTo(0.2, within(1e-12)), s -> assertThat(s).isCloseTo(0.1, within(1e-12)), s -> assertThat(s).isCloseTo(0.1, within(1e-12)));
        assertThat(reading.scheme().kind()).isEqualTo(Scheme.Kind.THREE_APART);
    }

    /** G. Sharma and others 2005 leave no doubt about ΔE00 itself; the bounds 3 and 8 are those of docs/design-score.md. */
    @Test
    void two_reds_between_three_and_eight_apart_are_a_near_miss_and_the_sentence_says_what_to_do() {
        ColourReading reading = ColourReading.of(List.of(product("ball", "#a3202e", 0.3), product("bow", "#b02c30", 0.2), product("bell", "#a5212f", 0.1)));
        assertThat(reading.nearMisses()).extracting(p -> p.one().id() + " " + p.other().id()).containsExactly("ball bow", "bow bell");
        assertThat(PaletteWords.nearMiss(reading.nearMisses().get(0)))
                .matches("“The ball” and “The bow” will look like a mistake side by side: they nearly match, ΔE00 [3-7]\\.\\d\\. Choose closer .* or further .*");
    }

    @Test
    void colours_of_a_palette_that_pass_for_one_are_told() {
        ColourReading reading = ColourReading.of(palette("#a3202e", "#f3ead9", "#a4212e", "#24402f"), USUAL);
        assertThat(reading.nearMisses()).isEmpty();
        assertThat(reading.alike()).hasSize(1);
        assertThat(PaletteWords.alike(reading.alike().get(0))).startsWith("Main (red) and spark (red) pass for one, ΔE00 0.");
    }

    @Test
    void a_difference_is_never_rounded_onto_the_bound_that_its_sentence_names() {
        assertThat(PaletteWords.nearMiss(new Pair(product("one", "#000000", 1), product("other", "#000000", 1), 7.98))).contains("ΔE00 7.9.");
        assertThat(PaletteWords.nearMiss(new Pair(product("one", "#000000", 1), product("other", "#000000", 1), 3.01))).contains("ΔE00 3.1.");
    }

    @Test
    void the_pair_of_which_most_is_seen_comes_first_and_each_colour_is_told_of_once() {
        ColourReading reading = ColourReading.of(List.of(product("tiny", "#b02c30", 0.02), product("large", "#a3202e", 0.5), product("other", "#b42b2d", 0.2),
                product("dark", "#101010", 0.2)));
        assertThat(reading.nearMisses().size()).isGreaterThan(1);
        assertThat(reading.nearMisses().get(0).one().id() + " " + reading.nearMisses().get(0).other().id()).isEqualTo("large other");
        assertThat(reading.worst(3)).hasSize(1);
        assertThat(reading.worst(0)).isEmpty();
    }

    /** The red and green that eyes without long cones take for nearly one; Deficiency's own tests hold the model against others. */
    @Test
    void cranberry_and_pine_are_hard_to_tell_apart_without_long_cones_and_only_so() {
        ColourReading reading = ColourReading.of(palette("#a3202e", "#f3ead9", "#c79a3a", "#24402f"), USUAL);
        assertThat(reading.confusions()).hasSize(1);
        Confusion confusion = reading.confusions().get(0);
        assertThat(confusion.sight()).isEqualTo(Deficiency.PROTANOPIA);
        assertThat(confusion.pair().one().id() + " " + confusion.pair().other().id()).isEqualTo("main ground");
        assertThat(confusion.pair().difference()).isGreaterThan(45);
        assertThat(confusion.seen()).isBetween(3.0, 8.0);
        assertThat(confusion.alike()).isFalse();
        assertThat(PaletteWords.of(confusion)).startsWith("Main (red) and ground (green) are hard to tell apart (ΔE00 45.");
    }

    @Test
    void colours_that_differ_in_lightness_and_blue_are_confused_by_nobody() {
        assertThat(ColourReading.of(palette("#1f2f55", "#b98d3e", "#e8dcc0", "#2a2a33"), USUAL).confusions()).isEmpty();
    }

    @Test
    void what_was_hardly_two_for_anybody_is_no_confusion() {
        // 8.5 apart for most eyes; for some a little less.
        ColourReading reading = ColourReading.of(List.of(product("one", "#a3202e", 0.5), product("other", "#b83434", 0.5)));
        assertThat(reading.confusions()).allSatisfy(c -> assertThat(c.seen()).isLessThanOrEqualTo(c.pair().difference() / 2));
    }

    @Test
    void each_kind_of_scheme_has_its_sentence_with_the_hues_by_name() {
        assertThat(words("#a3202e", "#5c1018")).isEqualTo("One hue, red: calm, and all in its lights and darks.");
        assertThat(words("#a3202e", "#24402f")).contains("Opposites", "red against green");
        assertThat(words("#1f2f55", "#b98d3e")).contains("Opposites", "blue against amber");
        assertThat(words("#b33a2c", "#d69a3c")).contains("Neighbours", "red and orange");
        assertThat(words("#ff0000", "#0000ff")).contains("Two hues well apart", "red and blue");
        assertThat(words("#e9e8e3", "#4f5560")).startsWith("Neutral throughout");
        assertThat(words("#ff0000", "#ffee00", "#0000ff")).contains("Three hues", "red, yellow and blue");
        assertThat(words("#ff0000", "#ffee00", "#0000ff", "#008000")).startsWith("Several hues");
        assertThat(PaletteWords.of(ColourReading.of(List.of(product("much", "#e9e8e3", 0.9), product("little", "#a3202e", 0.1))).scheme()))
                .startsWith("Neutral with a spark of red");
    }

    private static String words(String... hexes) {
        return PaletteWords.of(ColourReading.of(IntStream.range(0, hexes.length).mapToObj(i -> product(hexes[i], hexes[i], 0.4 - 0.05 * i)).toList()).scheme());
    }

    @Test
    void every_kind_of_scheme_every_template_and_every_twelfth_of_the_wheel_has_its_words() {
        for (Scheme.Kind kind : Scheme.Kind.values()) {
            for (int part = 0; part < 12; part++) {
                assertThat(PaletteWords.of(new Scheme(kind, List.of(new Scheme.Group(part, List.of(part), 1))))).isNotBlank().doesNotContain("{");
            }
        }
        for (HueTemplate template : HueTemplate.values()) {
            assertThat(PaletteWords.of(new HueTemplate.Fit(template, template.sectors(), 0)).isPresent()).isEqualTo(template != HueTemplate.N);
        }
    }

    @Test
    void the_hue_template_is_told_by_its_shape_and_letter_and_left_out_where_there_is_no_hue() {
        assertThat(PaletteWords.of(ColourReading.of(palette("#1f2f55", "#b98d3e", "#e8dcc0", "#2a2a33"), USUAL).template()).orElseThrow())
                .isEqualTo("On the ring they lie in two narrow sectors that face one another, hue template I.");
        assertThat(PaletteWords.of(ColourReading.of(List.of(product("grey", "#777777", 1))).template())).isEmpty();
        assertThat(PaletteWords.of(ColourReading.of(List.of(product("red", "#ff0000", 1), product("yellow", "#ffee00", 1), product("green", "#00aa00", 1),
                product("blue", "#0000ff", 1), product("pink", "#ff00ff", 1), product("cyan", "#00ffff", 1))).template()).orElseThrow()).contains("a remark and no fault");
    }
}
