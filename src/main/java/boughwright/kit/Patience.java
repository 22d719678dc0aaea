package boughwright.kit;

import java.time.Duration;
import java.util.concurrent.CancellationException;

/**
 * How long each programme of a search may take, and whether anybody still waits for it.
 *
 * <p>May be cancelled from any thread. The search stops between two programmes, and a programme itself ends at its limit: CBC cannot
 * be interrupted. The limit is of processor time of the whole process, so on a busy machine it ends sooner than the clock says.
 */
public final class Patience {

    private static final Duration USUAL = Duration.ofSeconds(8);

    private final Duration limit;
    private volatile boolean cancelled;

    private Patience(Duration limit) {
        this.limit = limit;
    }

    /** Eight seconds for each programme, far more than any needs. */
    public static Patience usual() {
        return new Patience(USUAL);
    }

    public static Patience of(Duration limit) {
        return new Patience(limit);
    }

    /** Nobody waits any longer. */
    public void cancel() {
        cancelled = true;
    }

    public boolean cancelled() {
        return cancelled;
    }

    long millis() {
        return limit.toMillis();
    }

    /** @throws CancellationException when nobody waits any longer */
    void check() {
        if (cancelled) {
            throw new CancellationException("the search is no longer wanted");
        }
    }
}
