package boughwright.ui;

import boughwright.kit.Patience;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;

/**
 * Works something out beside the screen. What is ready soon is shown at once; for what takes longer the screen goes on answering,
 * and another piece of work cancels the one before it.
 */
final class Later {

    /** How long the screen waits; far longer than most kits take. */
    private static final long GRACE_MILLIS = 1_500;
    private static final int POLL_MILLIS = 250;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "working out a change");
        thread.setDaemon(true);
        return thread;
    });
    private Patience patience = Patience.usual();

    /**
     * @param work with the patience that it must heed; it must not touch the screen
     * @param waiting called on the screen when it takes longer
     * @param ready called on the screen when it is done, and not when it was cancelled
     */
    void run(Consumer<Patience> work, Runnable waiting, Runnable ready) {
        run(GRACE_MILLIS, work, waiting, ready);
    }

    /** As {@link #run}, for what the screen has something to show without: it does not wait at all. */
    void beside(Consumer<Patience> work, Runnable ready) {
        run(0, work, () -> { }, ready);
    }

    private void run(long grace, Consumer<Patience> work, Runnable waiting, Runnable ready) {
        patience.cancel();
        Patience mine = Patience.usual();
        patience = mine;
        UI ui = UI.getCurrent();
        Future<?> done = worker.submit(Text.carried(() -> work.accept(mine)));
        try {
            done.get(grace, TimeUnit.MILLISECONDS);
            ui.setPollInterval(-1);
            ready.run();
        } catch (TimeoutException slow) {
            waiting.run();
            ui.setPollInterval(POLL_MILLIS);
            worker.submit(Text.carried(() -> ui.access(Text.carried(() -> finish(ui, done, mine, ready))::run)));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw broken(e);
        }
    }

    private void finish(UI ui, Future<?> done, Patience mine, Runnable ready) {
        if (mine.cancelled()) {
            return;
        }
        ui.setPollInterval(-1);
        try {
            done.get();
            ready.run();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            if (!(e.getCause() instanceof CancellationException)) {
                throw broken(e);
            }
        }
    }

    private static RuntimeException broken(ExecutionException e) {
        return e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
    }

    /** What is going on is not wanted any longer. */
    void cancel() {
        patience.cancel();
    }

    /** Nobody looks any longer. */
    void stop() {
        patience.cancel();
        worker.shutdown();
    }
}
