package boughwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfDiffTest {

    private final List<Product> season = IntakeFixture.season();

    /** The product with some canonical cells replaced: column, cell, column, cell … */
    private static Product with(Product product, String... changes) {
        List<String> cells = new ArrayList<>(CatalogueRows.cells(product));
        for (int i = 0; i < changes.length; i += 2) {
            cells.set(CatalogueRows.COLUMNS.indexOf(changes[i]), changes[i + 1]);
        }
        return new CatalogueRows(IntakeFixture.LOOKS, IntakeFixture.USD).product(1, CatalogueRows.COLUMNS, cells.toArray(String[]::new),
                new ArrayList<>()).orElseThrow();
    }

    @Test
    void a_shelf_is_the_same_as_itself_in_any_order() {
        List<Product> shuffled = new ArrayList<>(season);
        Collections.shuffle(shuffled, new Random(3));
        assertThat(ShelfDiff.between(season, shuffled)).isEqualTo(new ShelfDiff(List.of(), List.of(), List.of(), season.size()));
        assertThat(ShelfDiff.between(season, shuffled).same()).isTrue();
    }

    @Test
    void what_is_new_changed_and_gone_is_told_by_sku_with_each_cell_that_differs() {
        Product first = season.get(0);
        Product changed = with(season.get(5), "stock", "3", "brand", "Larkspur", "shelf", "Z9-1");
        Product added = with(first, "sku", "AA-1");
        List<Product> after = new ArrayList<>(season);
        after.set(5, changed);
        after.remove(0);
        after.add(added);
        Collections.reverse(after);

        ShelfDiff diff = ShelfDiff.between(season, after);

        assertThat(diff.added()).containsExactly(added);
        assertThat(diff.gone()).containsExactly(first);
        assertThat(diff.unchanged()).isEqualTo(season.size() - 2);
        assertThat(diff.same()).isFalse();
        assertThat(diff.changed()).singleElement().satisfies(change -> {
            assertThat(change.sku()).isEqualTo(season.get(5).sku());
            assertThat(change.cells()).extracting(ShelfChange.Cell::column, ShelfChange.Cell::before, ShelfChange.Cell::after).containsExactly(
                    tuple("stock", String.valueOf(season.get(5).stock()), "3"), tuple("shelf", season.get(5).shelf(), "Z9-1"),
                    tuple("brand", "", "Larkspur"));
        });
        assertThat(ShelfDiff.between(after, season).added()).containsExactly(first);
    }

    @Test
    void lists_are_in_the_order_of_the_skus() {
        ShelfDiff diff = ShelfDiff.between(List.of(), IntakeFixture.season());
        assertThat(diff.added()).extracting(Product::sku).isSorted().hasSize(season.size());
        List<Product> dearer = season.stream().map(p -> with(p, "price", "999.00")).toList();
        assertThat(ShelfDiff.between(season, dearer).priceMoves()).extracting(ShelfChange.PriceMove::sku).isSorted().hasSize(season.size());
    }

    @ParameterizedTest
    @CsvSource({"10.00, 12.01, 20.1", "10.00, 7.99, -20.1", "10.00, 20.00, 100.0", "0.10, 0.13, 30.0", "3.00, 1.00, -66.7"})
    void a_price_that_moves_by_more_than_a_fifth_is_told_with_both_prices(String before, String after, BigDecimal percent) {
        Product was = with(season.get(0), "price", before);
        assertThat(ShelfDiff.between(List.of(was), List.of(with(was, "price", after))).priceMoves()).singleElement().satisfies(move -> {
            assertThat(move.before().decimal()).isEqualTo(before);
            assertThat(move.after().decimal()).isEqualTo(after);
            assertThat(move.percent()).isEqualTo(percent);
            assertThat(move.name()).isEqualTo(was.name());
        });
    }

    @ParameterizedTest
    @CsvSource({"10.00, 12.00", "10.00, 8.00", "10.00, 10.00"})
    void a_price_that_moves_by_a_fifth_or_less_is_a_change_like_any_other(String before, String after) {
        Product was = with(season.get(0), "price", before);
        assertThat(ShelfDiff.between(List.of(was), List.of(with(was, "price", after))).priceMoves()).isEmpty();
    }

    @Test
    void two_products_of_one_sku_are_a_defect() {
        assertThatThrownBy(() -> ShelfDiff.between(List.of(season.get(0), season.get(0)), List.of())).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(season.get(0).sku());
    }
}
