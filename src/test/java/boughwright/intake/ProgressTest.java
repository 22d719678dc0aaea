package boughwright.intake;

import static boughwright.intake.IntakeFixture.LOOKS;
import static boughwright.intake.IntakeFixture.USD;
import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProgressTest {

    private static final int ROWS = 5_050;

    @TempDir
    Path folder;

    private IntakeFile file(Format format) {
        return opened(stored(folder, switch (format) {
            case CSV -> ("sku,stock\n" + IntStream.range(0, ROWS).mapToObj(i -> "A-" + i + ",1\n").collect(Collectors.joining())).getBytes();
            case JSON -> IntStream.range(0, ROWS).mapToObj(i -> "{\"sku\": \"A-" + i + "\", \"stock\": 1}")
                    .collect(Collectors.joining(",", "[", "]")).getBytes();
            case XLSX -> RawSheet.of(RawSheet.row(1, "sku", "stock")
                    + IntStream.range(0, ROWS).mapToObj(i -> RawSheet.row(i + 2, "A-" + i, "1")).collect(Collectors.joining())).bytes();
        }));
    }

    private static Delivery read(IntakeFile file, Progress progress) {
        return Intake.read(file, Kind.STOCK, Mapping.empty().with("sku", "sku").with("stock", "stock"), LOOKS, USD, progress);
    }

    @ParameterizedTest
    @EnumSource
    void rows_and_bytes_grow_to_the_end(Format format) {
        IntakeFile file = file(format);
        List<Long> bytes = new ArrayList<>();
        List<Integer> rows = new ArrayList<>();
        assertThat(read(file, (row, byteCount, ofBytes) -> {
            assertThat(ofBytes).isEqualTo(file.bytes());
            bytes.add(byteCount);
            return rows.add(row);
        })).isInstanceOfSatisfying(Delivery.Read.class, read -> assertThat(read.rows()).hasSize(ROWS));
        assertThat(bytes).isSorted().hasSizeGreaterThan(20).endsWith(file.bytes()).allSatisfy(b -> assertThat(b).isBetween(0L, file.bytes()));
        assertThat(bytes.get(bytes.size() / 2)).isBetween(file.bytes() / 4, file.bytes() * 3 / 4);
        assertThat(rows).isSorted().endsWith(ROWS);
    }

    @ParameterizedTest
    @EnumSource
    void a_reading_that_is_cancelled_gives_nothing_of_the_file(Format format) {
        assertThat(read(file(format), (rows, bytes, ofBytes) -> rows < 1_000)).isEqualTo(new Delivery.Cancelled(1_000));
        assertThat(read(file(format), (rows, bytes, ofBytes) -> rows < ROWS)).as("at the very end").isEqualTo(new Delivery.Cancelled(ROWS));
    }
}
