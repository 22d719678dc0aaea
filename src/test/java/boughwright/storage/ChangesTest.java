package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ChangesTest {

    private final TwoKiosks kiosks = TwoKiosks.inMemory();
    private final AtomicInteger told = new AtomicInteger();

    private void bumped(Changes by) {
        kiosks.transactions().run(() -> by.bump("shelf"));
    }

    @Test
    void what_another_kiosk_changed_is_told_once_and_only_to_those_of_the_topic() {
        AtomicInteger other = new AtomicInteger();
        kiosks.here().whenChanged("shelf", told::incrementAndGet);
        kiosks.here().whenChanged("editions", other::incrementAndGet);

        bumped(kiosks.there());
        bumped(kiosks.there());
        kiosks.here().look();
        kiosks.here().look();

        assertThat(told).hasValue(1);
        assertThat(other).hasValue(0);
    }

    @Test
    void what_this_kiosk_changed_itself_is_not_told() {
        kiosks.here().whenChanged("shelf", told::incrementAndGet);

        bumped(kiosks.here());
        kiosks.here().look();
        kiosks.here().look();

        assertThat(told).hasValue(0);
    }

    @Test
    void another_s_change_among_own_ones_is_told() {
        kiosks.here().whenChanged("shelf", told::incrementAndGet);

        bumped(kiosks.here());
        bumped(kiosks.there());
        bumped(kiosks.here());
        bumped(kiosks.here());
        kiosks.here().look();
        kiosks.here().look();
        bumped(kiosks.here());
        kiosks.here().look();

        assertThat(told).hasValue(1);
    }

    @Test
    void what_was_changed_before_the_start_is_not_told() {
        bumped(kiosks.there());
        Changes late = new Changes(kiosks.database());
        late.whenChanged("shelf", told::incrementAndGet);
        late.look();

        assertThat(told).hasValue(0);
    }

    @Test
    void a_change_that_was_taken_back_is_none_and_hides_none() {
        kiosks.here().whenChanged("shelf", told::incrementAndGet);
        kiosks.there().whenChanged("shelf", told::incrementAndGet);
        assertThatThrownBy(() -> kiosks.transactions().run(() -> {
            kiosks.here().bump("shelf");
            throw new IllegalStateException("never mind");
        })).hasMessage("never mind");
        kiosks.there().look();
        assertThat(told).hasValue(0);

        // Takes the number that was given up.
        bumped(kiosks.there());
        kiosks.here().look();
        assertThat(told).hasValue(1);
    }

    @Test
    void a_change_of_our_own_that_is_being_committed_is_not_told_in_between() {
        kiosks.here().whenChanged("shelf", told::incrementAndGet);
        kiosks.transactions().run(() -> {
            // Called when the commit is done and before anybody else knows that it was ours.
            org.springframework.transaction.support.TransactionSynchronizationManager.registerSynchronization(
                    new org.springframework.transaction.support.TransactionSynchronization() {
                        @Override
                        public void afterCommit() {
                            CompletableFuture.runAsync(kiosks.here()::look).join();
                        }
                    });
            kiosks.here().bump("shelf");
        });
        kiosks.here().look();

        assertThat(told).hasValue(0);
    }

    @Test
    void a_listener_that_failed_is_told_again() {
        List<String> calls = new ArrayList<>();
        kiosks.here().whenChanged("shelf", () -> {
            calls.add("call");
            if (calls.size() == 1) {
                throw new IllegalStateException("the database is away");
            }
        });
        bumped(kiosks.there());

        assertThatThrownBy(() -> kiosks.here().look()).hasMessage("the database is away");
        kiosks.here().look();
        kiosks.here().look();

        assertThat(calls).hasSize(2);
    }

    @Test
    void those_who_change_a_topic_follow_each_other() throws Exception {
        CountDownLatch bumped = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        List<String> order = java.util.Collections.synchronizedList(new ArrayList<>());
        CompletableFuture<Void> first = CompletableFuture.runAsync(() -> kiosks.transactions().run(() -> {
            kiosks.here().bump("shelf");
            bumped.countDown();
            try {
                goOn.await(5, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            order.add("first");
        }));
        bumped.await();
        CompletableFuture<Void> second = CompletableFuture.runAsync(() -> kiosks.transactions().run(() -> {
            kiosks.there().bump("shelf");
            order.add("second");
        }));
        Thread.sleep(200);
        assertThat(order).isEmpty();
        goOn.countDown();
        first.join();
        second.join();

        assertThat(order).containsExactly("first", "second");
    }

    @Test
    void a_change_belongs_to_a_transaction_and_to_a_topic_that_there_is() {
        assertThatThrownBy(() -> kiosks.here().bump("shelf")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> kiosks.transactions().run(() -> kiosks.here().bump("weather"))).isInstanceOf(IllegalArgumentException.class);
    }
}
