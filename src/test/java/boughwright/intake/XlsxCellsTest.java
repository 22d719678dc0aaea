package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.refused;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells of a spreadsheet, as ECMA-376 part 1, 18.3.1.4 (from memory) lets them be written. */
class XlsxCellsTest {

    private static final String HEADING = RawSheet.row(1, "sku", "stock");

    @TempDir
    Path folder;

    private IntakeFile sheet(String cells) {
        return opened(stored(folder, RawSheet.of(HEADING + "<row r=\"2\">" + cells + "</row>").shared("<t>first</t>",
                "<r><t>rich </t></r><r><t>text</t></r>",
                "<t>漢字</t><rPh sb=\"0\" eb=\"2\"><t>かんじ</t></rPh>").styles("<numFmts><numFmt numFmtId=\"164\" formatCode=\"d\\-mmm;@\"/>"
                + "<numFmt numFmtId=\"165\" formatCode=\"0.00&quot; dm&quot;\"/></numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/>"
                + "<xf numFmtId=\"14\"/><xf numFmtId=\"164\"/><xf numFmtId=\"165\"/></cellXfs>").bytes()));
    }

    private String text(String cell) {
        return sheet(cell).preview().get(0).get(0);
    }

    @Test
    void strings_are_read_wherever_the_spreadsheet_keeps_them() {
        assertThat(text("<c r=\"A2\" t=\"s\"><v>0</v></c>")).isEqualTo("first");
        assertThat(text("<c r=\"A2\" t=\"s\"><v>1</v></c>")).isEqualTo("rich text");
        assertThat(text("<c r=\"A2\" t=\"s\"><v>2</v></c>")).isEqualTo("漢字");
        assertThat(text("<c r=\"A2\" t=\"inlineStr\"><is><r><t>in</t></r><r><t>line</t></r></is></c>")).isEqualTo("inline");
        assertThat(text("<c r=\"A2\" t=\"str\"><v>said</v></c>")).isEqualTo("said");
        assertThat(text("<c r=\"A2\" t=\"inlineStr\"><is><t><![CDATA[a<b]]>&amp;&#233;</t></is></c>")).isEqualTo("a<b&é");
    }

    @ParameterizedTest
    @CsvSource({"54, 54", "54.0, 54", "17.750000000000004, 17.75", "6.291041500213E12, 6291041500213", "1.6291041500210E+13, 16291041500210",
            "1E-3, 0.001",
        "0.1, 0.1", "-3, -3", "0, 0", "1E300, 1E300", "1E999999999, 1E999999999", "12abc, 12abc"})
    void numbers_come_as_plain_decimals_of_the_digits_that_are_shown(String stored, String plain) {
        assertThat(text("<c r=\"A2\"><v>" + stored + "</v></c>")).isEqualTo(plain);
    }

    @Test
    void a_number_without_end_is_no_number() {
        String digits = "7".repeat(3_000);
        assertThat(text("<c r=\"A2\"><v>" + digits + "</v></c>")).isEqualTo(digits);
    }

