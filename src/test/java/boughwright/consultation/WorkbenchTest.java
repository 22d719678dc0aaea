package boughwright.consultation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.KioskFixture;
import boughwright.catalogue.Catalogue;
import boughwright.kit.KitSolver;
import boughwright.kit.Patience;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.text.Language;
import boughwright.text.Text;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Kits are worked out in turn, and the same one once. */
class WorkbenchTest {

    private static final String SMALL = "{\"tree\": {\"height\": \"5 ft\"}}";

    private final AtomicInteger worked = new AtomicInteger();
    private final ExecutorService customers = Executors.newCachedThreadPool();
    private final KitSolver solver = new KitSolver();

    private Designer designer(Catalogue catalogue) {
        return new Designer(KioskFixture.designer().rulebook(), catalogue, solver, (nanos, outcome) -> worked.incrementAndGet());
    }

    @AfterEach
    void closeShop() {
        customers.shutdownNow();
    }

    private static Outcome ask(Workbench bench, Designer designer, String brief) {
        return bench.proposal(designer, brief, Adjustments.NONE, Designer.SEED, Patience.usual());
    }

    @Test
    void the_same_is_worked_out_once_and_anything_else_anew() {
        Workbench bench = new Workbench(1, Duration.ofMinutes(1));
        Designer designer = designer(KioskFixture.designer().catalogue());
        Outcome first = ask(bench, designer, SMALL);
        assertThat(ask(bench, designer, SMALL)).isSameAs(first);
        assertThat(worked).hasValue(1);

        ask(bench, designer, "{\"tree\": {\"height\": \"6 ft\"}}");
        assertThat(worked).hasValue(2);
        bench.proposal(designer, SMALL, Adjustments.NONE, 7, Patience.usual());
        assertThat(worked).hasValue(3);
        Outcome german = Text.in(Language.GERMAN, () -> ask(bench, designer, SMALL));
        assertThat(worked).hasValue(4);
        assertThat(german).isNotEqualTo(first);
        // Goods that were counted anew may be the same; nobody knows before it is worked out.
        ask(bench, designer(new Catalogue(KioskFixture.designer().catalogue().products())), SMALL);
        assertThat(worked).hasValue(5);
    }

    @Test
    void what_was_asked_for_long_ago_is_worked_out_again() {
        Workbench bench = new Workbench(1, Duration.ofMinutes(1));
        Designer designer = designer(KioskFixture.designer().catalogue());
        String faulty = "{\"tree\": {\"height\": \"%d ft\"}}";
        Outcome first = ask(bench, designer, faulty.formatted(100));
        for (int feet = 101; feet < 133; feet++) {
            ask(bench, designer, faulty.formatted(feet));
        }
        assertThat(ask(bench, designer, faulty.formatted(100))).isNotSameAs(first).isEqualTo(first);
    }

    @Test
    void no_more_are_worked_on_at_once_than_there_are_turns_and_whoever_leaves_the_queue_is_not_waited_for() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        AtomicInteger done = new AtomicInteger();
        Designer slow = new Designer(KioskFixture.designer().rulebook(), KioskFixture.designer().catalogue(), solver, (nanos, outcome) -> {
            begun.countDown();
            await(go);
            done.incrementAndGet();
        });
        Workbench bench = new Workbench(1, Duration.ofMinutes(1));
        CompletableFuture<Outcome> first = CompletableFuture.supplyAsync(() -> ask(bench, slow, SMALL), customers);
        assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();

        Patience leaving = Patience.usual();
        CompletableFuture<Outcome> left = CompletableFuture.supplyAsync(() -> bench.proposal(slow, SMALL, Adjustments.NONE, 2, leaving), customers);
        List<CompletableFuture<Outcome>> others = new ArrayList<>();
        for (int seed = 3; seed < 6; seed++) {
            long own = seed;
            others.add(CompletableFuture.supplyAsync(() -> bench.proposal(slow, SMALL, Adjustments.NONE, own, Patience.usual()), customers));
        }
        leaving.cancel();
        assertThatThrownBy(left::join).hasCauseInstanceOf(CancellationException.class);
        assertThat(others).noneMatch(CompletableFuture::isDone);
        assertThat(done).hasValue(0);

        go.countDown();
        assertThat(first.get(60, TimeUnit.SECONDS)).isInstanceOf(Outcome.Made.class);
        for (CompletableFuture<Outcome> other : others) {
            assertThat(other.get(60, TimeUnit.SECONDS)).isInstanceOf(Outcome.Made.class);
        }
        assertThat(done).hasValue(4);
    }

    @Test
    void what_nobody_has_asked_for_is_left_when_no_turn_comes_up_in_time() throws Exception {
        Workbench bench = new Workbench(1, Duration.ofMillis(1));
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        CompletableFuture<Optional<String>> slow = CompletableFuture.supplyAsync(() -> bench.beside(Patience.usual(), () -> {
            begun.countDown();
            await(go);
            return "slow";
        }), customers);
        assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();
        assertThat(bench.beside(Patience.usual(), () -> "beside it")).isEmpty();
        // Proposals have turns of their own.
        assertThat(ask(bench, designer(KioskFixture.designer().catalogue()), SMALL)).isInstanceOf(Outcome.Made.class);
        go.countDown();
        assertThat(slow.get(60, TimeUnit.SECONDS)).contains("slow");
        assertThat(bench.beside(Patience.usual(), () -> "after it")).contains("after it");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
