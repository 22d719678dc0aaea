package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.consultation.ConsultationFixture;
import boughwright.storage.Databases;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeepingTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 5);

    private static Keeping keeping(CounterFixture shop) {
        return new Keeping(shop.database, ConsultationFixture.interviews(shop.database, shop.settling), shop.reservations, shop.figures, shop.terms, shop.transactions,
                shop.settling, shop.clock);
    }

    /** A consultation in which a kit was proposed. */
    private static String planned(CounterFixture shop, String code, String total) {
        shop.consultation(code);
        shop.database.sql("""
                        insert into proposal (code, revision, made_at, brief, adjustments, seed, outcome, proposal, edition, language, total)
                        values (:code, 1, :at, '{}', '{}', 1, 'kit', '{}', 'winter-26', 'en', :total)""").param("code", code)
                .param("at", LocalDateTime.of(2026, 12, 5, 14, 0)).param("total", new BigDecimal(total)).update();
        shop.database.sql("insert into product_use (sku, code, what, first_at) values ('A-1', :code, 'PROPOSED', :at), ('B-2', :code, 'SWAPPED_OUT', :at)")
                .param("code", code).param("at", LocalDateTime.of(2026, 12, 5, 14, 0)).update();
        return code;
    }

    private static long rows(CounterFixture shop, String code) {
        return List.of("consultation", "proposal", "product_use", "hold", "hold_line", "reserved", "consultation_note", "plan_link", "quote", "blocked").stream()
                .mapToLong(t -> shop.database.sql("select count(*) from " + t + " where code = :code").param("code", code).query(Long.class).single()).sum();
    }

    private static void collected(CounterFixture shop, String code) {
        Pack pack = shop.pack(0, 1);
        shop.holds.hold(code, List.of(pack), Duration.ofHours(1), "Ada", code);
        shop.holds.collect(code, Map.of(pack.sku(), 1), code);
    }

    @ParameterizedTest
    @EnumSource
    void who_bought_is_remembered_400_days_others_30_and_whoever_is_held_something_as_long_as_that(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Keeping keeping = keeping(shop);
        planned(shop, "kelp-4-moss", "100");
        collected(shop, "kelp-4-moss");
        planned(shop, "oak-2-fern", "200");
        planned(shop, "lark-3-pine", "300");
        shop.holds.hold("lark-3-pine", List.of(shop.pack(1, 1)), Duration.ofDays(500), "Ada", "long");

        shop.clock.forward(Duration.ofDays(30));
        assertThat(keeping.forgetOld()).isZero();
        shop.clock.forward(Duration.ofDays(1));
        assertThat(keeping.forgetOld()).isEqualTo(1);
        assertThat(rows(shop, "oak-2-fern")).isZero();
        assertThat(rows(shop, "kelp-4-moss")).isPositive();
        shop.clock.forward(Duration.ofDays(370));
        assertThat(keeping.forgetOld()).isEqualTo(1);
        assertThat(rows(shop, "kelp-4-moss")).isZero();
        assertThat(rows(shop, "lark-3-pine")).isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void the_figures_of_a_day_are_the_same_after_its_consultations_are_forgotten(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        planned(shop, "kelp-4-moss", "100.50");
        collected(shop, "kelp-4-moss");
        planned(shop, "oak-2-fern", "200");
        shop.consultation("lark-3-pine");
        Figures before = shop.figures.of(DAY.minusDays(1), DAY.plusDays(1));
        assertThat(before.all()).isEqualTo(new Figures.Day(before.from(), 3, 2, 0, 0, 1, 1, before.all().sum()));
        assertThat(before.all().sum()).isEqualByComparingTo("100.50");
        assertThat(before.acceptance()).isEqualByComparingTo("50.0");
        assertThat(before.meanTotal(2)).isEqualByComparingTo("100.50");
        assertThat(before.products()).contains(new Figures.Use("A-1", 2, 0, 0, 0), new Figures.Use("B-2", 0, 0, 2, 0));

        shop.clock.forward(Duration.ofDays(600));
        assertThat(keeping(shop).forgetOld()).isEqualTo(3);

        Figures after = shop.figures.of(before.from(), before.to());
        assertThat(after.products()).isEqualTo(before.products());
        assertThat(after.all().sum()).isEqualByComparingTo(before.all().sum());
        assertThat(after.days()).usingRecursiveComparison().withComparatorForType(BigDecimal::compareTo, BigDecimal.class).isEqualTo(before.days());
    }

    @ParameterizedTest
    @EnumSource
    void a_customer_who_asks_is_given_everything_and_then_erased_with_what_was_held(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Keeping keeping = keeping(shop);
        planned(shop, "kelp-4-moss", "100");
        Pack pack = shop.pack(0, 3);
        shop.holds.hold("kelp-4-moss", List.of(pack), Duration.ofHours(1), "Ada", "tap");
        shop.database.sql("insert into consultation_note (code, number, made_at, author, words) values ('kelp-4-moss', 1, :at, 'Ada', 'likes berries')")
                .param("at", LocalDateTime.of(2026, 12, 5, 14, 0)).update();
        new Links(shop.database, shop.terms, shop.settling, shop.clock).of("kelp-4-moss");

        String export = keeping.export("Kelp 4 Moss").orElseThrow();
        assertThat(export).contains("likes berries", pack.sku(), "\"total\"").doesNotContain("\"token\"");

        assertThat(keeping.erase("KELP 4 MOSS")).isTrue();
        assertThat(keeping.erase("kelp-4-moss")).isFalse();
        assertThat(rows(shop, "kelp-4-moss")).isZero();
        assertThat(shop.held(pack)).isZero();
        assertThat(keeping.export("kelp-4-moss")).isEmpty();
    }

    /** So that a table that is added with codes in it is not forgotten here: every column called "code" of the database is in the list of what is erased. */
    @ParameterizedTest
    @EnumSource
    void no_table_with_a_code_in_it_is_left_out(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        List<String> tables = shop.database.sql("select lower(table_name) from information_schema.columns where lower(column_name) = 'code' and lower(table_schema) = 'public'")
                .query(String.class).list();
        assertThat(Keeping.TABLES).containsAll(tables);
    }
}
