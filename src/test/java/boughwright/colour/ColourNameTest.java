package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import boughwright.text.Language;
import boughwright.text.Text;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourNameTest {

    /** K. L. Kelly, "Central notations for the revised ISCC-NBS color-name blocks", J. Res. NBS 61(5), 1958, in two transcriptions that agree. */
    @ParameterizedTest
    @CsvSource({"1, vivid pink, 1.5R 7/13", "12, strong red, 4.0R 4.5/12.0", "41, deep reddish brown, 9.8R 1.5/7.5",
        "44, dark reddish brown, 9.5R 1.3/3.6",
        "48, vivid orange, 4.5YR 6.6/16", "65, brownish black, 7.5YR 0.8/0.8", "82, vivid yellow, 4.0Y 7.8/14.5", "107, moderate olive, 8.0Y 3.5/5.8",
        "137, dark yellowish green, 0.5G 3.5/5.1", "164, moderate bluish green, 4.5BG 4.5/5.0", "182, moderate blue, 2.9PB 4.2/7.2",
        "219, deep purple, 6.0P 2.8/10.2", "252, pale purplish pink, 4.0RP 8.5/3.5", "263, white, 3.0Y 9.25/0.06",
        "266, dark gray, N 3.5/", "267, black, N 1.25/"})
    void names_have_their_published_numbers_and_notations(int number, String name, String munsell) {
        ColourName found = ColourName.numbered(number);
        assertThat(found.number()).isEqualTo(number);
        assertThat(found.name()).isEqualTo(name);
        assertThat(found.munsell()).isEqualTo(munsell);
    }

    @Test
    void there_are_267_names_all_different_and_each_is_that_of_its_own_colour() {
        assertThat(ColourName.all()).hasSize(267);
        assertThat(new HashSet<>(ColourName.all().stream().map(ColourName::name).toList())).hasSize(267);
        for (ColourName name : ColourName.all()) {
            assertThat(ColourName.of(name.colour())).isEqualTo(name);
            assertThat(ColourName.numbered(name.number())).isEqualTo(name);
            assertThat(name.name()).matches("[a-z]+( [a-z]+){0,3}");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 268, -1})
    void there_is_no_other_number(int number) {
        assertThatThrownBy(() -> ColourName.numbered(number)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A. Jaffer's list of the centroids in sRGB, as CPAN's Color::Library carries it (Dictionary::NBS_ISCC). */
    @ParameterizedTest
    @CsvSource({"#be0032, vivid red", "#56070c, deep reddish brown", "#3e1d1e, dark reddish brown", "#f38400, vivid orange", "#f3c300, vivid yellow",
        "#d4af37, strong yellow", "#e9e450, brilliant greenish yellow", "#355e3b, dark yellowish green", "#1b4d3e, dark green",
        "#0067a5, strong blue", "#32174d, deep violet", "#702963, deep reddish purple", "#722f37, dark red",
        "#ead8d7, pale pink", "#967117, light olive brown", "#f2f3f4, white", "#b9b8b5, light gray", "#848482, medium gray", "#555555, dark gray",
        "#222222, black"})
    void colours_of_another_list_have_its_names(String hex, String name) {
        assertThat(ColourName.of(Srgb.read(hex).orElseThrow()).name()).isEqualTo(name);
    }

    /** That list whole. Where it differs, mostly among greens, blues and the vivid names, its colours are not those of Kelly's notations. */
    @Test
    void most_colours_of_that_list_have_its_names_and_half_lie_within_a_just_visible_difference_or_two() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/colour/iscc-nbs-as-srgb.csv"));
        assertThat(lines).hasSize(268);
        int same = 0;
        double[] differences = new double[267];
        for (int i = 0; i < 267; i++) {
            String[] cells = lines.get(i + 1).split(",");
            assertThat(cells[0]).isEqualTo(String.valueOf(i + 1));
            Srgb theirs = Srgb.read(cells[1]).orElseThrow();
            same += ColourName.of(theirs).number() == i + 1 ? 1 : 0;
            differences[i] = Lab.of(theirs).difference(Lab.of(ColourName.numbered(i + 1).colour()));
        }
        Arrays.sort(differences);
        // Seen: 236, 1.6 and 6.0.
        assertThat(same).isGreaterThanOrEqualTo(235);
        assertThat(differences[133]).isLessThan(2);
        assertThat(differences[240]).isLessThan(7);
    }

    /**
     * The lightness of each centre is that of its Munsell value: Y = 1.1914 V − 0.22533 V² + 0.23352 V³ − 0.020484 V⁴ + 0.00081939 V⁵ percent
     * (ASTM D1535-08), then CIE L*. Strong colours move a little, since white is adapted from illuminant C to D65.
     */
    @Test
    void each_centre_is_as_light_as_its_notation_says() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/main/resources/boughwright/colour/iscc-nbs.csv"));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            String[] notation = cells[2].substring(cells[2].indexOf(' ') + 1).split("/");
            double chroma = notation.length == 1 ? 0 : Double.parseDouble(notation[1]);
            double lightness = lightness(Double.parseDouble(notation[0]));
            assertThat(Double.parseDouble(cells[3])).as(line).isCloseTo(lightness, within(0.15 + 0.16 * chroma));
            double labChroma = Math.hypot(Double.parseDouble(cells[4]), Double.parseDouble(cells[5]));
            assertThat(labChroma).as(line).isBetween(2.6 * chroma - 1e-9, 8.5 * chroma + 0.5);
        }
    }

    private static double lightness(double value) {
        double y = value * (1.1914 + value * (-0.22533 + value * (0.23352 + value * (-0.020484 + value * 0.00081939)))) / 100;
        return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : 24389.0 / 27 * y;
    }

    /** NBS SP 440, charts: neutrals are black to the value 2.5, dark gray to 4.5, medium gray to 6.5, light gray to 8.5, then white. */
    @Test
    void greys_change_their_names_where_the_charts_do() {
        double[] limits = {2.5, 4.5, 6.5, 8.5};
        String[] names = {"black", "dark gray", "medium gray", "light gray", "white"};
        for (int part = 0; part < 256; part++) {
            double l = Lab.of(new Srgb(part, part, part)).l();
            // The nearest centre need not change quite there: within a quarter of a value either name will do.
            int least = (int) Arrays.stream(limits).filter(v -> lightness(v + 0.25) < l).count();
            int most = (int) Arrays.stream(limits).filter(v -> lightness(v - 0.25) < l).count();
            assertThat(ColourName.of(new Srgb(part, part, part)).name()).as("grey %d", part).isIn(names[least], names[most]);
        }
    }

    @Test
    void any_other_colour_has_the_nearest_name_by_the_printed_formula() {
        SplittableRandom random = new SplittableRandom(267);
        for (int i = 0; i < 3_000; i++) {
            Srgb colour = new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256));
            Lab lab = Lab.of(colour);
            if (lab.chroma() < 2) {
                continue;
            }
            Comparator<ColourName> byDifference = Comparator.comparingDouble(n -> PrintedCiede2000.difference(lab, Lab.of(n.colour())));
            assertThat(ColourName.of(colour)).as(colour.hex()).isEqualTo(Collections.min(ColourName.all(), byDifference));
        }
    }

    @Test
    void every_name_is_put_together_in_english_as_it_stands_in_the_table() {
        assertThat(ColourName.all()).allSatisfy(name -> assertThat(name.shown()).isEqualTo(name.name()));
    }

    @Test
    void other_languages_put_the_same_words_in_their_own_order() {
        ColourName brown = ColourName.all().stream().filter(n -> n.name().equals("dark grayish yellowish brown")).findFirst().orElseThrow();
        assertThat(Text.in(Language.GERMAN, brown::shown)).isEqualTo("dunkles gräuliches gelbliches Braun");
        assertThat(Text.in(Language.SPANISH, brown::shown)).isEqualTo("marrón amarillento grisáceo oscuro");
        for (Language language : Language.values()) {
            assertThat(Text.in(language, () -> ColourName.all().stream().map(ColourName::shown).distinct().count())).isGreaterThan(260);
        }
    }
}
