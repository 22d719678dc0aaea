package boughwright.shelf;

import static boughwright.catalogue.CatalogueFixture.ball;
import static boughwright.catalogue.CatalogueFixture.lights;
import static boughwright.catalogue.CatalogueFixture.ribbon;
import static boughwright.shelf.TillTest.lines;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Catalogue;
import boughwright.storage.Databases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Two kiosks with one database. */
class TwoShelvesTest {

    private ShelfFixture here;
    private ShelfFixture there;

    private void open(Databases databases) {
        here = ShelfFixture.with(databases, ball(), ribbon());
        there = here.again(ball(), ribbon());
    }

    private static String cell(ShelfFixture shop, String sku, String column) {
        return shop.shelf.cells(sku).get(column);
    }

    @ParameterizedTest
    @EnumSource
    void a_product_changed_on_one_is_seen_on_the_other_and_told_to_its_listeners(Databases databases) {
        open(databases);
        List<Catalogue> told = new ArrayList<>();
        there.shelf.whenChanged(told::add);

        here.shelf.edit("BL-1", "price", "18.00", "Ada");
        here.shelf.takeOff(List.of("RO-1"), "Ada");
        there.changes.look();
        there.changes.look();

        assertThat(cell(there, "BL-1", "price")).isEqualTo("18.00");
        assertThat(there.shelf.sells("RO-1")).isFalse();
        assertThat(told).containsExactly(there.shelf.catalogue());
    }

    @ParameterizedTest
    @EnumSource
    void changes_to_one_product_on_both_overwrite_nothing_even_before_either_has_seen_the_other_s(Databases databases) {
        open(databases);

        here.shelf.edit("BL-1", "price", "18.00", "Ada");
        there.shelf.edit("BL-1", "name", "Red balls", "Ben");
        here.shelf.edit("BL-1", "stock", "3", "Ada");

        here.changes.look();
        there.changes.look();
        for (ShelfFixture shop : List.of(here, there)) {
            assertThat(shop.shelf.cells("BL-1")).containsEntry("price", "18.00").containsEntry("name", "Red balls").containsEntry("stock", "3");
        }
        assertThat(here.shelf.events(9)).extracting(ShelfEvent::id).doesNotHaveDuplicates().hasSize(4);
    }

    @ParameterizedTest
    @EnumSource
    void many_changes_at_once_on_both_are_all_kept(Databases databases) {
        open(databases);

        CompletableFuture<Void> others = CompletableFuture.runAsync(() -> {
            for (int i = 1; i <= 25; i++) {
                there.shelf.editAll(List.of("BL-1"), "stock", was -> String.valueOf(Integer.parseInt(was) + 1), "Ben");
            }
        });
        for (int i = 1; i <= 25; i++) {
            here.shelf.editAll(List.of("BL-1"), "stock", was -> String.valueOf(Integer.parseInt(was) + 1), "Ada");
            here.changes.look();
        }
        others.join();
        there.changes.look();
        here.changes.look();

        assertThat(cell(here, "BL-1", "stock")).isEqualTo(cell(there, "BL-1", "stock")).isEqualTo("104");
        assertThat(here.shelf.events(99)).extracting(ShelfEvent::id).doesNotHaveDuplicates().hasSize(51);
    }

    @ParameterizedTest
    @EnumSource
    void what_is_sold_on_one_is_refused_as_new_on_the_other(Databases databases) {
        open(databases);
        here.shelf.takeOff(List.of("RO-1"), "Ada");
        Map<String, String> ribbon = there.shelf.cells("RO-1");

        assertThat(there.shelf.add(ribbon, "Ben")).isInstanceOf(Shelf.Outcome.Done.class);
        assertThat(here.shelf.add(ribbon, "Ada")).isInstanceOf(Shelf.Outcome.Refused.class);
    }

    @ParameterizedTest
    @EnumSource
    void a_till_that_calls_both_with_one_mark_is_counted_once(Databases databases) {
        open(databases);
        CompletableFuture<Till.Answer> other = CompletableFuture.supplyAsync(() -> there.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5"))));
        Till.Answer mine = here.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5")));

        assertThat(List.of(mine, other.join())).containsExactlyInAnyOrder(new Till.Answer.Done(1, false), new Till.Answer.Done(1, true));
    }

    @ParameterizedTest
    @EnumSource
    void keys_photos_and_matchings_made_on_both_at_once_leave_one_of_the_two(Databases databases) {
        open(databases);
        byte[] mine = {(byte) 0xff, 0, 1, (byte) 0x80};
        byte[] other = {5, 0, (byte) 0xfe};
        CompletableFuture<String> key = CompletableFuture.supplyAsync(() -> {
            there.photos.keep("BL-1", other);
            return there.till.newKey("Ben");
        });
        here.photos.keep("BL-1", mine);
        String hers = here.till.newKey("Ada");

        String his = key.join();

        assertThat(List.of(here.till.opens(hers), here.till.opens(his))).containsExactlyInAnyOrder(true, false);
        assertThat(there.photos.of("BL-1").orElseThrow()).isIn(mine, other);
        here.photos.remove("BL-1");
        assertThat(there.photos.has("BL-1")).isFalse();
    }

    @ParameterizedTest
    @EnumSource
    void two_that_open_an_empty_shelf_at_once_stock_it_once(Databases databases) {
        here = ShelfFixture.empty(databases);
        there = here.unopened();
        CompletableFuture<Void> other = CompletableFuture.runAsync(() -> there.open(ball(), ribbon(), lights()));
        here.open(ball(), ribbon(), lights());
        other.join();

        assertThat(here.shelf.events(9)).hasSize(1);
        assertThat(here.shelf.onSale()).hasSize(3).isEqualTo(there.shelf.onSale());
    }
}
