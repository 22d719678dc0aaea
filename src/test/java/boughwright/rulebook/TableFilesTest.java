package boughwright.rulebook;

import static boughwright.rulebook.SampleTexts.TABLES;
import static boughwright.rulebook.SampleTexts.TOPPER;
import static boughwright.rulebook.SampleTexts.lineOf;
import static boughwright.rulebook.SampleTexts.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableFilesTest {

    private static final String THREE_SIDES = "\"corner\", \"wall\", \"bay\"</text></inputEntry>";

    @Test
    void sound_tables_are_listed_as_written() {
        DmnTables tables = ((DmnCompilation.Sound) new DmnCompiler().compile(TABLES)).tables();
        assertThat(tables.tables()).extracting(WrittenTable::name).containsExactly("Base", "Seen-from factor", "Policy");
        WrittenTable base = tables.table(TOPPER, "Base");
        assertThat(base.rows().get(5).outputs()).containsExactly("5 * (height / 12) ** 2");
        assertThat(base.interval(base.rows().get(5), "height").words()).isEqualTo("above 12, up to 20");
        assertThat(base.interval(base.rows().get(2), "height").words()).isEqualTo("from 8 to below 10");
        assertThat(base.rows().get(2).line()).isEqualTo(lineOf(TABLES.get(TOPPER), "[8 .. 10)") - 1);
        assertThat(tables.title(TOPPER)).isEqualTo("Topper groupings");
    }

    @Test
    void a_gap_is_named_with_the_rows_beside_it() {
        RulebookFault fault = onlyFault("[11.5 .. 12]", "[11.75 .. 12]");
        assertThat(fault.part()).isEqualTo("Base");
        assertThat(fault.rows()).containsExactly(4, 5);
        assertThat(fault.message()).isEqualTo("Rows 4 and 5 leave a gap: no row answers for height from 11.5 to below 11.75.");
        assertThat(fault.line()).isEqualTo(lineOf(TABLES.get(TOPPER), "[10 .. 11.5)") - 1);
    }

    @Test
    void a_gap_at_the_end_of_the_allowed_values_is_named_with_its_one_neighbour() {
        assertThat(onlyFault("[3 .. 5)", "[4 .. 5)").message()).isEqualTo("Row 1 leaves a gap: no row answers for height from 3 to below 4.");
        assertThat(onlyFault("(12 .. 20]", "(12 .. 20)").message()).isEqualTo("Row 6 leaves a gap: no row answers for height of 20.");
    }

    @Test
    void a_missing_word_is_a_gap_too() {
        RulebookFault fault = onlyFault(THREE_SIDES, THREE_SIDES.replace(" \"wall\",", ""));
        assertThat(fault.part()).isEqualTo("Seen-from factor");
        assertThat(fault.message()).isEqualTo("No row answers for seen from \"wall\".");
    }

    @Test
    void an_overlap_is_named_with_its_rows() {
        RulebookFault wide = onlyFault("[8 .. 10)", "[7 .. 10)");
        assertThat(wide.rows()).containsExactly(2, 3);
        assertThat(wide.message()).isEqualTo("Rows 2 and 3 both answer for height from 7 to below 8; only one may.");
        assertThat(onlyFault("[5 .. 8)", "[5 .. 8]").message()).isEqualTo("Rows 2 and 3 both answer for height of 8; only one may.");
        assertThat(onlyFault(THREE_SIDES, THREE_SIDES.replace("\"bay\"", "\"bay\", \"round\"")).message())
                .isEqualTo("Rows 1 and 2 both answer for seen from \"round\"; only one may.");
    }

    @Test
    void the_same_number_written_with_more_digits_is_no_gap() {
        assertThat(compile("[8 .. 10)", "[8.0 .. 10.00)")).isInstanceOf(DmnCompilation.Sound.class);
    }

    @Test
    void an_output_of_the_wrong_kind_is_named_with_its_row() {
        RulebookFault fault = onlyFault("<text>4</text>", "<text>\"four\"</text>");
        assertThat(fault.rows()).containsExactly(4);
        assertThat(fault.message()).isEqualTo("Row 4 has \"\"four\"\" for Base, which is neither a number nor one that grows as in 5 * (height / 12) ** 2.");
        String least = "<outputEntry><text>1</text></outputEntry>\n        <outputEntry><text>false";
        assertThat(onlyFault(least, least.replace("1", "\"one\"")).message()).isEqualTo("Row 1 has \"\"one\"\" for least, which is neither a number nor one that grows as in 5 * (height / 12) ** 2.");
        List<RulebookFault> sideways = faults(with(TABLES, TOPPER, "<text>\"nearest\"</text>", "<text>\"sideways\"</text>"));
        assertThat(sideways.get(0).part()).isEqualTo("Policy");
        assertThat(sideways.get(0).message()).contains("sideways");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "[8 .. 10) | [8 .. | Row 3 has \"[8 ..\" for height, which is not a range of numbers such as [8 .. 10).",
        "(height / 12) ** 2 | (height / 12 ** 2 | Row 6 has \"5 * (height / 12 ** 2\" for Base, which is neither a number nor one that grows as in 5 * (height / 12) ** 2.",
        "(height / 12) ** 2 | (hieght / 12) ** 2 | Row 6 has \"5 * (hieght / 12) ** 2\" for Base, which is neither a number nor one that grows as in 5 * (height / 12) ** 2.",
        "(12 .. 20] | (12 .. 25] | Row 6 reaches beyond the allowed height from 3 to 20: (12 .. 25].",
        "<text>4</text> | <text></text> | Row 4 leaves Base empty.",
        "<text>4</text> | <text>2 + 2</text> | Row 4 has \"2 + 2\" for Base, which is neither a number nor one that grows as in 5 * (height / 12) ** 2.",
        "<text>4</text> | <text>count(for i in 1..9 return i)</text> | Row 4 has \"count(for i in 1..9 return i)\" for Base, which is neither a number nor one that grows as in 5 * (height / 12) ** 2."})
    void a_cell_that_cannot_be_read_is_named_with_its_row(String part, String replacement, String message) {
        assertThat(onlyFault(part, replacement).message()).isEqualTo(message);
    }

    @Test
    void inputs_without_allowed_values_are_a_fault_since_gaps_would_not_be_seen() {
        assertThat(faults(with(TABLES, TOPPER, "<allowedValues><text>[3..20]</text></allowedValues>", "")).get(0).message())
                .isEqualTo("The column \"height\" must say which numbers are allowed, such as [3..20]; otherwise gaps are not seen.");
    }

    @Test
    void nothing_in_a_table_file_reaches_outside_it() {
        assertThat(onlyFault("<text>4</text>", "<text>{f: function(x) external {java: {class: \"java.lang.Math\"}}}.f(1)</text>").message())
                .contains("for Base, which is neither a number");
        assertThat(onlyFault("<definitions ", "<!DOCTYPE definitions [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>\n<definitions ").message())
                .isEqualTo("A document type (<!DOCTYPE …>) is not allowed.");
        assertThat(faults(with(TABLES, TOPPER, "</definitions>", "<businessKnowledgeModel name=\"b\"/></definitions>")).get(0).message())
                .contains("<businessKnowledgeModel> is not used");
    }

    @Test
    void two_files_of_one_name_are_a_fault_since_one_would_hide_the_other() {
        Map<String, String> twice = Map.of(TOPPER, TABLES.get(TOPPER), "sizing/other.dmn", TABLES.get(TOPPER));
        assertThat(faults(twice)).singleElement().satisfies(fault -> assertThat(fault.message()).contains("same name and namespace as sizing/other.dmn"));
    }

    @Test
    void broken_xml_is_named_by_its_line() {
        assertThat(faults(with(TABLES, TOPPER, "</definitions>", "</definition>")).get(0).line()).isEqualTo(TABLES.get(TOPPER).split("\n").length);
    }

    private static DmnCompilation compile(String part, String replacement) {
        return new DmnCompiler().compile(with(TABLES, TOPPER, part, replacement));
    }

    private static RulebookFault onlyFault(String part, String replacement) {
        List<RulebookFault> faults = faults(with(TABLES, TOPPER, part, replacement));
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static List<RulebookFault> faults(Map<String, String> texts) {
        DmnCompilation compiled = new DmnCompiler().compile(texts);
        assertThat(compiled).isInstanceOf(DmnCompilation.Faulty.class);
        return ((DmnCompilation.Faulty) compiled).faults();
    }
}
