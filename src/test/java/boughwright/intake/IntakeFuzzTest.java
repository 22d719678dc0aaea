package boughwright.intake;

import static boughwright.intake.IntakeFixture.LOOKS;
import static boughwright.intake.IntakeFixture.USD;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/**
 * Whatever a file holds, it is refused by name or read with all its faults; never an exception, never half a load. What is good comes back
 * the same from each format that is written, and what is marked can be brought again.
 *
 * <p>With every build the seeds run, and what fuzzing has found, under {@code src/test/resources}. DEVELOPERS.md says how to fuzz on.
 */
class IntakeFuzzTest {

    /** Small enough for thousands of files a second, and to be met. */
    private static final Limits LIMITS = new Limits(1_000_000, 500, 60, 500, 3_000_000, 100, 50, 16);

    /** While fuzzing, spreadsheets are written for one file in so many: that takes longer than all the rest. */
    private static final int SHEETS_ONE_IN = Boolean.getBoolean("jazzer.hooks") ? 16 : 1;

    private static Path folder;

    @BeforeAll
    static void folder() throws IOException {
        folder = Files.createTempDirectory("fuzzed");
    }

    @AfterAll
    static void gone() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    @FuzzTest(maxDuration = "3m")
    void a_text_is_read_or_refused(byte[] bytes) throws IOException {
        bring(bytes);
    }

    @FuzzTest(maxDuration = "3m")
    void a_json_is_read_or_refused(byte[] bytes) throws IOException {
        bring(bytes);
    }

    @FuzzTest(maxDuration = "3m")
    void a_packed_file_is_read_or_refused(byte[] bytes) throws IOException {
        bring(bytes);
    }

    /** The sheet within a sound package, since few changes to packed bytes leave anything to unpack. */
    @FuzzTest(maxDuration = "3m")
    void a_sheet_is_read_or_refused(byte[] bytes) throws IOException {
        bring(RawSheet.of("").shared("<t>sku</t>", "<t>stock</t>").styles("<cellXfs><xf/><xf numFmtId=\"14\"/></cellXfs>")
                .part("xl/worksheets/sheet1.xml", bytes).bytes());
    }

    /** Strings, formats and sheets of a sound package. */
    @FuzzTest(maxDuration = "3m")
    void a_workbook_s_other_parts_are_read_or_refused(byte[] bytes) throws IOException {
        for (String part : List.of("xl/sharedStrings.xml", "xl/styles.xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", "_rels/.rels")) {
            bring(RawSheet.of("<row><c t=\"s\"><v>0</v></c><c s=\"1\"><v>1</v></c></row>").part(part, bytes).bytes());
        }
    }

    private static void bring(byte[] bytes) throws IOException {
        Path stored = Files.write(folder.resolve("brought"), bytes);
        if (!(IntakeFile.of("brought", stored, LIMITS) instanceof Opening.Opened opened)) {
            return;
        }
        IntakeFile file = opened.file();
        for (Kind kind : Kind.values()) {
            Mapping mapping = Mapping.of(ColumnGuess.of(file, kind));
            require(Mapping.read(mapping.toJson()).orElseThrow().equals(mapping), "the mapping comes back");
            for (String column : mapping.missing(kind, file.headings())) {
                mapping = mapping.with(column, file.headings().get(column.length() % file.headings().size()));
            }
            if (Intake.read(file, kind, mapping, LOOKS, USD, Progress.SILENT) instanceof Delivery.Read read) {
                check(file, read, Math.floorMod(Arrays.hashCode(bytes), SHEETS_ONE_IN) == 0);
            }
        }
    }

    private static void check(IntakeFile file, Delivery.Read read, boolean sheets) throws IOException {
        require(read.rows().size() <= read.allRows(), "no row is good that is not there");
        require(read.faultless() == (read.rows().size() == read.allRows()), "a row is good or has a fault");
        require(read.faults().size() == Math.min(read.allFaults(), Intake.FAULTS_LISTED), "faults are listed");
        read.faults().forEach(IntakeFault::sentence);
        for (GoodRow row : read.rows()) {
            require(row.cells().size() == read.kind().columns().size(), "a row has its cells");
        }
        if (!read.products().isEmpty()) {
            for (Format format : sheets ? Format.values() : new Format[] {Format.CSV, Format.JSON}) {
                Path again = Files.write(folder.resolve("again"), IntakeFixture.written(format, read.products()));
                IntakeFile exported = IntakeFixture.opened(again);
                require(IntakeFixture.read(exported, Kind.WHOLE).products().equals(read.products()), "what is exported comes back");
            }
        }
        if (!sheets && MarkedCopy.format(file) == Format.XLSX) {
            return;
        }
        ByteArrayOutputStream marked = new ByteArrayOutputStream();
        MarkedCopy.write(file, read.faults(), marked);
        Opening opening = IntakeFile.of("marked", Files.write(folder.resolve("marked"), marked.toByteArray()));
        require(opening instanceof Opening.Opened, "a marked copy can be brought again");
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
