package boughwright.storage;

import java.sql.SQLException;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Runs work in a transaction, and again from its beginning when the database has taken it back only because another one was in its way:
 * SQLSTATE 40001 (serialization failure) and 40P01 (deadlock detected), nothing else. So the work may run several times, and must do
 * nothing but read and write the database and make its answer. Within a transaction that runs already it is a part of that one, which is
 * run again as a whole by whoever began it. Safe for several threads.
 *
 * <p>Both states and the advice to retry the whole transaction: PostgreSQL's manual, chapters "Serialization Failure Handling" and
 * "PostgreSQL Error Codes". H2 says 40001 for a deadlock.
 */
@Component
public class Transactions {

    /** How often work is begun at most. */
    public static final int TRIES = 10;

    private static final Set<String> IN_THE_WAY = Set.of("40001", "40P01");
    private static final long FIRST_PAUSE = 4;
    private static final long LONGEST_PAUSE = 250;

    private final TransactionTemplate transaction;
    private final SplittableRandom random;
    private final LongConsumer pause;

    @Autowired
    public Transactions(TransactionTemplate transaction) {
        // Two kiosks that are in each other's way must not wait equally long.
        this(transaction, new SplittableRandom(), Transactions::sleep);
    }

    /** @param pause waits for so many milliseconds */
    Transactions(TransactionTemplate transaction, SplittableRandom random, LongConsumer pause) {
        this.transaction = transaction;
        this.random = random;
        this.pause = pause;
    }

    /** What {@code work} gives, committed. What it throws takes everything back, and comes out of here as it is. */
    public <T> T run(Supplier<T> work) {
        if (TransactionSynchronizationManager.isActualTransactionActive()) {
            return transaction.execute(status -> work.get());
        }
        for (int attempt = 1; ; attempt++) {
            AtomicBoolean committed = new AtomicBoolean();
            try {
                return transaction.execute(status -> {
                    whenCommitted(() -> committed.set(true));
                    return work.get();
                });
            } catch (RuntimeException failure) {
                // What fails after the commit, in whoever was told of it, does not undo it.
                if (committed.get() || attempt == TRIES || !inTheWay(failure)) {
                    throw failure;
                }
                pause.accept(pauseAfter(attempt));
                if (Thread.currentThread().isInterrupted()) {
                    throw failure;
                }
            }
        }
    }

    /** As {@link #run(Supplier)}, for work that gives nothing. */
    public void run(Runnable work) {
        run(() -> {
            work.run();
            return null;
        });
    }

    /** Calls when the transaction at hand is committed, and never when it is not; at once when there is none. */
    public void whenCommitted(Runnable listener) {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            listener.run();
            return;
        }
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                listener.run();
            }
        });
    }

    /** Somewhere from nothing to a limit that doubles from try to try, so that those who collided do not meet again. */
    private long pauseAfter(int attempt) {
        long limit = Math.min(LONGEST_PAUSE, FIRST_PAUSE << attempt);
        synchronized (random) {
            return random.nextLong(limit + 1);
        }
    }

    /** Whether a failure is only that another transaction was in the way. */
    static boolean inTheWay(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && sql.getSQLState() != null) {
                return IN_THE_WAY.contains(sql.getSQLState());
            }
        }
        return false;
    }

    private static void sleep(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
