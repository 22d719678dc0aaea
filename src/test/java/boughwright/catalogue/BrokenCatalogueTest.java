package boughwright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

/** The sample that is broken on purpose: each fault stands in a line of its own, and every other line is good. */
class BrokenCatalogueTest {

    private static final Tuple[] EXPECTED = {
        tuple(8, "sku"), tuple(9, "sku"), tuple(10, "gtin"), tuple(11, "gtin"), tuple(12, "name"), tuple(13, "roles"), tuple(14, "family"),
        tuple(15, "colour"), tuple(16, "texture"), tuple(17, "finish"), tuple(19, "shape"), tuple(20, "width_mm"), tuple(21, "width_mm"),
        tuple(22, "length_mm"), tuple(23, "bulbs"), tuple(24, "pack"), tuple(25, "price"), tuple(26, "price"), tuple(27, "price"),
        tuple(28, "currency"), tuple(30, "level"), tuple(31, "stock"), tuple(32, "stock"), tuple(33, "shelf"), tuple(34, "looks"),
        // A row of too few or too many cells is at fault as a whole.
        tuple(35, ""), tuple(36, "")};

    private final List<CatalogueFault> faults = CatalogueFixture.faults(CatalogueFixture.sample("broken.csv"));

    @Test
    void every_fault_but_the_open_quote_is_told_with_its_line_and_column_and_nothing_else_is() {
        assertThat(faults.subList(0, faults.size() - 1)).extracting(CatalogueFault::line, CatalogueFault::column).containsExactly(EXPECTED);
    }

    @Test
    void a_quote_that_never_closes_hides_no_fault_before_it() {
        assertThat(faults).hasSize(EXPECTED.length + 1);
        assertThat(faults.get(faults.size() - 1).mend()).contains("never closes");
    }

    @Test
    void each_fault_says_what_stands_there_and_what_to_write() {
        assertThat(fault(9).value()).isEqualTo("LK-BL-0189");
        assertThat(fault(9).mend()).contains("already in line 4");
        assertThat(fault(10).mend()).contains("last digit should be 0");
        assertThat(fault(13).mend()).contains("mantel-swag").contains("filler-ball");
        assertThat(fault(14).sentence()).contains("Line 14").contains("family").contains("turquoise").contains("burgundy");
        assertThat(fault(25).value()).isEqualTo("12,50");
        assertThat(fault(27).mend()).contains("at most 2 decimals");
        assertThat(fault(28).mend()).contains("USD");
        assertThat(fault(35).mend()).contains("23 cells").contains("26");
        assertThat(fault(36).mend()).contains("27 cells");
    }

    private CatalogueFault fault(int line) {
        return faults.stream().filter(fault -> fault.line() == line).findFirst().orElseThrow();
    }
}
