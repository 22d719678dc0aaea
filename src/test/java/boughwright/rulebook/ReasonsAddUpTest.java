package boughwright.rulebook;

import static boughwright.rulebook.RulebookFixture.brief;
import static boughwright.rulebook.RulebookFixture.briefWith;
import static boughwright.rulebook.RulebookFixture.needs;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Brief;
import boughwright.needs.Need;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReasonsAddUpTest {

    private static final Pattern GIRTH = Pattern.compile("height: (\\d+) % (more|less)");

    /** Nine hundred bulbs is the row for 9 to 10 ft; the factors of this brief are all one. */
    @ParameterizedTest
    @CsvSource({"9 ft, 84 in", "9.99 ft, 100 in", "9.5 ft, 110 in"})
    void the_row_s_number_and_the_girth_that_is_told_make_the_quantity(String height, String diameter) {
        Need bulbs = needs(brief(height, "widestDiameter=" + diameter)).need("lights/light-string").orElseThrow();
        Matcher girth = GIRTH.matcher(bulbs.reason().text());
        assertThat(girth.find()).isTrue();
        double told = 900 * (1 + Integer.parseInt(girth.group(1)) / 100.0 * (girth.group(2).equals("more") ? 1 : -1));
        assertThat((double) bulbs.quantity()).isCloseTo(told, within(0.006 * 900));
    }

    @ParameterizedTest
    @CsvSource({"9 ft, round, lavish", "15 ft, wall, generous", "6 ft, wall, restrained"})
    void every_reason_names_the_number_that_it_is_the_reason_of(String height, String seenFrom, String abundance) {
        Brief brief = briefWith(height, List.of("seenFrom=" + seenFrom), "\"abundance\": \"" + abundance + "\"");
        List<String> words = List.of("no", "one", "two", "three", "four", "five", "six");
        assertThat(needs(brief).needs()).allSatisfy(need -> {
            String number = need.quantity() < words.size() ? "(?:" + need.quantity() + "|" + words.get(need.quantity()) + ")" : String.valueOf(need.quantity());
            assertThat(need.reason().text()).as(need.id() + " " + need.quantity()).containsPattern("\\b" + number + "\\b");
        });
    }

    @Test
    void one_grouping_is_told_in_the_singular() {
        assertThat(needs(brief("4 ft")).need("topper/height-stem").orElseThrow().reason().text()).doesNotContain("the 1 topper groupings");
    }

    /** Fewer than three of a style look lost: the table's own least, which then is the reason of the number. */
    @Test
    void a_number_raised_to_the_least_of_its_layer_says_so() {
        Need sprays = needs(briefWith("3 ft", List.of("seenFrom=corner"), "\"abundance\": \"restrained\"")).need("florals/spray/1").orElseThrow();
        assertThat(sprays.quantity()).isEqualTo(3);
        assertThat(sprays.reason().text()).contains("fewer than three of a style look lost");
    }
}
