package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkedCopyTest {

    @TempDir
    Path folder;

    private static byte[] copy(IntakeFile file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        MarkedCopy.write(file, read(file, Kind.STOCK).faults(), out);
        return out.toByteArray();
    }

    @Test
    void a_csv_comes_back_with_its_own_separator_and_a_column_to_mend() throws IOException {
        IntakeFile file = opened(stored(folder, "Stock list;;\nSKU;Qty;Noté\nA;4;é\n;x;=1+1\nB;5\n".getBytes(Charset.forName("windows-1252"))));
        assertThat(new String(copy(file), StandardCharsets.UTF_8).lines()).containsExactly("\uFEFF\"Stock list\";;;",
                "SKU;Qty;Noté;\"to mend\"", "A;\"4\";é;",
                ";x;\"'=1+1\";\"SKU: Name the product by its SKU or by its GTIN. Qty: Write a whole number from 0 to 1000000.\"",
                "B;\"5\";\"This line has 2 cells, but the heading has 3. Add or remove separators; put text that holds one in double quotes.\"");
    }

    @Test
    void a_mended_copy_is_read_as_the_file_would_be_and_marked_anew() throws IOException {
        IntakeFile file = opened(stored(folder, "sku,stock,note\nA,four,'=1\n"));
        IntakeFile again = opened(stored(folder, copy(file)));
        assertThat(again.headings()).containsExactly("sku", "stock", "note", "to mend");
        assertThat(read(again, Kind.STOCK).faults()).hasSize(1);
        String twice = new String(copy(again), StandardCharsets.UTF_8);
        assertThat(twice.lines().findFirst()).contains("\uFEFFsku,stock,note,\"to mend\"");
        assertThat(twice).contains("\"'=1\"");
        IntakeFile mended = opened(stored(folder, new String(copy(file), StandardCharsets.UTF_8).replace("four", "4")));
        assertThat(read(mended, Kind.STOCK).rows()).containsExactly(new GoodRow.Stock(2, "A", "", 4));
    }

    /** fastexcel-reader as a second opinion. */
    @Test
    void an_xlsx_comes_back_as_one_with_the_cells_at_fault_coloured() throws IOException {
        IntakeFile file = opened(stored(folder, RawSheet.of(RawSheet.row(1, "sku", "stock", "note") + RawSheet.row(2, "A", "many", "=1+1")
                + "<row r=\"3\"><c r=\"A3\"><v>0012</v></c><c r=\"B3\"><v>7</v></c><c r=\"C3\"><f>SUM(B2:B3)</f><v>7</v></c></row>").bytes()));
        assertThat(MarkedCopy.format(file)).isEqualTo(Format.XLSX);
        byte[] copy = copy(file);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(copy));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            List<Row> all = rows.toList();
            assertThat(all.get(0).stream().map(c -> c.getText())).containsExactly("sku", "stock", "note", "to mend");
            assertThat(all.get(1).getCellText(2)).isEqualTo("'=1+1");
            assertThat(all.get(1).getCellText(3)).startsWith("stock: Write a whole number");
            assertThat(all.get(2).getCell(1).getType()).isEqualTo(CellType.NUMBER);
            assertThat(all.get(2).getCell(2).getType()).isEqualTo(CellType.STRING);
        }
        assertThat(read(opened(stored(folder, copy)), Kind.STOCK).faults()).extracting(IntakeFault::line, IntakeFault::column)
                .containsExactly(tuple(2, "stock"));
        String sheet = part(copy, "xl/worksheets/sheet1.xml");
        String styleOfFault = sheet.replaceFirst("(?s).*<c r=\"B2\" s=\"(\\d+)\".*", "$1");
        assertThat(sheet).doesNotContain("r=\"A2\" s=\"" + styleOfFault + "\"");
        assertThat(part(copy, "xl/styles.xml")).contains("F6D5C9");
    }

    private String part(byte[] xlsx, String name) throws IOException {
        try (ZipFile zip = new ZipFile(stored(folder, xlsx).toFile())) {
            return new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void a_json_comes_back_as_a_csv_whose_lines_are_its_products() throws IOException {
        IntakeFile file = opened(stored(folder, "[{\"sku\": \"A\", \"offers\": {\"inventoryLevel\": -1}}]"));
        assertThat(MarkedCopy.format(file)).isEqualTo(Format.CSV);
        assertThat(new String(copy(file), StandardCharsets.UTF_8).lines()).containsExactly("\uFEFFsku,offers.inventoryLevel,\"to mend\"",
                "A,\"'-1\",\"offers.inventoryLevel: Write a whole number from 0 to 1000000.\"");
    }

    @Test
    void each_mend_stands_beside_its_own_row_where_cells_hold_line_breaks() throws IOException {
        IntakeFile file = opened(stored(folder, "sku,stock\n\"A\nB\",x\n\nC,y\n"));
        assertThat(read(file, Kind.STOCK).faults()).extracting(IntakeFault::line).containsExactly(2, 5);
        String marked = new String(copy(file), StandardCharsets.UTF_8);
        assertThat(marked.split("to mend")).hasSize(2);
        assertThat(marked.split("whole number")).hasSize(3);
    }
}
