package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.storage.Databases;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DeedsTest {

    @ParameterizedTest
    @EnumSource
    void of_many_who_come_with_one_key_at_once_one_does_the_work_and_all_have_its_answer(Databases databases) throws Exception {
        CounterFixture shop = new CounterFixture(databases);
        ExecutorService hands = Executors.newFixedThreadPool(8);
        CountDownLatch start = new CountDownLatch(1);
        AtomicInteger committed = new AtomicInteger();
        List<Future<Deeds.Done>> answers = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            String mine = "answer " + i;
            answers.add(hands.submit(() -> {
                start.await();
                return shop.deeds.once("tap", () -> mine);
            }));
        }
        start.countDown();
        List<String> said = new ArrayList<>();
        for (Future<Deeds.Done> answer : answers) {
            said.add(answer.get().answer());
            committed.addAndGet(answer.get().again() ? 0 : 1);
        }
        hands.shutdown();
        assertThat(committed).hasValue(1);
        assertThat(said.stream().distinct()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource
    void work_that_fails_leaves_its_key_free(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        assertThatThrownBy(() -> shop.deeds.once("tap", () -> {
            throw new IllegalStateException("no");
        })).hasMessage("no");
        assertThat(shop.deeds.once("tap", () -> "yes")).isEqualTo(new Deeds.Done("yes", false));
        assertThat(shop.deeds.once("tap", () -> "other")).isEqualTo(new Deeds.Done("yes", true));
    }

    @ParameterizedTest
    @EnumSource
    void a_key_is_remembered_for_a_week(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        shop.deeds.once("tap", () -> "first");
        shop.clock.forward(java.time.Duration.ofDays(6));
        shop.deeds.forgetOld();
        assertThat(shop.deeds.once("tap", () -> "second").answer()).isEqualTo("first");
        shop.clock.forward(java.time.Duration.ofDays(2));
        shop.deeds.forgetOld();
        assertThat(shop.deeds.once("tap", () -> "third").answer()).isEqualTo("third");
    }
}
