package boughwright.catalogue;

import static boughwright.catalogue.CatalogueFixture.HEADER;
import static boughwright.catalogue.CatalogueFixture.ball;
import static boughwright.catalogue.CatalogueFixture.faults;
import static boughwright.catalogue.CatalogueFixture.file;
import static boughwright.catalogue.CatalogueFixture.products;
import static boughwright.catalogue.CatalogueFixture.ribbon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;

class CatalogueFaultPlacesTest {

    @Test
    void a_quote_that_never_closes_is_told_with_the_line_and_column_where_it_opens() {
        List<CatalogueFault> faults = faults(CatalogueFixture.sample("broken.csv"));
        assertThat(faults.get(faults.size() - 1)).extracting(CatalogueFault::line, CatalogueFault::column).containsExactly(38, "name");
    }

    @Test
    void a_quote_that_never_closes_is_told_where_it_opens_however_many_good_lines_follow() {
        String[] rows = {ribbon(), ball("name", "\"Silver bauble"), ball("sku", "BL-2")};
        assertThat(faults(file(rows))).extracting(CatalogueFault::line).containsExactly(3);
    }

    @Test
    void empty_lines_keep_later_line_numbers_right() {
        assertThat(faults(HEADER + "\n\n\n" + ball("family", "slver") + "\n")).extracting(CatalogueFault::line).containsExactly(4);
        assertThat(faults(HEADER + "\r\n" + ball() + "\r\n\r\n" + ribbon("family", "bron") + "\r\n")).extracting(CatalogueFault::line).containsExactly(4);
    }

    @Test
    void another_fault_in_a_row_does_not_hide_that_its_sku_is_used_twice() {
        assertThat(faults(file(ball(), ribbon("sku", "BL-1", "price", "free")))).extracting(CatalogueFault::line, CatalogueFault::column)
                .containsExactlyInAnyOrder(tuple(3, "sku"), tuple(3, "price"));
        assertThat(faults(file(ball("price", "free"), ribbon("sku", "BL-1")))).extracting(CatalogueFault::line, CatalogueFault::column)
                .containsExactlyInAnyOrder(tuple(2, "price"), tuple(3, "sku"));
    }

    @Test
    void another_fault_in_a_row_does_not_hide_that_it_names_no_role() {
        assertThat(faults(file(ball("gtin", "6291041500214", "roles", "")))).extracting(CatalogueFault::column).containsExactlyInAnyOrder("gtin", "roles");
    }

    @Test
    void a_byte_order_mark_before_a_quoted_heading_does_no_harm() {
        assertThat(products("\uFEFF\"sku\"" + HEADER.substring("sku".length()) + "\n" + ball())).hasSize(1);
    }

    @Test
    void a_cell_that_a_product_of_this_kind_does_not_use_is_not_filled_with_anything_at_all() {
        assertThat(faults(file(ball("pattern", "zigzag", "bulbs", "many")))).extracting(CatalogueFault::column).containsExactly("pattern", "bulbs");
    }
}
