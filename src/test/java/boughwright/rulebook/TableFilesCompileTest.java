package boughwright.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TableFilesCompileTest {

    private static final String TOPPER = "sizing/topper.dmn";
    private final Map<String, String> shipped = ShippedTexts.of(".dmn");

    @Test
    void the_shipped_tables_are_sound_and_listed_as_written() {
        var tables = assertInstanceOf(DmnCompilation.Sound.class, new DmnCompiler().compile(shipped)).tables();
        assertEquals(List.of("Base", "Fullness factor", "Seen-from factor", "Abundance factor", "Policy"),
                tables.tables().stream().map(WrittenTable::name).toList());
        var base = tables.table(TOPPER, "Base");
        assertEquals("5 * (height / 12) ** 2", base.rows().get(5).outputs().get(0));
        assertEquals("above 12, up to 20", base.interval(base.rows().get(5), "height").words());
        assertEquals("from 8 to below 10", base.interval(base.rows().get(2), "height").words());
        assertEquals(ShippedTexts.lineOf(shipped.get(TOPPER), "[8 .. 10)") - 1, base.rows().get(2).line());
    }

    @Test
    void a_gap_is_named_with_the_rows_beside_it() {
        var fault = onlyFault("[11.5 .. 12]", "[11.75 .. 12]");
        assertEquals("Base", fault.part());
        assertEquals(List.of(4, 5), fault.rows());
        assertEquals("Rows 4 and 5 leave a gap: no row answers for height from 11.5 to below 11.75.", fault.message());
        assertEquals(ShippedTexts.lineOf(shipped.get(TOPPER), "[10 .. 11.5)") - 1, fault.line());
    }

    @Test
    void a_gap_at_the_end_of_the_allowed_values_is_named_with_its_one_neighbour() {
        assertEquals("Row 1 leaves a gap: no row answers for height from 3 to below 4.", onlyFault("[3 .. 5)", "[4 .. 5)").message());
        assertEquals("Row 6 leaves a gap: no row answers for height of 20.", onlyFault("(12 .. 20]", "(12 .. 20)").message());
    }

    @Test
    void a_missing_word_is_a_gap_too() {
        var fault = onlyFault("<inputEntry><text>\"corner\", \"wall\", \"bay\"</text>", "<inputEntry><text>\"corner\", \"bay\"</text>");
        assertEquals("Seen-from factor", fault.part());
        assertEquals("No row answers for seen from \"wall\".", fault.message());
    }

    @Test
    void an_overlap_is_named_with_its_rows() {
        var wide = onlyFault("[8 .. 10)", "[7 .. 10)");
        assertEquals(List.of(2, 3), wide.rows());
        assertEquals("Rows 2 and 3 both answer for height from 7 to below 8; only one may.", wide.message());
        assertEquals("Rows 2 and 3 both answer for height of 8; only one may.", onlyFault("[5 .. 8)", "[5 .. 8]").message());
        assertEquals("Rows 1 and 2 both answer for seen from \"round\"; only one may.",
                onlyFault("<inputEntry><text>\"corner\", \"wall\", \"bay\"</text>", "<inputEntry><text>\"corner\", \"wall\", \"bay\", \"round\"</text>").message());
    }

    @Test
    void the_same_number_written_with_more_digits_is_no_gap() {
        assertInstanceOf(DmnCompilation.Sound.class, compile("[8 .. 10)", "[8.0 .. 10.00)"));
    }

    @Test
    void a_text_in_a_number_column_is_named_with_its_row() {
        var fault = onlyFault("<text>4</text>", "<text>\"four\"</text>");
        assertEquals(List.of(4), fault.rows());
        assertEquals("Row 4 gives \"four\" for Base, which must be a number.", fault.message());
        assertEquals("Row 1 gives \"one\" for least, which must be a number.",
                onlyFault("<outputEntry><text>1</text></outputEntry>\n        <outputEntry><text>false", "<outputEntry><text>\"one\"</text></outputEntry>\n        <outputEntry><text>false").message());
    }

    @Test
    void a_word_outside_the_column_s_allowed_words_is_a_fault() {
        var faults = faults(ShippedTexts.with(shipped, TOPPER, "<text>\"nearest\"</text>", "<text>\"sideways\"</text>"));
        assertEquals("Policy", faults.get(0).part());
        assertTrue(faults.get(0).message().contains("sideways"), faults.toString());
    }

    @Test
    void a_cell_that_cannot_be_read_is_named_with_its_row() {
        assertEquals("Row 3 has \"[8 ..\" for height, which is not a range of numbers such as [8 .. 10).", onlyFault("[8 .. 10)", "[8 .. ").message());
        assertEquals("Row 6 has \"5 * (height / 12 ** 2\" for Base, which cannot be read as a value or a sum.",
                onlyFault("(height / 12) ** 2", "(height / 12 ** 2").message());
        assertEquals("Row 6 has \"5 * (hieght / 12) ** 2\" for Base; the word \"hieght\" is not known here.",
                onlyFault("(height / 12) ** 2", "(hieght / 12) ** 2").message());
        assertEquals("Row 6 reaches beyond the allowed height from 3 to 20: (12 .. 25].", onlyFault("(12 .. 20]", "(12 .. 25]").message());
        assertEquals("Row 4 leaves Base empty.", onlyFault("<text>4</text>", "<text></text>").message());
    }

    @Test
    void a_sum_that_gives_nothing_somewhere_in_its_row_is_a_fault() {
        var message = faults(ShippedTexts.with(shipped, TOPPER, "5 * (height / 12) ** 2", "5 / (height - 20)")).get(0).message();
        assertTrue(message.startsWith("Row 6 gives no"), message);
    }

    @Test
    void inputs_without_allowed_values_are_a_fault_since_gaps_would_not_be_seen() {
        assertEquals("The column \"height\" must say which numbers are allowed, such as [3..20]; otherwise gaps are not seen.",
                faults(ShippedTexts.with(shipped, TOPPER, "<allowedValues><text>[3..20]</text></allowedValues>", "")).get(0).message());
    }

    @Test
    void nothing_in_a_table_file_reaches_outside_it() {
        assertEquals("Row 4 has \"{f: function(x) external {java: {class: \"java.lang.Math\"}}}.f(1)\" for Base; the sign { is not used in a table.",
                onlyFault("<text>4</text>", "<text>{f: function(x) external {java: {class: \"java.lang.Math\"}}}.f(1)</text>").message());
        assertEquals("Row 4 has \"count(for i in 1..9 return i)\" for Base; the word \"count\" is not known here.",
                onlyFault("<text>4</text>", "<text>count(for i in 1..9 return i)</text>").message());
        assertEquals("A document type (<!DOCTYPE …>) is not allowed.",
                onlyFault("<definitions ", "<!DOCTYPE definitions [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>\n<definitions ").message());
        assertTrue(faults(ShippedTexts.with(shipped, TOPPER, "</definitions>", "<businessKnowledgeModel name=\"b\"/></definitions>")).get(0)
                .message().contains("<businessKnowledgeModel> is not used"));
    }

    @Test
    void broken_xml_is_named_by_its_line() {
        var fault = faults(ShippedTexts.with(shipped, TOPPER, "</definitions>", "</definition>")).get(0);
        assertEquals(shipped.get(TOPPER).split("\n").length, fault.line());
    }

    private DmnCompilation compile(String part, String replacement) {
        return new DmnCompiler().compile(ShippedTexts.with(shipped, TOPPER, part, replacement));
    }

    private RulebookFault onlyFault(String part, String replacement) {
        var faults = assertInstanceOf(DmnCompilation.Faulty.class, compile(part, replacement)).faults();
        assertEquals(1, faults.size(), faults.toString());
        return faults.get(0);
    }

    private static List<RulebookFault> faults(Map<String, String> texts) {
        return assertInstanceOf(DmnCompilation.Faulty.class, new DmnCompiler().compile(texts)).faults();
    }
}
