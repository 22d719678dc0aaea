package boughwright.intake;

import static boughwright.intake.IntakeFixture.LOOKS;
import static boughwright.intake.IntakeFixture.USD;
import static boughwright.intake.IntakeFixture.refused;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each limit, met with a file that is a little too much. */
class LimitsTest {

    private static final Limits SMALL = new Limits(20_000, 10, 5, 50, 200_000, 20, 10, 4);

    @TempDir
    Path folder;

    private Opening.Refused refusal(String text) {
        return refused(stored(folder, text), SMALL);
    }

    private Delivery read(byte[] bytes, Limits limits) {
        Opening opening = IntakeFile.of("brought", stored(folder, bytes), limits);
        if (opening instanceof Opening.Opened opened) {
            return Intake.read(opened.file(), Kind.STOCK, Mapping.empty().with("sku", "sku").with("stock", "stock"), LOOKS, USD, Progress.SILENT);
        }
        Opening.Refused refused = (Opening.Refused) opening;
        return new Delivery.Refused(refused.why(), refused.sentence());
    }

    private Delivery read(String text) {
        return read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8), SMALL);
    }

    private static void assertRefused(Delivery delivery, Refusal why, String limit) {
        assertThat(delivery).isInstanceOfSatisfying(Delivery.Refused.class, refused -> {
            assertThat(refused.why()).isEqualTo(why);
            assertThat(refused.sentence()).contains(limit);
        });
    }

    @Test
    void a_file_of_too_many_bytes() {
        assertThat(refusal("sku,stock\n" + "A,1\n".repeat(5_000)).why()).isEqualTo(Refusal.FILE_SIZE);
        assertThat(refused(stored(folder, new byte[50_000_001]), Limits.DEFAULT).sentence()).contains("50 MB");
    }

    @Test
    void a_file_of_too_many_rows_in_each_format() {
        String csv = IntStream.range(0, 11).mapToObj(i -> "A-" + i + ",1\n").collect(Collectors.joining());
        assertRefused(read("sku,stock\n" + csv), Refusal.ROWS, "10 rows");
        String json = IntStream.range(0, 11).mapToObj(i -> "{\"sku\": \"A-" + i + "\", \"stock\": 1}").collect(Collectors.joining(","));
        assertRefused(read("[" + json + "]"), Refusal.ROWS, "10 rows");
        String rows = IntStream.range(0, 12).mapToObj(i -> RawSheet.row(i + 1, i == 0 ? "sku" : "A-" + i, i == 0 ? "stock" : "1"))
                .collect(Collectors.joining());
        assertRefused(read(RawSheet.of(rows).bytes(), SMALL), Refusal.ROWS, "10 rows");
        assertThat(read("sku,stock\n" + csv.lines().limit(10).collect(Collectors.joining("\n")))).isInstanceOf(Delivery.Read.class);
    }

    @Test
    void a_file_of_too_many_columns_in_each_format() {
        assertRefused(read("sku,stock,a,b,c,d\n1,2,3,4,5,6\n"), Refusal.COLUMNS, "5 columns");
        assertRefused(read("[{\"sku\": 1, \"stock\": 2, \"a\": 3, \"b\": 4, \"c\": {\"d\": 5, \"e\": 6}}]"), Refusal.COLUMNS, "5 columns");
        assertRefused(read(RawSheet.of(RawSheet.row(1, "sku", "stock", "a", "b", "c", "d")).bytes(), SMALL), Refusal.COLUMNS, "5 columns");
    }

    @Test
    void a_cell_that_is_too_long_is_a_fault_of_its_row_alone() {
        String text = "sku,stock\n" + "A".repeat(51) + ",1\nB,1\n";
        assertThat(read(text)).isInstanceOfSatisfying(Delivery.Read.class, read -> {
            assertThat(read.rows()).hasSize(1);
            assertThat(read.faults()).singleElement().satisfies(fault -> {
                assertThat(fault.line()).isEqualTo(2);
                assertThat(fault.heading()).isEqualTo("sku");
                assertThat(fault.mend()).contains("50 characters");
            });
        });
    }

    @Test
    void a_text_that_is_no_cell_any_more_is_refused_in_each_format() {
        Limits wide = Limits.DEFAULT;
        String endless = "x".repeat(1_100_000);
        assertRefused(read(("sku,stock\nA," + endless + "\n").getBytes(), wide), Refusal.TEXT_LENGTH, "1048576");
        assertRefused(read(("[{\"sku\": \"" + endless + "\"}]").getBytes(), wide), Refusal.TEXT_LENGTH, "1000000");
        Limits loose = new Limits(wide.fileBytes(), 10, 5, 50, wide.unpackedBytes(), 10_000, 100, 4);
        assertRefused(read(RawSheet.of(RawSheet.row(1, "sku", endless)).bytes(), loose), Refusal.TEXT_LENGTH, "1000000");
        assertRefused(read(RawSheet.of("<row r=\"1\" spans=\"" + endless + "\"/>").bytes(), loose), Refusal.TEXT_LENGTH, "1000000");
        assertRefused(read(RawSheet.of("<!--" + endless + "-->").bytes(), loose), Refusal.TEXT_LENGTH, "1000000");
    }

    @Test
    void a_spreadsheet_that_unpacks_to_too_much() {
        assertRefused(read(RawSheet.of(RawSheet.row(1, "sku", "stock") + "<row r=\"2\"/>".repeat(30_000)).bytes(), SMALL),
                Refusal.UNPACKED_SIZE, "MB");
    }

    @Test
    void a_spreadsheet_that_is_packed_too_tightly() {
        byte[] bomb = RawSheet.of(RawSheet.row(1, "sku", "stock") + "<row r=\"2\"/>".repeat(500_000)).bytes();
        assertThat(bomb.length).isLessThan(50_000);
        assertRefused(read(bomb, Limits.DEFAULT), Refusal.PACK_RATIO, "100 to 1");
    }

    @Test
    void a_spreadsheet_of_too_many_parts() {
        RawSheet sheet = RawSheet.of(RawSheet.row(1, "sku", "stock"));
        for (int i = 0; i < 10; i++) {
            sheet.part("xl/media/" + i, "");
        }
        assertRefused(read(sheet.bytes(), SMALL), Refusal.PACKED_PARTS, "10 parts");
    }

    @Test
    void json_that_is_nested_too_deeply() {
        assertRefused(read("[{\"sku\": {\"a\": {\"b\": {\"c\": 1}}}}]"), Refusal.JSON_DEPTH, "4 deep");
        assertRefused(read(("[".repeat(100_000)).getBytes(), Limits.DEFAULT), Refusal.JSON_DEPTH, "32 deep");
    }
}
