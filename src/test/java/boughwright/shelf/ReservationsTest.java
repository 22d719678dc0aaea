package boughwright.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.CatalogueFixture;
import boughwright.storage.Databases;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

class ReservationsTest {

    private ShelfFixture shop;
    private TransactionTemplate transaction;
    private String sku;
    private int stock;

    /** What the shelf is kept in. */
    Databases databases() {
        return Databases.H2;
    }

    @BeforeEach
    void open() throws Exception {
        shop = ShelfFixture.empty(databases());
        shop.openWith(CatalogueFixture.LOOKS);
        transaction = new TransactionTemplate(new DataSourceTransactionManager(shop.source));
        sku = shop.shelf.onSale().stream().filter(p -> p.stock() > 20).findFirst().orElseThrow().sku();
        stock = onHand();
    }

    private int onHand() {
        return Integer.parseInt(shop.shelf.cells(sku).get("stock"));
    }

    private SortedMap<String, Integer> take(String code, int packs) {
        return transaction.execute(status -> {
            SortedMap<String, Integer> scarce = shop.reservations.take(code, packs(packs));
            if (!scarce.isEmpty()) {
                status.setRollbackOnly();
            }
            return scarce;
        });
    }

    private SortedMap<String, Integer> packs(int count) {
        return new TreeMap<>(Map.of(sku, count));
    }

    private int canBeHad() {
        return shop.shelf.catalogue().product(sku).orElseThrow().stock();
    }

    @Test
    void what_one_was_promised_no_other_can_have() {
        assertThat(take("kelp-4-moss", stock - 3)).isEmpty();
        assertThat(take("oak-2-fern", 4)).containsExactly(Map.entry(sku, 3));
        assertThat(take("oak-2-fern", 3)).isEmpty();
        assertThat(canBeHad()).isZero();
        assertThat(shop.reservations.of("oak-2-fern")).containsExactly(Map.entry(sku, 3));
    }

    @Test
    void who_was_promised_something_still_finds_it_on_the_shelf() {
        take("kelp-4-moss", 5);
        assertThat(canBeHad()).isEqualTo(stock - 5);
        assertThat(shop.shelf.catalogue(shop.reservations.of("kelp-4-moss")).product(sku).orElseThrow().stock()).isEqualTo(stock);
        assertThat(onHand()).isEqualTo(stock);
    }

    @Test
    void a_promise_that_is_taken_back_with_its_transaction_leaves_no_trace() {
        SortedMap<String, Integer> both = packs(2);
        both.put("ZZ-NOT-SOLD", 1);
        SortedMap<String, Integer> scarce = transaction.execute(status -> {
            SortedMap<String, Integer> found = shop.reservations.take("kelp-4-moss", both);
            status.setRollbackOnly();
            return found;
        });
        assertThat(scarce).containsExactly(Map.entry("ZZ-NOT-SOLD", 0));
        assertThat(shop.reservations.of("kelp-4-moss")).isEmpty();
        assertThat(canBeHad()).isEqualTo(stock);
    }

    @Test
    void what_is_given_back_can_be_had_again_and_not_more_than_was_promised() {
        take("kelp-4-moss", 5);
        transaction.executeWithoutResult(status -> shop.reservations.giveBack("kelp-4-moss", packs(2)));
        assertThat(canBeHad()).isEqualTo(stock - 3);
        transaction.executeWithoutResult(status -> shop.reservations.giveBack("kelp-4-moss", packs(99)));
        assertThat(canBeHad()).isEqualTo(stock);
        assertThat(new JdbcTemplate(shop.source).queryForObject("select held from stock where sku = ?", Integer.class, sku)).isZero();
    }

    @Test
    void what_is_handed_over_leaves_the_shelf_and_the_book_says_so() {
        take("kelp-4-moss", 5);
        transaction.executeWithoutResult(status -> shop.reservations.handOver("kelp-4-moss", packs(4)));
        assertThat(onHand()).isEqualTo(stock - 4);
        assertThat(canBeHad()).isEqualTo(stock - 5);
        assertThat(shop.shelf.events(1)).singleElement().satisfies(e -> assertThat(e.kind()).isEqualTo(ShelfEvent.Kind.COUNTER));
    }

    @Test
    void a_count_below_what_is_promised_leaves_nothing_to_promise_and_breaks_no_promise() {
        take("kelp-4-moss", 5);
        shop.shelf.edit(sku, "stock", "3", ShelfFixture.AUTHOR);
        assertThat(canBeHad()).isZero();
        assertThat(take("oak-2-fern", 1)).containsExactly(Map.entry(sku, 0));
        assertThat(shop.reservations.of("kelp-4-moss")).containsExactly(Map.entry(sku, 5));
    }
}
