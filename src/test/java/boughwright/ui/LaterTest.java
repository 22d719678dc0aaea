package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.vaadin.flow.component.UI;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Work that takes longer than a screen waits goes on beside it, and is given up for newer work. */
class LaterTest {

    private final Later later = new Later();
    private final List<String> seen = new ArrayList<>();

    @BeforeEach
    void openBrowser() {
        MockVaadin.setup(new Routes());
    }

    @AfterEach
    void closeBrowser() {
        later.stop();
        MockVaadin.tearDown();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void poll(int want) throws InterruptedException {
        for (int i = 0; i < 200 && seen.size() < want; i++) {
            Thread.sleep(20);
            MockVaadin.clientRoundtrip();
        }
    }

    @Test
    void what_is_ready_soon_is_shown_at_once() {
        later.run(patience -> { }, () -> seen.add("waiting"), () -> seen.add("ready"));
        assertThat(seen).containsExactly("ready");
    }

    @Test
    void what_takes_longer_is_shown_when_it_is_done() throws InterruptedException {
        CountDownLatch finish = new CountDownLatch(1);
        later.run(patience -> await(finish), () -> seen.add("waiting"), () -> seen.add("ready"));
        assertThat(seen).containsExactly("waiting");
        assertThat(UI.getCurrent().getPollInterval()).isPositive();
        finish.countDown();
        poll(2);
        assertThat(seen).containsExactly("waiting", "ready");
        assertThat(UI.getCurrent().getPollInterval()).isNegative();
    }

    @Test
    void newer_work_cancels_what_is_not_done() throws InterruptedException {
        later.run(patience -> {
            while (!patience.cancelled()) {
                Thread.onSpinWait();
            }
            throw new CancellationException("given up");
        }, () -> seen.add("waiting"), () -> seen.add("never"));

        later.run(patience -> { }, () -> seen.add("waiting again"), () -> seen.add("newer"));
        poll(3);

        assertThat(seen).containsExactly("waiting", "newer");
        assertThat(UI.getCurrent().getPollInterval()).as("nobody asks for more").isNegative();
    }
}
