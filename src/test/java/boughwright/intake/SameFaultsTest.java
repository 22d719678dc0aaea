package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.CatalogueFixture;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sample that is broken on purpose, brought as CSV, XLSX and JSON. */
class SameFaultsTest {

    /** Lines that are at fault as a whole in a CSV, and can be in no other format. */
    private static final List<Integer> LINES_TORN = List.of(35, 36, 38);

    @TempDir
    Path folder;

    private final String sample = CatalogueFixture.sample("broken.csv");

    private Delivery.Read brought(byte[] bytes) {
        return read(opened(stored(folder, bytes)), Kind.WHOLE);
    }

    /** The lines of the sample, each split at its commas; those that are torn, and quoted names, are left out. */
    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        List<String> lines = sample.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (!LINES_TORN.contains(i + 1)) {
                rows.add(List.of(lines.get(i).replaceAll("\"([^\"]*?),([^\"]*?)(?:,([^\"]*?))?\"", "$1").split(",", -1)));
            }
        }
        return rows;
    }

    private static List<CatalogueFault> strict(String csv) {
        return ((CatalogueReading.Faulty) new CatalogueReader(IntakeFixture.LOOKS, IntakeFixture.USD).read(csv)).faults();
    }

    /** A price of “12,50” can mean one thing only, and is the one that the strict reader refuses and this one reads. */
    @Test
    void a_csv_has_the_faults_that_the_strict_reader_finds() {
        Delivery.Read read = brought(sample.getBytes());
        assertThat(read.faults()).extracting(IntakeFault::line, IntakeFault::column).containsExactlyElementsOf(strict(sample).stream()
                .filter(fault -> !fault.value().equals("12,50")).map(fault -> tuple(fault.line(), fault.column())).toList());
        assertThat(read.notes()).singleElement().satisfies(note -> {
            assertThat(note.line()).isEqualTo(25);
            assertThat(note.sentence()).contains("One value of “price” was read").contains("“12,50” as 12.50");
        });
        assertThat(read.faultyRows()).isEqualTo(read.faults().size());
        assertThat(read.rows()).hasSize(read.allRows() - read.faults().size()).extracting(GoodRow::line).contains(2, 3, 4, 25).doesNotContain(8, 38);
    }

    @Test
    void a_spreadsheet_and_a_json_of_the_same_rows_have_the_same_faults() throws IOException {
        List<List<String>> rows = rows();
        String csv = String.join("\n", rows.stream().map(row -> String.join(",", row)).toList());
        List<IntakeFault> expected = brought(csv.getBytes()).faults();
        assertThat(expected).hasSizeGreaterThan(20);

        StringBuilder sheet = new StringBuilder();
        ArrayNode list = new ObjectMapper().createArrayNode();
        for (int i = 0; i < rows.size(); i++) {
            sheet.append(RawSheet.row(i + 1, rows.get(i).toArray(String[]::new)));
            ObjectNode entry = i == 0 ? new ObjectMapper().createObjectNode() : list.addObject();
            for (int c = 0; c < rows.get(i).size(); c++) {
                entry.put(rows.get(0).get(c), rows.get(i).get(c));
            }
        }
        assertThat(brought(RawSheet.of(sheet.toString()).bytes()).faults()).extracting(IntakeFault::line, IntakeFault::column, IntakeFault::value)
                .containsExactlyElementsOf(expected.stream().map(f -> tuple(f.line(), f.column(), f.value())).toList());
        assertThat(brought(list.toString().getBytes()).faults()).extracting(f -> f.line() + 1, IntakeFault::column, IntakeFault::value)
                .containsExactlyElementsOf(expected.stream().map(f -> tuple(f.line(), f.column(), f.value())).toList());
    }

    @Test
    void a_fault_names_the_heading_of_the_file_beside_our_own_column() {
        IntakeFile file = opened(stored(folder, "Item No.;EAN;Qty on hand\nA-1;6291041500214;\n;;5\nA-1;;3\n"));
        assertThat(read(file, Kind.STOCK).faults()).extracting(IntakeFault::place, IntakeFault::column, IntakeFault::heading, IntakeFault::value)
                .containsExactly(
                tuple("Line 2", "gtin", "EAN", "6291041500214"), tuple("Line 2", "stock", "Qty on hand", ""), tuple("Line 3", "sku", "Item No.", ""),
                tuple("Line 4", "sku", "Item No.", "A-1"));
        assertThat(read(file, Kind.STOCK).faults().get(0).sentence())
                .isEqualTo("Line 2, EAN: “6291041500214”. The last digit should be 3. Compare it with the bar code.");
        assertThat(read(file, Kind.STOCK).faults().get(3).mend()).contains("Line 2");
    }

    @Test
    void a_quote_that_never_closes_is_told_with_the_heading_where_it_opens_and_later_lines_are_read() {
        IntakeFile file = opened(stored(folder, "sku\tstock\nA-1\t\"4\nB-1\t5\nC 2\" ball\t6\n"));
        Delivery.Read read = read(file, Kind.STOCK);
        assertThat(read.faults()).extracting(IntakeFault::line, IntakeFault::column, IntakeFault::heading)
                .containsExactly(tuple(2, "stock", "stock"));
        assertThat(read.rows()).containsExactly(new GoodRow.Stock(3, "B-1", "", 5), new GoodRow.Stock(4, "C 2\" ball", "", 6));
    }

    @Test
    void faults_beyond_the_first_thousand_are_counted_and_no_longer_listed() {
        Delivery.Read stock = read(opened(stored(folder, "sku,stock\n" + "A,x\n".repeat(1_500))), Kind.STOCK);
        assertThat(stock.faults()).hasSize(Intake.FAULTS_LISTED);
        assertThat(stock.allFaults()).as("each line has no number, and all but the first repeat the SKU").isEqualTo(1_500 + 1_499);
        assertThat(stock.faultyRows()).isEqualTo(1_500);
    }

    @Test
    void a_control_character_is_told_by_its_number() {
        IntakeFile file = opened(stored(folder, "sku,stock\nA\u0007,4\n"));
        assertThat(read(file, Kind.STOCK).faults()).singleElement().satisfies(fault -> assertThat(fault.mend()).contains("U+0007"));
    }
}
