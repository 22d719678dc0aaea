package boughwright.intake;

import static boughwright.intake.IntakeFixture.LOOKS;
import static boughwright.intake.IntakeFixture.USD;
import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.season;
import static boughwright.intake.IntakeFixture.stored;
import static boughwright.intake.IntakeFixture.written;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RoundTripTest {

    private static final List<String> HOSTILE = List.of("=cmd|' /C calc'!A0", "+1", "-1", "@SUM(1)", "'=1", "''", "a\"b", "\"",
            "\"\"quoted\"\"", "a,b;c\td", "a\nb", "a\r\nb",
            "a\rb", "x;=1+1", "x,-1", "é½—€ 漢字 🎄", "<b>&amp;</b>", "]]>", "_x0041_", "{\"a\": [1]}", "\\", "null", "sep=;", "0012", "1E5",
            "TRUE", "#N/A", "2025-03-04",
            "a\u00A0b", "a  b", "＝1");

    @TempDir
    Path folder;

    private static Product named(Product p, String sku, String text) {
        return new Product(sku, p.gtin(), text, text, p.roles(), p.family(), p.colour(), p.secondColour(), p.texture(), p.finish(),
                p.material(), p.shape(), p.pattern(),
                p.weave(), p.width(), p.length(), p.lights(), p.pack(), p.price(), p.level(), p.stock(), text, p.looks(), p.safety(), p.lab());
    }

    private Delivery.Read again(Format format, List<Product> products) {
        return read(opened(stored(folder, written(format, products))), Kind.WHOLE);
    }

    @ParameterizedTest
    @EnumSource
    void the_season_comes_back_as_it_went(Format format) {
        Delivery.Read read = again(format, season());
        assertThat(read.faults()).isEmpty();
        assertThat(read.notes()).isEmpty();
        assertThat(read.products()).isEqualTo(season());
    }

    @ParameterizedTest
    @EnumSource
    void names_that_mean_harm_come_back_as_they_went(Format format) {
        List<Product> products = new ArrayList<>();
        for (int i = 0; i < HOSTILE.size(); i++) {
            products.add(named(season().get(i), "SKU-" + i, HOSTILE.get(i)));
        }
        Delivery.Read read = again(format, products);
        assertThat(read.faults()).isEmpty();
        assertThat(read.products()).isEqualTo(products);
    }

    @ParameterizedTest
    @EnumSource
    void so_do_names_of_anything_at_all(Format format) {
        SplittableRandom random = new SplittableRandom(45);
        String characters = "=+-@,;'\"\t\r\n\\<>&{}[]ab ½漢\u00E9";
        List<Product> products = new ArrayList<>();
        for (int n = 0; n < 300; n++) {
            StringBuilder text = new StringBuilder("n");
            for (int i = random.nextInt(12); i > 0; i--) {
                text.insert(random.nextInt(2) == 0 ? 0 : text.length(), characters.charAt(random.nextInt(characters.length())));
            }
            products.add(named(season().get(n), "SKU-" + n, text.toString().strip()));
        }
        assertThat(again(format, products).products()).extracting(Product::name, Product::brand, Product::shelf)
                .containsExactlyElementsOf(products.stream().map(p -> tuple(p.name(), p.brand(), p.shelf())).toList());
    }

    @Test
    void the_strict_reader_reads_the_exported_csv_too() {
        String csv = new String(written(Format.CSV, season()), StandardCharsets.UTF_8);
        assertThat(new CatalogueReader(LOOKS, USD).read(csv)).isInstanceOfSatisfying(CatalogueReading.Read.class,
                read -> assertThat(read.catalogue().products()).isEqualTo(season()));
    }

    /** fastexcel-reader as a second opinion on what stands in the sheet. */
    @Test
    void the_exported_sheet_holds_numbers_as_numbers_and_no_formula() throws IOException {
        List<Product> products = List.of(named(season().get(0), "SKU-1", "=1+1"), season().get(1));
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(written(Format.XLSX, products)));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            List<Row> all = rows.toList();
            assertThat(all.get(0).stream().map(cell -> cell.getText())).containsExactlyElementsOf(CatalogueRows.COLUMNS);
            assertThat(all).allSatisfy(row -> assertThat(row.stream().filter(c -> c != null).map(c -> c.getType())).doesNotContain(CellType.FORMULA));
            assertThat(all.get(1).getCellText(2)).isEqualTo("'=1+1");
            assertThat(all.get(1).getCell(1).getType()).as("thirteen digits would be shown with an exponent").isEqualTo(CellType.STRING);
            assertThat(all.get(2).getCell(CatalogueRows.COLUMNS.indexOf("price")).getType()).isEqualTo(CellType.NUMBER);
            assertThat(all.get(2).getCell(CatalogueRows.COLUMNS.indexOf("stock")).asNumber())
                    .isEqualByComparingTo(String.valueOf(season().get(1).stock()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_template_is_read_without_a_fault_in_any_shop(Format format) throws IOException {
        for (String code : List.of("USD", "JPY", "KWD")) {
            Currency currency = Currency.getInstance(code);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            CatalogueFile.template(format, currency, out);
            IntakeFile file = opened(stored(folder, out.toByteArray()));
            Delivery delivery = Intake.read(file, Kind.WHOLE, Mapping.of(ColumnGuess.of(file, Kind.WHOLE)), Set.of(), currency, Progress.SILENT);
            assertThat(delivery).isInstanceOfSatisfying(Delivery.Read.class, read -> {
                assertThat(read.faults()).isEmpty();
                assertThat(read.products()).hasSize(2);
            });
        }
    }
}
