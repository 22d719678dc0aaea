package boughwright.shelf;

import static boughwright.catalogue.CatalogueFixture.ball;
import static boughwright.catalogue.CatalogueFixture.file;
import static boughwright.catalogue.CatalogueFixture.lights;
import static boughwright.catalogue.CatalogueFixture.ribbon;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.Product;
import boughwright.intake.Delivery;
import boughwright.intake.Kind;
import boughwright.storage.Databases;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfTest {

    private static final String AUTHOR = ShelfFixture.AUTHOR;

    @TempDir
    Path folder;

    /** What the shelf is kept in. */
    Databases databases() {
        return Databases.H2;
    }

    private static List<String> skus(Shelf shelf) {
        return shelf.onSale().stream().map(Product::sku).toList();
    }

    private static int stock(Shelf shelf, String sku) {
        return shelf.catalogue().product(sku).orElseThrow().stock();
    }

    private static String price(Shelf shelf, String sku) {
        return shelf.catalogue().product(sku).orElseThrow().price().decimal();
    }

    @Test
    void the_first_start_stocks_the_shelf_from_the_file() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());

        assertThat(skus(fixture.shelf)).containsExactly("BL-1", "RO-1");
        assertThat(fixture.shelf.undoable()).isEmpty();
    }

    @Test
    void a_faulty_file_is_told_and_nothing_of_it_is_sold() {
        ShelfFixture fixture = ShelfFixture.empty(databases());

        assertThat(fixture.open(ball("price", "free"), ribbon())).extracting(CatalogueFault::column).containsExactly("price");
        assertThat(skus(fixture.shelf)).isEmpty();
    }

    @Test
    void another_file_at_the_next_start_takes_the_place_of_a_shelf_that_nobody_has_touched() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());
        fixture.till.put("m-1", "{}", lines(Map.of("sku", "BL-1", "stock", "1")));

        assertThat(skus(fixture.again(ribbon(), lights()).shelf)).containsExactly("LT-1", "RO-1");
    }

    @Test
    void what_staff_have_made_of_the_shelf_outlives_a_restart_with_another_file() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());
        fixture.shelf.edit("BL-1", "price", "18.00", AUTHOR);

        Shelf again = fixture.again(ribbon(), lights()).shelf;

        assertThat(skus(again)).containsExactly("BL-1", "RO-1");
        assertThat(price(again, "BL-1")).isEqualTo("18.00");
    }

    @Test
    void a_restart_with_the_same_file_keeps_what_the_till_has_told() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());
        fixture.till.put("m-1", "{}", lines(Map.of("sku", "BL-1", "stock", "1")));

        assertThat(stock(fixture.again(ball(), ribbon()).shelf, "BL-1")).isEqualTo(1);
    }

    @Test
    void a_cell_with_a_fault_changes_nothing_and_is_told_as_in_a_file() {
        Shelf shelf = ShelfFixture.with(databases(), ball()).shelf;

        Shelf.Outcome outcome = shelf.edit("BL-1", "stock", "many", AUTHOR);

        assertThat(((Shelf.Outcome.Refused) outcome).faults()).singleElement().satisfies(f -> {
            assertThat(f.column()).isEqualTo("stock");
            assertThat(f.mend()).contains("whole number from 0 to");
        });
        assertThat(stock(shelf, "BL-1")).isEqualTo(54);
        assertThat(shelf.events(5)).hasSize(1);
    }

    @Test
    void who_has_a_catalogue_in_hand_keeps_it_and_who_listens_gets_the_new_one() {
        Shelf shelf = ShelfFixture.with(databases(), ball()).shelf;
        Catalogue before = shelf.catalogue();
        List<Catalogue> heard = new ArrayList<>();
        shelf.whenChanged(heard::add);

        shelf.edit("BL-1", "stock", "3", AUTHOR);

        assertThat(before.product("BL-1").orElseThrow().stock()).isEqualTo(54);
        assertThat(heard).singleElement().satisfies(c -> assertThat(c.product("BL-1").orElseThrow().stock()).isEqualTo(3));
    }

    @Test
    void many_are_changed_together_or_not_at_all() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon(), lights()).shelf;

        assertThat(shelf.editAll(List.of("BL-1", "RO-1"), "level", was -> "value", AUTHOR)).isInstanceOfSatisfying(Shelf.Outcome.Done.class,
                done -> assertThat(done.products()).isEqualTo(2));
        assertThat(shelf.editAll(List.of("BL-1", "LT-1"), "gtin", was -> "6291041500213", AUTHOR)).isInstanceOf(Shelf.Outcome.Refused.class);

        assertThat(shelf.cells("BL-1")).containsEntry("level", "value");
        assertThat(shelf.cells("LT-1")).containsEntry("gtin", "8904000210037");
    }

    @Test
    void what_is_so_already_is_no_event() {
        Shelf shelf = ShelfFixture.with(databases(), ball()).shelf;

        assertThat(shelf.edit("BL-1", "price", "17.75", AUTHOR)).isInstanceOf(Shelf.Outcome.Nothing.class);
        assertThat(shelf.events(5)).hasSize(1);
    }

    @Test
    void a_product_that_leaves_the_range_stays_known_to_those_who_own_it() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());

        fixture.shelf.takeOff(List.of("BL-1"), AUTHOR);

        for (Shelf shelf : List.of(fixture.shelf, fixture.again(ball(), ribbon()).shelf)) {
            assertThat(skus(shelf)).containsExactly("RO-1");
            assertThat(shelf.catalogue().product("BL-1")).hasValueSatisfying(p -> {
                assertThat(p.stock()).isZero();
                assertThat(shelf.catalogue().sells(p)).isFalse();
            });
        }
    }

    @Test
    void the_newest_change_is_taken_back_and_then_the_one_before_it() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon()).shelf;
        shelf.edit("BL-1", "price", "18.00", AUTHOR);
        shelf.takeOff(List.of("RO-1"), AUTHOR);

        shelf.undo(shelf.undoable().orElseThrow().id(), AUTHOR);
        assertThat(skus(shelf)).containsExactly("BL-1", "RO-1");
        assertThat(stock(shelf, "RO-1")).isEqualTo(25);
        assertThat(price(shelf, "BL-1")).isEqualTo("18.00");

        shelf.undo(shelf.undoable().orElseThrow().id(), AUTHOR);
        assertThat(price(shelf, "BL-1")).isEqualTo("17.75");
        assertThat(shelf.undoable()).isEmpty();
    }

    @Test
    void only_the_newest_change_can_be_taken_back() {
        Shelf shelf = ShelfFixture.with(databases(), ball()).shelf;
        shelf.edit("BL-1", "price", "18.00", AUTHOR);
        int older = shelf.undoable().orElseThrow().id();
        shelf.edit("BL-1", "price", "19.00", AUTHOR);

        assertThat(shelf.undo(older, AUTHOR)).isInstanceOf(Shelf.Outcome.Nothing.class);
        assertThat(price(shelf, "BL-1")).isEqualTo("19.00");
    }

    @Test
    void what_has_been_sold_since_stays_sold_when_a_file_is_taken_back() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());
        Shelf shelf = fixture.shelf;
        shelf.bring(delivery(Kind.STOCK, "sku,stock\nBL-1,100\nRO-1,7\n"), false, false, "stock.csv", AUTHOR);
        fixture.till.put("m-1", "{}", lines(Map.of("sku", "BL-1", "stock", "99")));

        shelf.undo(shelf.undoable().orElseThrow().id(), AUTHOR);

        assertThat(stock(shelf, "BL-1")).isEqualTo(99);
        assertThat(stock(shelf, "RO-1")).isEqualTo(25);
        assertThat(shelf.events(1).get(0).words()).contains("one cell");
    }

    @Test
    void a_whole_file_says_what_is_new_what_changes_and_what_goes_before_it_does_it() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon()).shelf;
        Delivery.Read read = delivery(Kind.WHOLE, file(ball("price", "19.50"), lights()));

        Shelf.Planned planned = shelf.plan(read, false);
        assertThat(skus(shelf)).containsExactly("BL-1", "RO-1");
        assertThat(planned.changes()).extracting(RowChange::sku).containsExactly("BL-1", "LT-1", "RO-1");
        assertThat(planned.changes().get(0).columns()).containsExactly("price");
        assertThat(planned.changes().get(1).comes()).isTrue();
        assertThat(planned.changes().get(2).goes()).isTrue();

        shelf.bring(read, false, false, "season.csv", AUTHOR);
        assertThat(skus(shelf)).containsExactly("BL-1", "LT-1");
        assertThat(shelf.events(1).get(0)).satisfies(e -> {
            assertThat(e.added()).isEqualTo(1);
            assertThat(e.changed()).isEqualTo(1);
            assertThat(e.gone()).isEqualTo(1);
        });
    }

    @Test
    void a_file_with_a_fault_changes_nothing_unless_the_good_rows_alone_are_chosen_and_then_faulty_products_stay() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon()).shelf;
        Delivery.Read read = delivery(Kind.WHOLE, file(ball("price", "free"), lights()));

        assertThat(shelf.bring(read, false, false, "season.csv", AUTHOR)).isInstanceOf(Shelf.Outcome.Refused.class);
        assertThat(skus(shelf)).containsExactly("BL-1", "RO-1");

        shelf.bring(read, false, true, "season.csv", AUTHOR);
        assertThat(skus(shelf)).containsExactly("BL-1", "LT-1");
        assertThat(price(shelf, "BL-1")).isEqualTo("17.75");
    }

    @Test
    void what_a_whole_file_does_not_name_stays_when_one_says_so() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon()).shelf;

        shelf.bring(delivery(Kind.WHOLE, file(lights())), true, false, "more.csv", AUTHOR);

        assertThat(skus(shelf)).containsExactly("BL-1", "LT-1", "RO-1");
    }

    @Test
    void a_gtin_of_a_product_that_stays_is_refused_in_another() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon()).shelf;
        Delivery.Read read = delivery(Kind.WHOLE, file(lights("gtin", "6291041500213")));

        assertThat(shelf.plan(read, true).faults()).singleElement().satisfies(f -> assertThat(f.mend()).contains("BL-1"));
        assertThat(shelf.plan(read, false).faults()).isEmpty();
    }

    @Test
    void stock_and_prices_are_set_by_sku_or_gtin_and_nothing_else_changes() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon()).shelf;

        shelf.bring(delivery(Kind.STOCK, "gtin,stock\n6291041500213,5\n"), false, false, "stock.csv", AUTHOR);
        shelf.bring(delivery(Kind.PRICE, "sku,price\nRO-1,9.25\n"), false, false, "prices.csv", AUTHOR);

        assertThat(shelf.cells("BL-1")).containsEntry("stock", "5").containsEntry("price", "17.75");
        assertThat(shelf.cells("RO-1")).containsEntry("stock", "25").containsEntry("price", "9.25");
        assertThat(skus(shelf)).hasSize(2);
    }

    @Test
    void stock_of_a_product_that_nobody_sells_is_a_fault_of_its_line() {
        Shelf shelf = ShelfFixture.with(databases(), ball()).shelf;
        Delivery.Read read = delivery(Kind.STOCK, "sku,stock\nBL-1,5\nXX-9,5\n");

        assertThat(shelf.plan(read, false).faults()).singleElement().satisfies(f -> assertThat(f.line()).isEqualTo(3));
        assertThat(shelf.bring(read, false, false, "stock.csv", AUTHOR)).isInstanceOf(Shelf.Outcome.Refused.class);
        assertThat(stock(shelf, "BL-1")).isEqualTo(54);
    }

    @Test
    void prices_that_move_by_more_than_a_fifth_are_told() {
        Shelf shelf = ShelfFixture.with(databases(), ball(), ribbon("price", "10.00"), lights()).shelf;

        List<PriceMove> moves = PriceMove.in(shelf.plan(delivery(Kind.PRICE, "sku,price\nBL-1,177.50\nRO-1,12.00\nLT-1,9.99\n"), false).changes());

        assertThat(moves).extracting(PriceMove::sku, PriceMove::percent).containsExactly(
                org.assertj.core.groups.Tuple.tuple("BL-1", 900), org.assertj.core.groups.Tuple.tuple("LT-1", -20));
    }

    @Test
    void a_row_that_can_be_read_no_more_is_kept_and_not_sold() {
        ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());
        new org.springframework.jdbc.core.JdbcTemplate(fixture.source).update("update product set cells = replace(cells, 'satin', 'soapy') where sku = 'BL-1'");

        ShelfFixture again = fixture.again(ball(), ribbon());

        assertThat(skus(again.shelf)).containsExactly("RO-1");
    }

    private Delivery.Read delivery(Kind kind, String text) {
        return ShelfFixture.delivery(folder, kind, text);
    }

    @SafeVarargs
    private static java.util.SortedMap<Integer, Map<String, String>> lines(Map<String, String>... lines) {
        return TillTest.lines(lines);
    }
}
