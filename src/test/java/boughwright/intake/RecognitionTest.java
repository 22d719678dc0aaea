package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.refused;
import static boughwright.intake.IntakeFixture.stored;
import static boughwright.intake.IntakeFixture.written;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.CatalogueFixture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecognitionTest {

    @TempDir
    Path folder;

    private IntakeFile text(String text) {
        return opened(stored(folder, text));
    }

    private Refusal why(byte[] bytes) {
        return refused(stored(folder, bytes), Limits.DEFAULT).why();
    }

    private Refusal why(String text) {
        return why(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @EnumSource
    void each_format_is_known_by_its_content(Format format) {
        IntakeFile file = opened(stored(folder, written(format, IntakeFixture.season().subList(0, 3))));
        assertThat(file.format()).isEqualTo(format);
        assertThat(file.preview()).hasSize(3).allSatisfy(row -> assertThat(row).hasSameSizeAs(file.headings()));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void commas_semicolons_and_tabs_part_columns(String separator) {
        IntakeFile file = text("sku,price,stock\nA-1,4.50,12\n".replace(",", separator));
        assertThat(file.headings()).containsExactly("sku", "price", "stock");
        assertThat(file.preview()).containsExactly(List.of("A-1", "4.50", "12"));
    }

    @Test
    void a_separator_within_quotes_or_named_by_a_first_line_of_its_own_is_understood() {
        assertThat(text("sku;\"price, net, per pack, USD\";stock\nA;1,50;2\n").headings())
                .containsExactly("sku", "price, net, per pack, USD", "stock");
        assertThat(text("sep=;\r\nsku;stock\r\nA,1;2\r\n").preview()).containsExactly(List.of("A,1", "2"));
    }

    @ParameterizedTest
    @CsvSource({"UTF-8, false", "UTF-8, true", "UTF-16LE, true", "UTF-16BE, true"})
    void letters_are_read_right_in_every_form_of_unicode(String charset, boolean mark) {
        byte[] bytes = ((mark ? "\uFEFF" : "") + "sku,name\nA-1,Étoile 3½ in\n").getBytes(Charset.forName(charset));
        IntakeFile file = opened(stored(folder, bytes));
        assertThat(file.headings()).containsExactly("sku", "name");
        assertThat(file.preview()).containsExactly(List.of("A-1", "Étoile 3½ in"));
        assertThat(file.assumptions()).isEmpty();
    }

    @Test
    void what_is_no_unicode_is_taken_to_be_windows_1252_and_that_is_told() {
        IntakeFile file = opened(stored(folder, "sku,name\nA-1,Étoile – 3½ in\n".getBytes(Charset.forName("windows-1252"))));
        assertThat(file.preview()).containsExactly(List.of("A-1", "Étoile – 3½ in"));
        assertThat(file.assumptions()).singleElement().asString().contains("Windows-1252");
    }

    @Test
    void a_letter_across_two_pieces_of_a_long_file_is_still_unicode() {
        String row = "x".repeat(7) + "é½—€,1\n";
        assertThat(text("sku,name\n" + row.repeat(30_000)).assumptions()).isEmpty();
    }

    @Test
    void a_title_above_the_heading_is_passed_over_and_that_is_told() {
        IntakeFile file = text("Winter list,,\n\nas of November,,\nItem No.,Description,Qty on hand\nA-1,Ball,4\n");
        assertThat(file.headings()).containsExactly("Item No.", "Description", "Qty on hand");
        assertThat(file.preview()).containsExactly(List.of("A-1", "Ball", "4"));
        assertThat(file.assumptions()).singleElement().asString().contains("4");
        assertThat(read(file, Kind.STOCK).rows()).containsExactly(new GoodRow.Stock(5, "A-1", "", 4));
    }

    @Test
    void a_title_with_other_separators_than_the_list_does_no_harm() {
        for (String title : List.of("Winter list", "Winter list, 2026, in packs", "Winter; list; all")) {
            IntakeFile file = text(title + "\n\nSKU\tQty\nA,1\t4\n");
            assertThat(file.headings()).containsExactly("SKU", "Qty");
            assertThat(file.preview()).containsExactly(List.of("A,1", "4"));
        }
        assertThat(text("Artikel\n\nNummer;Menge\nA;4\n").headings()).as("in a language that is not known here").containsExactly("Nummer", "Menge");
    }

    @Test
    void names_within_quotes_part_nothing() {
        IntakeFile file = text("code\tname\tto mend\nA\tb\t\"material: Write one of: fabric, metal, paper, print, design.\"\n");
        assertThat(file.headings()).containsExactly("code", "name", "to mend");
        assertThat(text("Nummer\tname\tto mend\nA\tb\t\"Write one of: material, pattern, finish, shape.\"\n").headings())
                .containsExactly("Nummer", "name", "to mend");
    }

    @Test
    void headings_are_each_there_once_and_one_without_a_name_is_called_by_its_column() {
        assertThat(text("sku,,price,price,\nA,b,1,2,\n").headings()).containsExactly("sku", "Column B", "price", "price (2)");
        assertThat(Recognition.letters(25)).isEqualTo("Z");
        assertThat(Recognition.letters(26)).isEqualTo("AA");
        assertThat(Recognition.letters(701)).isEqualTo("ZZ");
        assertThat(Recognition.letters(702)).isEqualTo("AAA");
    }

    @Test
    void lines_may_end_as_any_machine_ends_them() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            IntakeFile file = text(String.join(end, "sku,stock", "A,1", "", "B,x", ""));
            assertThat(file.preview()).containsExactly(List.of("A", "1"), List.of("B", "x"));
            assertThat(read(file, Kind.STOCK).faults()).extracting(IntakeFault::line).containsExactly(4);
        }
    }

    @Test
    void a_row_of_data_that_says_no_twice_is_no_heading() {
        assertThat(text("Artikel,aktiv,neu\nA,no,no\n").headings()).containsExactly("Artikel", "aktiv", "neu");
    }

    /** Signatures of OLE 2 and PDF from memory. */
    @Test
    void what_is_no_list_of_products_is_refused_by_name() throws IOException {
        assertThat(why(new byte[0])).isEqualTo(Refusal.EMPTY);
        assertThat(why(" \r\n\n ")).isEqualTo(Refusal.EMPTY);
        assertThat(why("\uFEFF")).isEqualTo(Refusal.EMPTY);
        assertThat(why("[]")).isEqualTo(Refusal.EMPTY);
        assertThat(why(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1, 0, 0}))
                .isEqualTo(Refusal.OLD_SPREADSHEET);
        assertThat(why("%PDF-1.7\n")).isEqualTo(Refusal.UNKNOWN);
        assertThat(why("<html><table><tr><td>sku</td></tr></table></html>")).isEqualTo(Refusal.UNKNOWN);
        assertThat(why(new byte[] {'s', 'k', 'u', ',', 0, 'x'})).isEqualTo(Refusal.UNKNOWN);
        assertThat(why("sku,name\nA,b\n".getBytes(StandardCharsets.UTF_16LE))).isEqualTo(Refusal.UNKNOWN);
        assertThat(why("a list\nof words\n")).isEqualTo(Refusal.ONE_COLUMN);
        assertThat(why("sku,stock\n")).isEqualTo(Refusal.NO_ROWS);
        assertThat(why("{\"product\": []}")).isEqualTo(Refusal.NO_LIST);
        assertThat(why("[5, {}, []]")).isEqualTo(Refusal.NO_LIST);
        assertThat(why("[{\"sku\": }]")).isEqualTo(Refusal.BROKEN);
        assertThat(why("[{\"sku\": \"A\"}")).isEqualTo(Refusal.BROKEN);
        assertThat(why("[{\"sku\": \"A\", \"sku\": \"B\"}]")).isEqualTo(Refusal.BROKEN);
        assertThat(why("[{\"name\": \"É\"}]".getBytes(StandardCharsets.ISO_8859_1))).isEqualTo(Refusal.BROKEN);
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(zip)) {
            out.putNextEntry(new ZipEntry("content.xml"));
        }
        assertThat(why(zip.toByteArray())).isEqualTo(Refusal.OTHER_ARCHIVE);
    }

    @Test
    void every_refusal_has_a_sentence_that_says_how_to_mend_it() {
        for (Refusal refusal : Refusal.values()) {
            assertThat(new RefusedFile(refusal, "5").getMessage()).as(refusal.word()).hasSizeGreaterThan(50).doesNotContain("{");
        }
    }

    @Test
    void the_season_brought_as_a_file_is_read_as_the_shop_reads_it() {
        Delivery.Read read = read(opened(Path.of("catalogue-samples/season.csv")), Kind.WHOLE);
        assertThat(read.faultless()).isTrue();
        assertThat(read.notes()).isEmpty();
        assertThat(read.products()).containsExactlyInAnyOrderElementsOf(IntakeFixture.season());
        assertThat(CatalogueFixture.sample("season.csv").lines().count()).isEqualTo(read.allRows() + 1L);
    }
}
