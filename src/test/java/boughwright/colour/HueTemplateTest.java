package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.colour.HueTemplate.Fit;
import boughwright.colour.HueTemplate.Sector;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class HueTemplateTest {

    private static List<ColourShare> colours(String... hexes) {
        return Arrays.stream(hexes).map(h -> new ColourShare(Srgb.read(h).orElseThrow(), 1)).toList();
    }

    private static List<ColourShare> random(Random random) {
        List<ColourShare> colours = new ArrayList<>();
        for (int n = 0; n < 2 + random.nextInt(6); n++) {
            colours.add(new ColourShare(new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256)), 1 + random.nextInt(9)));
        }
        return colours;
    }

    /**
     * D. Cohen-Or and others, "Color Harmonization", SIGGRAPH 2006, figure 2, as programs written after it have it: widths in degrees
     * and how far the second sector is turned from the first.
     */
    @ParameterizedTest
    @CsvSource({"N, 0, 0, 0", "I_SMALL, 18, 0, 0", "V, 93.6, 0, 0", "T, 180, 0, 0", "I_LARGE, 18, 18, 180", "L, 18, 79.2, 90", "Y, 93.6, 18, 180", "X, 93.6, 93.6, 180"})
    void the_templates_have_the_published_sectors(HueTemplate template, double first, double second, double turned) {
        List<Double> widths = template.sectors().stream().map(s -> Math.round(s.width() * 1e6) / 1e6).toList();
        assertThat(widths).isEqualTo(first == 0 ? List.of() : second == 0 ? List.of(first) : List.of(first, second));
        if (second > 0) {
            assertThat(template.sectors().get(1).middle() - template.sectors().get(0).middle()).isEqualTo(turned);
        }
        assertThat(template.letter()).isEqualToIgnoringCase(template.name().substring(0, 1));
    }

    /** Every turn in steps of a quarter degree, the slow way: none is better than the one that is found. */
    @ParameterizedTest
    @EnumSource(value = HueTemplate.class, mode = EnumSource.Mode.EXCLUDE, names = {"N", "L"})
    void no_other_turn_of_a_template_fits_better(HueTemplate template) {
        Random random = new Random(2006);
        for (int i = 0; i < 60; i++) {
            List<ColourShare> colours = random(random);
            double found = template.fit(colours).distance();
            for (double turn = 0; turn < 360; turn += 0.25) {
                assertThat(found).isLessThanOrEqualTo(slowly(colours, template, turn) + 1e-9);
            }
        }
    }

    private static double slowly(List<ColourShare> colours, HueTemplate template, double turn) {
        double sum = 0;
        double weight = 0;
        for (ColourShare colour : colours) {
            Oklab lab = Oklab.of(colour.colour());
            if (Scheme.neutral(lab)) {
                continue;
            }
            double nearest = 360;
            for (Sector sector : template.sectors()) {
                double off = Math.abs(Math.IEEEremainder(lab.hue() - sector.middle() - turn, 360));
                nearest = Math.min(nearest, Math.max(0, off - sector.width() / 2));
            }
            sum += colour.share() * lab.chroma() * nearest;
            weight += colour.share() * lab.chroma();
        }
        return weight == 0 ? 0 : sum / weight;
    }

    @Test
    void the_same_colours_in_any_order_find_the_same_template_at_the_same_turn() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            List<ColourShare> colours = random(random);
            Fit fit = HueTemplate.best(colours);
            List<ColourShare> shuffled = new ArrayList<>(colours);
            Collections.shuffle(shuffled, random);
            Fit again = HueTemplate.best(shuffled);
            assertThat(again.template()).isEqualTo(fit.template());
            assertThat(again.distance()).isCloseTo(fit.distance(), within(1e-9));
            for (int n = 0; n < fit.sectors().size(); n++) {
                assertThat(again.sectors().get(n).middle()).isCloseTo(fit.sectors().get(n).middle(), within(1e-6));
            }
        }
    }

    @Test
    void one_red_lies_in_the_middle_of_the_one_narrow_sector() {
        Fit fit = HueTemplate.best(colours("#a3202e"));
        assertThat(fit.template()).isEqualTo(HueTemplate.I_SMALL);
        assertThat(fit.sectors().get(0).middle()).isCloseTo(Oklab.of(new Srgb(0xa3, 0x20, 0x2e)).hue(), within(1e-6));
        assertThat(fit.distance()).isZero();
    }

    /** Midnight blue and brass face one another on the ring of OKLCH too. */
    @Test
    void blue_and_brass_lie_in_two_narrow_sectors_that_face_one_another() {
        assertThat(HueTemplate.best(colours("#1f2f55", "#b98d3e", "#2a2a33")).template()).isEqualTo(HueTemplate.I_LARGE);
    }

    @Test
    void the_narrow_sector_of_l_may_lie_to_either_side_of_the_wide_one() {
        List<ColourShare> one = List.of(at(20), at(80), at(110), at(140));
        List<ColourShare> other = List.of(at(200), at(140), at(110), at(80));
        assertThat(HueTemplate.L.fit(one).distance()).isLessThan(2);
        assertThat(HueTemplate.L.fit(other).distance()).isLessThan(2);
    }

    /** A strong colour of about that hue: the hue of the sRGB colour nearest to it decides. */
    private static ColourShare at(double hue) {
        Srgb nearest = new Srgb(0, 0, 0);
        double least = 360;
        for (int red = 0; red < 256; red += 15) {
            for (int green = 0; green < 256; green += 15) {
                for (int blue = 0; blue < 256; blue += 15) {
                    Srgb colour = new Srgb(red, green, blue);
                    Oklab lab = Oklab.of(colour);
                    double off = Math.abs(Math.IEEEremainder(lab.hue() - hue, 360));
                    if (lab.chroma() > 0.1 && off < least) {
                        least = off;
                        nearest = colour;
                    }
                }
            }
        }
        return new ColourShare(nearest, 1);
    }

    @Test
    void neutrals_alone_have_the_template_without_a_hue() {
        assertThat(HueTemplate.best(colours("#e9e8e3", "#4f5560", "#000000")).template()).isEqualTo(HueTemplate.N);
        assertThat(HueTemplate.best(List.of()).template()).isEqualTo(HueTemplate.N);
    }

    @Test
    void a_dull_stranger_weighs_less_than_a_strong_one() {
        List<ColourShare> dull = colours("#a3202e", "#b33a2c", "#4c5a54");
        List<ColourShare> strong = colours("#a3202e", "#b33a2c", "#00a060");
        assertThat(HueTemplate.V.fit(dull).distance()).isLessThan(HueTemplate.V.fit(strong).distance());
    }

    @Test
    void hues_all_round_the_ring_fit_nowhere_and_the_least_distance_is_told() {
        Fit fit = HueTemplate.best(List.of(at(0), at(60), at(120), at(180), at(240), at(300)));
        assertThat(fit.fits()).isFalse();
        for (HueTemplate template : HueTemplate.values()) {
            if (template != HueTemplate.N) {
                assertThat(fit.distance()).isLessThanOrEqualTo(template.fit(List.of(at(0), at(60), at(120), at(180), at(240), at(300))).distance() + 1e-9);
            }
        }
    }
}
