package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.season;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import boughwright.catalogue.Product;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfUpdateTest {

    @TempDir
    Path folder;

    private final Product first = season().get(0);
    private final Product second = season().get(1);

    private ShelfUpdate update(Kind kind, String csv) {
        IntakeFile file = opened(stored(folder, csv));
        Mapping mapping = Mapping.of(ColumnGuess.of(file, kind));
        return ShelfUpdate.of(file, mapping, read(file, kind, mapping), season());
    }

    @Test
    void stock_by_sku_or_by_gtin_changes_that_and_nothing_else() {
        ShelfUpdate update = update(Kind.STOCK, "item no,ean,on hand\n" + first.sku() + ",,7\n,0" + second.gtin() + ",8\n");
        assertThat(update.unknown()).isEmpty();
        ShelfDiff diff = ShelfDiff.between(season(), update.after());
        assertThat(diff.changed()).extracting(ShelfChange::sku).containsExactly(first.sku(), second.sku());
        assertThat(diff.changed()).flatExtracting(ShelfChange::cells).extracting(ShelfChange.Cell::column, ShelfChange.Cell::after)
                .containsExactly(tuple("stock", "7"), tuple("stock", "8"));
        assertThat(diff.unchanged()).isEqualTo(season().size() - 2);
    }

    @Test
    void prices_change_prices() {
        ShelfUpdate update = update(Kind.PRICE, "sku,price\n" + first.sku() + ",$1234.00\n");
        assertThat(ShelfDiff.between(season(), update.after()).priceMoves()).extracting(ShelfChange.PriceMove::sku).containsExactly(first.sku());
    }

    @Test
    void a_row_that_names_no_product_of_the_shelf_or_two_changes_nothing_and_is_told_with_its_heading() {
        ShelfUpdate update = update(Kind.STOCK, "item no,ean,on hand\nXX-1,,7\n,6291041500213,8\n" + first.sku() + "," + second.gtin() + ",9\n");
        assertThat(update.after()).isEqualTo(season());
        assertThat(update.unknown()).extracting(IntakeFault::place, IntakeFault::heading, IntakeFault::value)
                .containsExactly(tuple("Line 2", "item no", "XX-1"), tuple("Line 3", "ean", "6291041500213"), tuple("Line 4", "ean", second.gtin()));
        assertThat(update.unknown().get(2).mend()).contains(first.gtin());
    }

    @Test
    void a_whole_file_is_the_shelf() {
        IntakeFile file = opened(Path.of("catalogue-samples/small.csv"));
        Mapping mapping = Mapping.of(ColumnGuess.of(file, Kind.WHOLE));
        Delivery.Read read = read(file, Kind.WHOLE, mapping);
        assertThat(ShelfUpdate.of(file, mapping, read, season())).isEqualTo(new ShelfUpdate(read.products().stream()
                .sorted(java.util.Comparator.comparing(Product::sku)).toList(), List.of()));
    }
}