    @Test
    void a_formula_is_text_and_in_a_column_of_numbers_a_fault_that_says_so() {
        IntakeFile file = sheet("<c r=\"A2\"><f>\"A\"&amp;1</f><v>A1</v></c><c r=\"B2\"><f>2*6</f><v>12</v></c>");
        assertThat(file.preview()).containsExactly(List.of("=\"A\"&1", "=2*6"));
        Delivery.Read read = read(file, Kind.STOCK);
        assertThat(read.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.column()).isEqualTo("stock");
            assertThat(fault.value()).isEqualTo("=2*6");
            assertThat(fault.mend()).contains("formula");
        });
        assertThat(read.notes()).singleElement().satisfies(note -> assertThat(note.sentence()).contains("One formula").contains("sku"));
    }

    @Test
    void a_formula_shared_with_the_cell_above_is_a_formula_too() {
        assertThat(text("<c r=\"A2\"><f t=\"shared\" si=\"7\"/><v>12</v></c>")).startsWith("=");
    }

    /** Serial 45720 is 4 March 2025, and 61 is 1 March 1900 (Microsoft, "Differences between the 1900 and the 1904 date system", from memory). */
    @ParameterizedTest
    @CsvSource({"1, 45720, 2025-03-04", "2, 45720, 2025-03-04", "1, 61, 1900-03-01", "1, 59, 1900-02-28", "1, 45720.25, 2025-03-04 06:00",
            "3, 45720, 45720",
        "0, 45720, 45720", "1, -1, -1", "1, 99999999, 99999999"})
    void a_number_formatted_as_a_date_comes_as_a_date_and_no_other_does(int style, String stored, String text) {
        assertThat(text("<c r=\"A2\" s=\"" + style + "\"><v>" + stored + "</v></c>")).isEqualTo(text);
    }

    @Test
    void a_workbook_may_count_its_days_from_1904() {
        RawSheet sheet = RawSheet.of(HEADING + "<row r=\"2\"><c r=\"A2\" s=\"1\"><v>44258</v></c></row>")
                .styles("<cellXfs><xf/><xf numFmtId=\"14\"/></cellXfs>")
                .part("xl/workbook.xml", "<workbook xmlns:r=\"r\"><workbookPr date1904=\"1\"/><sheets><sheet name=\"a\" r:id=\"rId1\"/></sheets></workbook>");
        assertThat(opened(stored(folder, sheet.bytes())).preview().get(0).get(0)).isEqualTo("2025-03-04");
    }

    @Test
    void a_date_is_a_fault_in_any_column_for_none_holds_dates() {
        IntakeFile file = sheet("<c r=\"A2\" s=\"1\"><v>45720</v></c><c r=\"B2\" s=\"1\"><v>45720</v></c>");
        assertThat(read(file, Kind.STOCK).faults()).hasSize(2).allSatisfy(fault -> assertThat(fault.mend()).contains("made a date"));
    }

    @Test
    void truths_and_errors_are_told_as_the_spreadsheet_shows_them() {
        assertThat(text("<c r=\"A2\" t=\"b\"><v>1</v></c>")).isEqualTo("TRUE");
        IntakeFile file = sheet("<c r=\"A2\" t=\"e\"><v>#N/A</v></c><c r=\"B2\"><v>4</v></c>");
        assertThat(read(file, Kind.STOCK).faults()).singleElement().satisfies(fault -> {
            assertThat(fault.value()).isEqualTo("#N/A");
            assertThat(fault.mend()).contains("error");
        });
    }

    @Test
    void gaps_between_cells_and_rows_keep_places_right() {
        IntakeFile file = opened(stored(folder, RawSheet.of("<row r=\"3\"><c r=\"B3\" t=\"inlineStr\"><is><t>sku</t></is></c><c r=\"D3\" t=\"inlineStr\"><is><t>stock</t></is></c></row>"
                + "<row r=\"7\"><c r=\"D7\"><v>4</v></c></row><row r=\"9\"><c r=\"D9\"><v>x</v></c><c r=\"B9\"><v>8</v></c></row>").bytes()));
        assertThat(file.headings()).containsExactly("Column A", "sku", "Column C", "stock");
        assertThat(read(file, Kind.STOCK).faults()).extracting(IntakeFault::place, IntakeFault::heading).containsExactly(
                tuple("Row 7", "sku"), tuple("Row 9", "stock"));
    }

    @Test
    void rows_and_cells_without_their_numbers_follow_one_another() {
        String row = "<row><c t=\"inlineStr\"><is><t>%s</t></is></c><c t=\"inlineStr\"><is><t>%s</t></is></c></row>";
        IntakeFile file = opened(stored(folder, RawSheet.of(row.formatted("sku", "stock") + row.formatted("A", "x")).bytes()));
        assertThat(read(file, Kind.STOCK).faults()).extracting(IntakeFault::line).containsExactly(2);
    }

    @Test
    void the_first_sheet_that_can_be_seen_and_holds_something_is_read_and_that_is_told() {
        RawSheet book = RawSheet.of("").part("xl/workbook.xml", "<workbook xmlns:r=\"r\"><sheets><sheet name=\"notes\" state=\"hidden\" r:id=\"h\"/>"
                + "<sheet name=\"blank\" r:id=\"rId1\"/><sheet name=\"Stock list\" r:id=\"s\"/></sheets></workbook>")
                .part("xl/_rels/workbook.xml.rels", "<Relationships><Relationship Id=\"rId1\" Type=\"x/worksheet\" Target=\"worksheets/sheet1.xml\"/>"
                        + "<Relationship Id=\"h\" Type=\"x/worksheet\" Target=\"/xl/h.xml\"/><Relationship Id=\"s\" Type=\"x/worksheet\" Target=\"../xl/./s.xml\"/></Relationships>")
                .part("xl/h.xml", RawSheet.worksheet(RawSheet.row(1, "secret", "sku")))
                .part("xl/s.xml", RawSheet.worksheet(HEADING + RawSheet.row(2, "A", "4")));
        IntakeFile file = opened(stored(folder, book.bytes()));
        assertThat(file.headings()).containsExactly("sku", "stock");
        assertThat(file.assumptions()).singleElement().asString().contains("Stock list");
        book.part("xl/s.xml", RawSheet.worksheet(""));
        assertThat(refused(stored(folder, book.bytes()), Limits.DEFAULT).why()).isEqualTo(Refusal.NO_SHEET);
    }

    /** Both kinds of entity, as in "billion laughs" and in OWASP, "XML External Entity (XXE) Processing". */
    @ParameterizedTest
    @ValueSource(strings = {"<!DOCTYPE worksheet [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;\">]>", "<!DOCTYPE worksheet SYSTEM \"file:///etc/hostname\">",
        "<!doctype x>", "<!ENTITY a SYSTEM \"file:///etc/hostname\">"})
    void entities_are_refused_in_any_part(String type) {
        for (String part : List.of("xl/worksheets/sheet1.xml", "xl/workbook.xml", "xl/sharedStrings.xml", "xl/styles.xml", "_rels/.rels")) {
            RawSheet sheet = RawSheet.of(HEADING + RawSheet.row(2, "A", "4")).part(part, type + "<a>&b;</a>");
            assertThat(refused(stored(folder, sheet.bytes()), Limits.DEFAULT).why()).as(part).isEqualTo(Refusal.XML_ENTITIES);
        }
    }

    @Test
    void cells_that_ask_for_a_machine_s_whole_memory_are_refused_or_passed_over() {
        for (String cell : List.of("<c r=\"ZZZZZZ2\"><v>1</v></c>", "<c r=\"A2\" t=\"s\"><v>2000000000</v></c>",
                "<c r=\"A2\" t=\"s\"><v>-1</v></c>", "<c r=\"2\"><v>1</v></c>",
                "<c s=\"99999999999\"><v>1</v></c>")) {
            byte[] bytes = RawSheet.of("<row>" + cell + "</row>").bytes();
            assertThat(refused(stored(folder, bytes), Limits.DEFAULT).why()).as(cell).isEqualTo(Refusal.BROKEN);
        }
        assertThat(refused(stored(folder, RawSheet.of("<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>").bytes()), Limits.DEFAULT).why())
                .isEqualTo(Refusal.COLUMNS);
        assertThat(text("<c r=\"A2\"><v>1</v></c><c r=\"XFD2\" s=\"1\"/>")).as("a blank cell far out").isEqualTo("1");
        String deep = "<row>" + "<a>".repeat(200) + "</a>".repeat(200) + "</row>";
        assertThat(refused(stored(folder, RawSheet.of(deep).bytes()), Limits.DEFAULT).why()).isEqualTo(Refusal.BROKEN);
    }

    @Test
    void a_damaged_spreadsheet_is_told_with_the_part_that_is_damaged() {
        byte[] cut = java.util.Arrays.copyOf(RawSheet.of(HEADING).bytes(), 400);
        assertThat(refused(stored(folder, cut), Limits.DEFAULT).why()).isEqualTo(Refusal.BROKEN);
        assertThat(refused(stored(folder, RawSheet.of(HEADING).part("xl/workbook.xml", "<workbook").bytes()), Limits.DEFAULT).sentence())
                .contains("xl/workbook.xml");
        assertThat(refused(stored(folder, RawSheet.of(HEADING).without("xl/worksheets/sheet1.xml").bytes()), Limits.DEFAULT).sentence())
                .contains("sheet1.xml");
        assertThat(refused(stored(folder, RawSheet.of(HEADING).without("_rels/.rels").bytes()), Limits.DEFAULT).why())
                .isEqualTo(Refusal.OTHER_ARCHIVE);
    }
}
