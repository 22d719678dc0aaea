package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a rulebook must have before anyone is consulted from it. */
class IncompleteEditionTest {

    @ParameterizedTest
    @ValueSource(strings = {"\"sizing/clusters.dmn\", ", "\"style/ribbon.drl\", "})
    void an_edition_without_a_table_or_a_rule_that_every_brief_needs_does_not_open(String left) throws IOException {
        assertThat(open("edition.json", left, "")).isInstanceOf(Rulebook.Opening.Faulty.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"sizing/sprays.dmn | name=\"Abundance factor\" | name=\"Abundance faktor\"", "sizing/sprays.dmn | name=\"girth\" | name=\"girht\""})
    void a_file_without_a_table_that_sizing_asks_does_not_open(String file, String part, String replacement) throws IOException {
        assertThat(open(file, part, replacement)).isInstanceOf(Rulebook.Opening.Faulty.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"\"currency\": \"USD\", | ''", "\"USD\" | \"XQZ\"", "\"id\": \"woodland\", | ''", "\"looks\": | \"lookz\":", "} | ]"})
    void an_edition_file_with_a_fault_is_told_as_a_fault_and_not_thrown(String part, String replacement) throws IOException {
        assertThat(open("edition.json", part, replacement)).isInstanceOf(Rulebook.Opening.Faulty.class);
    }

    private static Rulebook.Opening open(String file, String part, String replacement) throws IOException {
        return Rulebook.open(path -> {
            String text = Files.readString(Path.of("rules").resolve(path));
            return path.equals(file) ? text.replace(part, replacement) : text;
        });
    }
}
