package boughwright.publishing;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.house.HouseRules;
import boughwright.house.ReferenceBrief;
import boughwright.storage.Changes;
import boughwright.storage.Databases;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The house rules of one shop as two kiosks on one database keep them. */
class TwoHousesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private record House(Editions editions, Drafts drafts, References references) {

        static House of(DataSource source) {
            // A clock that stands still: nothing may hang on it.
            Clock clock = Clock.fixed(DAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
            JdbcClient database = JdbcClient.create(source);
            Transactions transactions = new Transactions(new TransactionTemplate(new DataSourceTransactionManager(source)));
            Settling settling = new Settling(database, source);
            Editions editions = new Editions(database, transactions, new Changes(database), settling, clock);
            return new House(editions, new Drafts(database, transactions, settling, clock), new References(database, editions));
        }

        Optional<Integer> keep(String title) {
            return editions.keep(new KeptEdition(0, editions.freeId(title), title, "A note", "Ada", KeptEdition.Origin.STAFF, Optional.empty(), null,
                    new TreeMap<>(java.util.Map.of("sizing/a.dmn", "<a/>")), ""), Optional.of(DAY), "changes");
        }
    }

    @ParameterizedTest
    @EnumSource
    void editions_kept_on_both_at_once_get_numbers_of_their_own(Databases databases) {
        DataSource source = databases.fresh();
        House here = House.of(source);
        House there = House.of(source);
        CompletableFuture<List<Integer>> other = CompletableFuture.supplyAsync(
                () -> IntStream.range(0, 15).mapToObj(i -> there.keep("There " + i).orElseThrow()).toList());
        List<Integer> numbers = new ArrayList<>(IntStream.range(0, 15).mapToObj(i -> here.keep("Here " + i).orElseThrow()).toList());
        numbers.addAll(other.join());

        assertThat(numbers).containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, 30).boxed().toList());
        assertThat(here.editions.all()).hasSize(30).isEqualTo(there.editions.all());
        assertThat(here.editions.history(99)).hasSize(60);
        assertThat(here.editions.live(DAY).map(Publication::edition)).contains(30);
    }

    @ParameterizedTest
    @EnumSource
    void two_that_take_the_same_title_at_once_do_not_both_get_it(Databases databases) {
        DataSource source = databases.fresh();
        House here = House.of(source);
        House there = House.of(source);
        CompletableFuture<Optional<Integer>> other = CompletableFuture.supplyAsync(() -> there.keep("Winter"));
        Optional<Integer> mine = here.keep("Winter");

        assertThat(List.of(mine, other.join())).containsExactlyInAnyOrder(Optional.of(1), Optional.empty());
    }

    @ParameterizedTest
    @EnumSource
    void an_edition_comes_back_goes_and_is_told(Databases databases) {
        House house = House.of(databases.fresh());
        int first = house.keep("First").orElseThrow();
        int second = house.keep("Second").orElseThrow();
        house.editions.rollBack(first, "Ben");
        assertThat(house.editions.live(DAY).map(Publication::edition)).contains(first);

        int third = house.editions.keep(new KeptEdition(0, "third", "Third", "", "Ada", KeptEdition.Origin.STAFF, Optional.of(second), null,
                new TreeMap<>(), "why"), Optional.of(DAY.plusDays(3)), "").orElseThrow();
        assertThat(house.editions.edition(third)).hasValueSatisfying(e -> assertThat(e.basedOn()).contains(second));
        Publication toCome = house.editions.toCome(DAY).get(0);
        house.editions.withdraw(toCome.id(), "Ben");
        assertThat(house.editions.toCome(DAY)).isEmpty();
        assertThat(house.editions.history(1)).singleElement().satisfies(e -> {
            assertThat(e.kind()).isEqualTo(HouseEvent.Kind.WITHDRAWN);
            assertThat(e.edition()).contains(third);
        });
        house.references.add(new ReferenceBrief("Tall", "{}", new TreeMap<>(java.util.Map.of("a", 1))), "Ada");
        house.references.add(new ReferenceBrief("Small", "{}", new TreeMap<>()), "Ada");
        house.references.remove(1, "Ada");
        assertThat(house.references.own()).extracting(References.Own::id).containsExactly(2);
    }

    @ParameterizedTest
    @EnumSource
    void a_draft_is_kept_only_in_the_place_of_the_one_that_was_changed(Databases databases) {
        DataSource source = databases.fresh();
        Drafts here = House.of(source).drafts;
        Drafts there = House.of(source).drafts;
        HouseRules rules = rules();
        String first = here.keep(1, rules, "Ada", Optional.empty()).orElseThrow();

        assertThat(there.keep(1, rules, "Ben", Optional.empty())).as("begun elsewhere").isEmpty();
        String second = there.keep(1, rules, "Ben", Optional.of(first)).orElseThrow();
        assertThat(second).isNotEqualTo(first);
        String third = there.keep(1, rules, "Ben", Optional.of(second)).orElseThrow();
        assertThat(third).as("the clock stands still").isNotEqualTo(second);
        assertThat(here.keep(1, rules, "Ada", Optional.of(first))).isEmpty();
        assertThat(here.discard(first)).isFalse();
        assertThat(here.open()).hasValueSatisfying(d -> {
            assertThat(d.author()).isEqualTo("Ben");
            assertThat(d.mark()).isEqualTo(third);
            assertThat(d.rules()).isEqualTo(rules);
        });
        assertThat(here.discard(third)).isTrue();
        assertThat(there.open()).isEmpty();
        assertThat(there.keep(1, rules, "Ben", Optional.of(third))).as("thrown away elsewhere").isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void of_two_that_begin_a_draft_at_once_one_is_told(Databases databases) {
        DataSource source = databases.fresh();
        HouseRules rules = rules();
        House here = House.of(source);
        House there = House.of(source);
        CompletableFuture<Optional<String>> other = CompletableFuture.supplyAsync(() -> there.drafts.keep(1, rules, "Ben", Optional.empty()));
        Optional<String> mine = here.drafts.keep(1, rules, "Ada", Optional.empty());

        assertThat(List.of(mine, other.join())).filteredOn(Optional::isPresent).hasSize(1);
    }

    private static HouseRules rules() {
        return boughwright.house.HouseFixture.shipped();
    }
}
