package boughwright.shelf;

import static boughwright.catalogue.CatalogueFixture.ball;
import static boughwright.catalogue.CatalogueFixture.ribbon;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.storage.Databases;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class TillTest {

    private final ShelfFixture fixture = ShelfFixture.with(databases(), ball(), ribbon());

    /** What the shelf is kept in. */
    Databases databases() {
        return Databases.H2;
    }

    @SafeVarargs
    static SortedMap<Integer, Map<String, String>> lines(Map<String, String>... lines) {
        SortedMap<Integer, Map<String, String>> numbered = new TreeMap<>();
        for (Map<String, String> line : lines) {
            numbered.put(numbered.size() + 1, line);
        }
        return numbered;
    }

    private String cell(String sku, String column) {
        return fixture.shelf.cells(sku).get(column);
    }

    @Test
    void a_call_sets_stock_and_price_together() {
        Till.Answer answer = fixture.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5", "price", "18"), Map.of("gtin", "7300011000017", "stock", "0")));

        assertThat(answer).isEqualTo(new Till.Answer.Done(2, false));
        assertThat(cell("BL-1", "stock")).isEqualTo("5");
        assertThat(cell("BL-1", "price")).isEqualTo("18.00");
        assertThat(cell("RO-1", "stock")).isEqualTo("0");
    }

    @Test
    void the_same_call_again_is_answered_as_before_and_does_nothing_even_after_a_restart() {
        fixture.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5")));
        fixture.shelf.edit("BL-1", "stock", "4", ShelfFixture.AUTHOR);

        assertThat(fixture.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5")))).isEqualTo(new Till.Answer.Done(1, true));
        assertThat(fixture.again(ball(), ribbon()).till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5")))).isEqualTo(new Till.Answer.Done(1, true));
        assertThat(cell("BL-1", "stock")).isEqualTo("4");
    }

    @Test
    void another_call_under_the_same_mark_is_refused() {
        fixture.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5")));

        assertThat(fixture.till.put("m-1", "other", lines(Map.of("sku", "BL-1", "stock", "1")))).isInstanceOf(Till.Answer.OtherCall.class);
        assertThat(cell("BL-1", "stock")).isEqualTo("5");
    }

    @Test
    void one_bad_line_refuses_the_whole_call_and_the_mark_is_free_again() {
        Till.Answer answer = fixture.till.put("m-1", "body", lines(Map.of("sku", "BL-1", "stock", "5"), Map.of("sku", "RO-1", "stock", "-2"), Map.of("sku", "NO", "stock", "1")));

        assertThat(((Till.Answer.Refused) answer).faults()).isNotEmpty().first().satisfies(f -> assertThat(f.line()).isEqualTo(2));
        assertThat(cell("BL-1", "stock")).isEqualTo("54");
        assertThat(fixture.till.put("m-1", "mended", lines(Map.of("sku", "BL-1", "stock", "5")))).isEqualTo(new Till.Answer.Done(1, false));
    }

    @Test
    void a_line_that_says_nothing_or_names_a_product_twice_is_a_fault() {
        assertThat(fixture.till.put("m-1", "a", lines(Map.of("sku", "BL-1")))).isInstanceOf(Till.Answer.Refused.class);
        assertThat(fixture.till.put("m-2", "b", lines(Map.of("sku", "BL-1", "stock", "1"), Map.of("gtin", "6291041500213", "stock", "2"))))
                .isInstanceOf(Till.Answer.Refused.class);
    }

    @Test
    void a_price_in_another_currency_is_a_fault() {
        assertThat(fixture.till.put("m-1", "a", lines(Map.of("sku", "BL-1", "price", "9.00", "currency", "EUR")))).isInstanceOfSatisfying(Till.Answer.Refused.class,
                r -> assertThat(r.faults().get(0).column()).isEqualTo("currency"));
    }

    @Test
    void the_calls_of_a_day_are_one_event() {
        fixture.till.put("m-1", "a", lines(Map.of("sku", "BL-1", "stock", "5")));
        fixture.till.put("m-2", "b", lines(Map.of("sku", "RO-1", "stock", "5"), Map.of("sku", "BL-1", "stock", "4")));

        assertThat(fixture.shelf.events(1).get(0)).satisfies(e -> {
            assertThat(e.kind()).isEqualTo(ShelfEvent.Kind.TILL);
            assertThat(e.changed()).isEqualTo(3);
        });
        assertThat(fixture.shelf.events(5)).hasSize(2);
    }

    @Test
    void a_key_opens_until_another_is_made_or_it_is_taken_away() {
        assertThat(fixture.till.opens("")).isFalse();
        String first = fixture.till.newKey("Ada");
        assertThat(fixture.till.opens(first)).isTrue();

        String second = fixture.till.newKey("Ada");
        assertThat(fixture.till.opens(first)).isFalse();
        assertThat(fixture.again(ball(), ribbon()).till.opens(second)).isTrue();

        fixture.till.takeAway();
        assertThat(fixture.till.opens(second)).isFalse();
    }

    @Test
    void products_remember_the_consultations_they_were_in() {
        fixture.uses.note("kelp-4-moss", Map.of(Uses.Kind.PROPOSED, java.util.Set.of("BL-1", "RO-1"), Uses.Kind.CHOSEN, java.util.Set.of("RO-1")),
                java.time.LocalDateTime.of(2026, 11, 25, 12, 0));
        fixture.uses.note("kelp-4-moss", Map.of(Uses.Kind.PROPOSED, java.util.Set.of("BL-1"), Uses.Kind.SWAPPED_OUT, java.util.Set.of("RO-1")),
                java.time.LocalDateTime.of(2026, 11, 25, 12, 5));

        assertThat(fixture.uses.counts("RO-1")).isEqualTo(Map.of(Uses.Kind.PROPOSED, 1, Uses.Kind.CHOSEN, 1, Uses.Kind.SWAPPED_OUT, 1));
        assertThat(fixture.uses.counts("BL-1")).isEqualTo(Map.of(Uses.Kind.PROPOSED, 1, Uses.Kind.CHOSEN, 0, Uses.Kind.SWAPPED_OUT, 0));
        assertThat(fixture.uses.of("BL-1", 5).get(Uses.Kind.PROPOSED)).containsExactly("kelp-4-moss");
    }
}
