package boughwright.brief;

import static boughwright.brief.BriefFixture.faults;
import static boughwright.brief.BriefFixture.read;
import static boughwright.brief.BriefFixture.with;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.measure.Length;
import boughwright.measure.Units;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BriefEdgesTest {

    @Test
    void a_tree_as_high_as_its_ceiling_fits_in_whatever_units_the_two_were_measured() {
        for (int inches = 48; inches <= 240; inches++) {
            for (String height : written(inches)) {
                for (String ceiling : written(inches)) {
                    assertThat(read("{\"tree\": {\"height\": \"" + height + "\"}, \"room\": {\"ceiling\": \"" + ceiling + "\"}}").room().ceiling()).isPresent();
                }
            }
        }
    }

    private static List<String> written(int inches) {
        return List.of(inches + " in", inches / 12 + " ft " + inches % 12 + " in", String.format(Locale.ROOT, "%.2f cm", inches * 2.54),
                String.format(Locale.ROOT, "%.4f m", inches * 0.0254));
    }

    @ParameterizedTest
    @ValueSource(strings = {"9 ft", "7 ft 6 in", "228 cm", "2.3 m", "5 ft", "11 ft 5 in"})
    void the_diameters_that_a_fault_names_as_the_narrowest_and_the_widest_are_served(String height) {
        String mend = faults("{\"tree\": {\"height\": \"" + height + "\", \"widestDiameter\": \"1 in\"}}").get(0).mend();
        String narrowest = mend.replaceFirst(".* from (.*?) to .*", "$1").replace("½", ".5");
        String widest = mend.replaceFirst(".* to (.*?), such as .*", "$1").replace("½", ".5");
        for (String named : List.of(narrowest, widest)) {
            assertThat(read("{\"tree\": {\"height\": \"" + height + "\", \"widestDiameter\": \"" + named + "\"}}").tree().widestDiameter())
                    .isEqualTo(Length.read(named).orElseThrow());
        }
        assertThat(Units.of(narrowest)).isEqualTo(Units.of(height));
    }

    @Test
    void a_bad_height_hides_no_fault_of_the_diameter() {
        assertThat(faults("{\"tree\": {\"height\": \"40 ft\", \"widestDiameter\": \"wide\"}}")).extracting(BriefFault::field)
                .containsExactlyInAnyOrder("tree.height", "tree.widestDiameter");
        assertThat(faults("{\"tree\": {\"widestDiameter\": 62}}")).extracting(BriefFault::field)
                .containsExactlyInAnyOrder("tree.height", "tree.widestDiameter");
    }

    @Test
    void faults_come_in_the_order_in_which_a_brief_is_read() {
        assertThat(faults("{\"budget\": \"$5\", \"extra\": 1, \"tree\": {\"girth\": 1, \"height\": 9}}")).extracting(BriefFault::field)
                .containsExactly("tree.height", "tree.girth", "budget", "extra");
    }

    @Test
    void an_empty_text_is_not_told_as_missing() {
        for (String field : List.of("look", "budget", "palette", "abundance")) {
            assertThat(faults(with("\"" + field + "\": \"\"")).get(0).sentence()).doesNotContain("is missing");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"{\"tree\": | will not do", "{\"tree\": {\"height\": \"9 ft\"} | REDACTED", "[] | is missing", "9 | is missing"})
    void a_text_that_is_no_brief_is_told_in_words_that_fit(String text, String unfit) {
        assertThat(faults(text).get(0).sentence()).doesNotContain(unfit);
    }
}
