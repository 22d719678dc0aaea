package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.CatalogueRows;
import boughwright.intake.ColumnGuess.Sureness;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnGuessTest {

    @TempDir
    Path folder;

    private ColumnGuess guess(String column, String headings, String row) {
        IntakeFile file = opened(stored(folder, headings + "\n" + row + "\n"));
        return ColumnGuess.of(file, Kind.WHOLE).stream().filter(g -> g.column().equals(column)).findFirst().orElseThrow();
    }

    private ColumnGuess guess(String column, String headings) {
        return guess(column, headings, "1,2");
    }

    @Test
    void our_own_names_are_exact_whatever_their_capitals_spaces_and_hyphens() {
        for (String column : CatalogueRows.COLUMNS) {
            for (String heading : new String[] {column, column.toUpperCase(), column.replace('_', ' '), column.replace('_', '-')}) {
                assertThat(guess(column, heading + ",x9")).as(heading).isEqualTo(new ColumnGuess(column, Optional.of(heading), Sureness.EXACT,
                        column.endsWith("_mm") ? Optional.of(LengthUnit.MM) : Optional.empty()));
            }
        }
    }

    /** schema.org: Product, Offer. GS1 Web Vocabulary: gtin, brandName, regulatedProductName. */
    @ParameterizedTest
    @CsvSource({"gtin, gtin13", "gtin, gtin12", "gtin, gtin14", "sku, productID", "colour, color", "price, offers.price", "currency, priceCurrency",
        "currency, offers.priceCurrency", "stock, inventoryLevel", "stock, offers.inventoryLevel", "width_mm, width", "brand, brandName",
        "name, regulatedProductName"})
    void terms_of_schema_org_and_gs1_are_likely(String column, String heading) {
        assertThat(guess(column, heading + ",x9")).satisfies(g -> {
            assertThat(g.heading()).contains(heading);
            assertThat(g.sureness()).isEqualTo(Sureness.LIKELY);
        });
    }

    @ParameterizedTest
    @CsvSource({"sku, Item No., LIKELY", "sku, Item #, LIKELY", "gtin, EAN, LIKELY", "gtin, UPC, LIKELY", "gtin, Barcode, LIKELY",
            "name, Description, GUESS",
        "stock, Qty on Hand, LIKELY", "stock, Qty, GUESS", "shelf, Bin, LIKELY", "price, Price (USD), LIKELY", "price, Retail Price, LIKELY",
        "roles, Category, GUESS",
        "pack, Pack Size, LIKELY", "width_mm, Diameter, LIKELY", "width_mm, Size, GUESS", "length_mm, Height, GUESS", "length_mm, Depth, GUESS"})
    void words_of_the_trade_are_known(String column, String heading, Sureness sureness) {
        assertThat(guess(column, heading + ",x9")).satisfies(g -> {
            assertThat(g.heading()).contains(heading);
            assertThat(g.sureness()).isEqualTo(sureness);
        });
    }

    @ParameterizedTest
    @CsvSource({"width_mm, width (cm), CM", "width_mm, Width in, IN", "width_mm, Dia. mm, MM", "length_mm, Length [ft], FT",
            "length_mm, length_m, M"})
    void a_unit_in_a_heading_is_understood(String column, String heading, LengthUnit unit) {
        assertThat(guess(column, heading + ",x9").unit()).contains(unit);
    }

    @Test
    void a_heading_is_given_to_one_column_where_it_is_surest() {
        assertThat(guess("length_mm", "height,length").heading()).contains("length");
        assertThat(guess("sku", "id,sku").heading()).contains("sku");
        assertThat(guess("gtin", "code,sku").heading()).isEmpty();
        assertThat(guess("price", "cost,sku")).isEqualTo(new ColumnGuess("price", Optional.empty(), Sureness.NONE, Optional.empty()));
    }

    @Test
    void a_column_of_colour_words_rather_than_codes_is_the_family() {
        assertThat(guess("family", "color,x9", "Red,2").heading()).contains("color");
        assertThat(guess("colour", "color,x9", "Red,2").heading()).isEmpty();
        assertThat(guess("colour", "color,x9", "#aa0000,2").heading()).contains("color");
        assertThat(guess("colour", "color,family", "red,red").heading()).isEmpty();
        assertThat(guess("family", "color,family", "red,red").heading()).contains("family");
    }
}
