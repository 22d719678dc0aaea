package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.storage.Databases;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HoldsTest {

    private static final Duration DAY = Duration.ofDays(1);

    private int keys;

    private String key() {
        return "key-" + keys++;
    }

    private Hold held(CounterFixture shop, String code, Pack... packs) {
        return ((Holding.Held) shop.holds.hold(code, List.of(packs), DAY, "Ada", key())).hold();
    }

    @ParameterizedTest
    @EnumSource
    void what_is_held_for_one_customer_is_not_held_for_another(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Pack all = shop.pack(0, shop.onHand(shop.pack(0, 1)));
        Pack one = shop.pack(0, 1);
        held(shop, shop.consultation("kelp-4-moss"), all);

        Holding second = shop.holds.hold(shop.consultation("oak-2-fern"), List.of(shop.pack(1, 2), one), DAY, "Ben", key());

        assertThat(second).isEqualTo(new Holding.Scarce(new java.util.TreeMap<>(Map.of(one.sku(), 0))));
        assertThat(shop.held(shop.pack(1, 2))).isZero();
        assertThat(shop.holds.newest("oak-2-fern")).isEmpty();
        assertThat(shop.unbalanced()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void a_double_tap_holds_once(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Pack pack = shop.pack(0, 3);
        String code = shop.consultation("kelp-4-moss");

        Holding first = shop.holds.hold(code, List.of(pack), DAY, "Ada", "tap");
        Holding again = shop.holds.hold(code, List.of(pack), DAY, "Ada", "tap");

        assertThat(((Holding.Held) first).again()).isFalse();
        assertThat(((Holding.Held) again).again()).isTrue();
        assertThat(((Holding.Held) again).hold()).isEqualTo(((Holding.Held) first).hold());
        assertThat(shop.held(pack)).isEqualTo(3);
    }

    @ParameterizedTest
    @EnumSource
    void a_changed_plan_is_held_in_place_of_the_former_without_losing_what_it_had(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        int stock = shop.onHand(shop.pack(0, 1));
        String code = shop.consultation("kelp-4-moss");
        held(shop, code, shop.pack(0, stock), shop.pack(1, 1));
        shop.holds.pick(code, shop.pack(0, 1).sku(), stock);

        Hold second = held(shop, code, shop.pack(0, stock), shop.pack(2, 2));

        assertThat(second.number()).isEqualTo(2);
        assertThat(second.lines()).filteredOn(l -> l.sku().equals(shop.pack(0, 1).sku())).singleElement().satisfies(l -> assertThat(l.picked()).hasValue(stock));
        assertThat(shop.holds.hold(code, 1)).hasValueSatisfying(h -> assertThat(h.state()).isEqualTo(Hold.State.RELEASED));
        assertThat(shop.held(shop.pack(1, 1))).isZero();
        assertThat(shop.holds.toPutBack()).isEmpty();
        assertThat(shop.unbalanced()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void a_change_that_cannot_be_held_leaves_the_former_hold_as_it_is(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        Hold first = held(shop, code, shop.pack(0, 2));

        assertThat(shop.holds.hold(code, List.of(shop.pack(0, 2), shop.pack(1, 1_000_000)), DAY, "Ada", key())).isInstanceOf(Holding.Scarce.class);

        assertThat(shop.holds.open(code)).hasValue(first);
        assertThat(shop.held(shop.pack(0, 2))).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource
    void a_hold_falls_when_its_time_is_up_and_not_before(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        held(shop, code, shop.pack(0, 2));
        shop.clock.forward(DAY.minusMinutes(30));
        assertThat(shop.holds.lapse()).isEmpty();
        assertThat(shop.holds.endingWithin(Duration.ofHours(1))).extracting(Hold::code).containsExactly(code);
        assertThat(shop.holds.endingWithin(Duration.ofMinutes(10))).isEmpty();

        shop.clock.forward(Duration.ofMinutes(30));

        assertThat(shop.holds.lapse()).extracting(Hold::state).containsExactly(Hold.State.LAPSED);
        assertThat(shop.holds.lapse()).isEmpty();
        assertThat(shop.held(shop.pack(0, 2))).isZero();
        assertThat(shop.holds.collect(code, Map.of(shop.pack(0, 2).sku(), 2), key())).isInstanceOf(Holds.Collecting.NotHeld.class);
    }

    @ParameterizedTest
    @EnumSource
    void a_hold_that_is_extended_falls_later(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        held(shop, code, shop.pack(0, 2));
        shop.clock.forward(DAY.minusMinutes(1));
        assertThat(shop.holds.extend(code, DAY)).hasValueSatisfying(h -> assertThat(shop.holds.left(h)).isEqualTo(DAY));
        shop.clock.forward(Duration.ofMinutes(2));
        assertThat(shop.holds.lapse()).isEmpty();
        shop.clock.forward(DAY);
        assertThat(shop.holds.extend(code, DAY)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void what_is_ticked_off_fills_the_bag_and_what_is_not_found_is_neither_promised_nor_in_stock(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        Pack some = shop.pack(0, 5);
        Pack other = shop.pack(1, 1);
        int stock = shop.onHand(some);
        held(shop, code, some, other);
        assertThat(shop.holds.toPick()).extracting(Hold::code).containsExactly(code);

        assertThat(shop.holds.pick(code, other.sku(), 1)).hasValueSatisfying(h -> assertThat(h.state()).isEqualTo(Hold.State.HELD));
        Optional<Hold> ready = shop.holds.pick(code, some.sku(), 3);

        assertThat(ready).hasValueSatisfying(h -> {
            assertThat(h.state()).isEqualTo(Hold.State.READY);
            assertThat(h.someMissing()).isTrue();
        });
        assertThat(shop.onHand(some)).isEqualTo(stock - 2);
        assertThat(shop.held(some)).isEqualTo(3);
        assertThat(shop.shelf.cells(some.sku()).get("stock")).isEqualTo(String.valueOf(stock - 2));
        assertThat(shop.holds.inBags()).extracting(Hold::code).containsExactly(code);
        // The same tap again changes nothing more.
        shop.holds.pick(code, some.sku(), 3);
        assertThat(shop.onHand(some)).isEqualTo(stock - 2);
        assertThat(shop.unbalanced()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void a_slip_of_the_finger_is_unpicked(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        held(shop, code, shop.pack(0, 5));
        shop.holds.pick(code, shop.pack(0, 5).sku(), 5);
        assertThat(shop.holds.unpick(code, shop.pack(0, 5).sku())).hasValueSatisfying(h -> assertThat(h.state()).isEqualTo(Hold.State.HELD));
    }

    @ParameterizedTest
    @EnumSource
    void a_kit_is_collected_in_parts_and_each_part_once(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        Pack pack = shop.pack(0, 5);
        int stock = shop.onHand(pack);
        held(shop, code, pack);

        Holds.Collecting part = shop.holds.collect(code, Map.of(pack.sku(), 2), "part");
        Holds.Collecting again = shop.holds.collect(code, Map.of(pack.sku(), 2), "part");

        assertThat(((Holds.Collecting.Collected) part).hold().state()).isEqualTo(Hold.State.PARTLY);
        assertThat(((Holds.Collecting.Collected) again).again()).isTrue();
        assertThat(shop.onHand(pack)).isEqualTo(stock - 2);
        assertThat(shop.held(pack)).isEqualTo(3);

        Holds.Collecting rest = shop.holds.collect(code, Map.of(pack.sku(), 99), key());
        assertThat(((Holds.Collecting.Collected) rest).hold().state()).isEqualTo(Hold.State.COLLECTED);
        assertThat(shop.onHand(pack)).isEqualTo(stock - 5);
        assertThat(shop.held(pack)).isZero();
        assertThat(shop.holds.toPutBack()).isEmpty();
        assertThat(shop.unbalanced()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void what_was_picked_for_somebody_who_does_not_come_is_to_be_put_back(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        String code = shop.consultation("kelp-4-moss");
        Pack pack = shop.pack(0, 5);
        Hold hold = held(shop, code, pack, shop.pack(1, 1));
        shop.holds.pick(code, pack.sku(), 5);

        assertThat(shop.holds.release(code)).hasValueSatisfying(h -> assertThat(h.state()).isEqualTo(Hold.State.RELEASED));
        assertThat(shop.holds.release(code)).isEmpty();

        assertThat(shop.held(pack)).isZero();
        assertThat(shop.holds.toPutBack()).extracting(Hold::code).containsExactly(code);
        shop.holds.putBack(code, hold.number(), pack.sku());
        assertThat(shop.holds.toPutBack()).isEmpty();
    }

    /** Ten thousand attempts of the hundred thousand that the measurement makes; a check that is followed by an act oversells here at once. */
    @ParameterizedTest
    @EnumSource
    void many_hands_at_once_never_promise_more_than_there_is(Databases databases) throws Exception {
        CounterFixture shop = new CounterFixture(databases);
        Pack a = shop.pack(0, 1);
        Pack b = shop.pack(1, 1);
        int left = Math.min(shop.onHand(a), shop.onHand(b));
        int customers = left * 3;
        for (int i = 0; i < customers; i++) {
            shop.consultation("code-" + i);
        }
        ExecutorService hands = Executors.newFixedThreadPool(16);
        List<Future<Holding>> answers = new ArrayList<>();
        for (int i = 0; i < customers; i++) {
            // In either order, and each wish twice, as by a double tap.
            List<Pack> wanted = i % 2 == 0 ? List.of(a, b) : List.of(b, a);
            String code = "code-" + i;
            for (int tap = 0; tap < 2; tap++) {
                answers.add(hands.submit(() -> shop.holds.hold(code, wanted, DAY, "Ada", code)));
            }
        }
        long granted = 0;
        for (Future<Holding> answer : answers) {
            granted += answer.get() instanceof Holding.Held h && !h.again() ? 1 : 0;
        }
        hands.shutdown();

        assertThat(granted).isEqualTo(left);
        assertThat(shop.held(a)).isEqualTo(left);
        assertThat(shop.held(b)).isEqualTo(left);
        assertThat(shop.database.sql("select count(*) from hold").query(Integer.class).single()).isEqualTo(left);
        assertThat(shop.unbalanced()).isEmpty();
    }
}
