package boughwright.catalogue;

import static boughwright.catalogue.CatalogueFixture.HEADER;
import static boughwright.catalogue.CatalogueFixture.ball;
import static boughwright.catalogue.CatalogueFixture.faults;
import static boughwright.catalogue.CatalogueFixture.file;
import static boughwright.catalogue.CatalogueFixture.products;
import static boughwright.catalogue.CatalogueFixture.ribbon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.io.Reader;
import org.junit.jupiter.api.Test;

/** The file as a whole: RFC 4180 (from memory) and what spreadsheets make of it. */
class CatalogueFileTest {

    @Test
    void a_byte_order_mark_and_either_line_ending_do_no_harm() {
        String plain = file(ball(), ribbon());
        assertThat(products("\uFEFF" + plain)).isEqualTo(products(plain)).hasSize(2);
        assertThat(products("\uFEFF" + plain.replace("\n", "\r\n"))).isEqualTo(products(plain));
        assertThat(products(plain.stripTrailing())).isEqualTo(products(plain));
    }

    @Test
    void columns_may_stand_in_any_order() {
        String swapped = "gtin,sku" + HEADER.substring("sku,gtin".length());
        assertThat(products(swapped + "\n6291041500213,BL-1" + ball().substring("BL-1,6291041500213".length()) + "\n")).isEqualTo(products(file(ball())));
    }

    @Test
    void an_empty_file_is_told_with_the_header_to_write() {
        for (String nothing : new String[] {"", "\n", "\r\n\r\n"}) {
            assertThat(faults(nothing)).singleElement().satisfies(fault -> assertThat(fault.mend()).contains(HEADER));
        }
    }

    @Test
    void a_header_without_products_is_a_fault_for_such_a_shop_could_serve_nobody() {
        assertThat(faults(HEADER)).singleElement().satisfies(fault -> assertThat(fault.mend()).contains("no product"));
    }

    @Test
    void a_column_that_is_missing_misspelt_or_there_twice_is_told_before_any_row() {
        assertThat(faults(HEADER.replace(",stock", "") + "\n" + ball("family", "slver"))).extracting(CatalogueFault::line, CatalogueFault::column)
                .containsExactly(tuple(1, "stock"));
        assertThat(faults(HEADER.replace(",stock", ",stck"))).extracting(CatalogueFault::column).containsExactly("stock", "stck");
        assertThat(faults(HEADER + ",stock\n")).isNotEmpty().allSatisfy(fault -> {
            assertThat(fault.column()).isEqualTo("stock");
            assertThat(fault.mend()).contains("twice");
        });
    }

    @Test
    void commas_quotes_and_line_breaks_within_quotes_belong_to_the_cell() {
        assertThat(products(file(ball("name", "\"Bauble, 2\"\" wide,\nsatin\"")))).extracting(Product::name).containsExactly("Bauble, 2\" wide,\nsatin");
    }

    @Test
    void line_breaks_within_quotes_keep_later_line_numbers_right() {
        String csv = file(ball("name", "\"Bauble,\n\nsatin\""), ribbon("family", "bron"));
        assertThat(faults(csv)).extracting(CatalogueFault::line, CatalogueFault::column).containsExactly(tuple(5, "family"));
        assertThat(faults(csv.replace("\n", "\r\n"))).extracting(CatalogueFault::line).containsExactly(5);
    }

    @Test
    void short_and_long_rows_are_told_and_never_filled_with_nothing() {
        assertThat(faults(file("BL-1,6291041500213,Silver bauble", ball() + ",spare"))).extracting(CatalogueFault::line, CatalogueFault::column, CatalogueFault::value)
                .containsExactly(tuple(2, "", ""), tuple(3, "", ""));
    }

    @Test
    void one_fault_keeps_the_whole_file_out() {
        assertThat(CatalogueFixture.read(file(ball(), ribbon("price", "free")))).isInstanceOf(CatalogueReading.Faulty.class);
    }

    @Test
    void a_file_of_nothing_but_faults_is_given_up_after_some_hundreds() {
        String[] rows = new String[5_000];
        java.util.Arrays.fill(rows, "x");
        assertThat(faults(file(rows))).hasSizeBetween(200, 300);
    }

    @Test
    void a_broken_stream_is_no_fault_of_the_file() {
        Reader broken = new Reader() {
            @Override
            public int read(char[] into, int from, int count) throws IOException {
                throw new IOException("the disk is gone");
            }

            @Override
            public void close() {
            }
        };
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new CatalogueReader(CatalogueFixture.LOOKS, CatalogueFixture.USD).read(broken))
                .isInstanceOf(IOException.class).hasMessageContaining("the disk is gone");
    }
}
