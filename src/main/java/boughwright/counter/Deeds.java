package boughwright.counter;

import boughwright.storage.Transactions;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Things that are done once however often a finger taps, a browser sends again or a till repeats itself: each bears a key of its own.
 * Safe for several threads and several kiosks on one database.
 */
@Repository
public class Deeds {

    /** A key longer than this is refused. */
    public static final int LONGEST_KEY = 80;

    private static final Duration REMEMBERED = Duration.ofDays(7);
    private static final int TRIES = 3;

    private final JdbcClient database;
    private final Transactions transactions;
    private final Clock clock;

    Deeds(JdbcClient database, Transactions transactions, Clock clock) {
        this.database = database;
        this.transactions = transactions;
        this.clock = clock;
    }

    /** @param again whether it had been done before, and was not done now */
    public record Done(String answer, boolean again) {
    }

    /**
     * Does {@code work} in a transaction, unless something was done under the key before. Of two who come with one key at once, the second
     * waits for the first and has its answer. When {@code work} throws, nothing is done and the key stays free.
     */
    public Done once(String key, Supplier<String> work) {
        if (key.isBlank() || key.length() > LONGEST_KEY) {
            throw new IllegalArgumentException("a key of " + key.length() + " characters");
        }
        for (int attempt = 1; ; attempt++) {
            try {
                return transactions.run(() -> {
                    Optional<String> before = answer(key);
                    if (before.isPresent()) {
                        return new Done(before.get(), true);
                    }
                    // First of all, so that whoever comes with the same key waits here.
                    database.sql("insert into deed (id, made_at, answer) values (:id, :at, '')").param("id", key).param("at", now()).update();
                    String answer = work.get();
                    database.sql("update deed set answer = :answer where id = :id").param("answer", answer).param("id", key).update();
                    return new Done(answer, false);
                });
            } catch (DuplicateKeyException taken) {
                // Another was faster, and what it did is there by now; it may also be that the work itself met a duplicate.
                if (attempt == TRIES) {
                    throw taken;
                }
            }
        }
    }

    /** What was answered under a key before. */
    public Optional<String> answer(String key) {
        return database.sql("select answer from deed where id = :id").param("id", key).query(String.class).optional();
    }

    /** Nobody sends again after a week. */
    void forgetOld() {
        database.sql("delete from deed where made_at < :before").param("before", now().minus(REMEMBERED)).update();
    }

    private LocalDateTime now() {
        return Utc.now(clock);
    }
}
