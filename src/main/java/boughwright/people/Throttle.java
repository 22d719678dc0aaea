package boughwright.people;

import java.nio.charset.StandardCharsets;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Pauses after wrong tries, which grow from one to thirty minutes and are forgotten after a while. They are counted in the database, so
 * that several kiosks on one database count together. A try is counted before it is judged: tries made at once do not slip past the
 * count. No pause is longer than half an hour, so nobody is shut out for ever. Safe for several threads; not within a transaction.
 */
@Component
public class Throttle {

    /** What is tried. */
    public enum Kind {

        /** A person's secret, from one tablet or from anywhere else. */
        PERSON(5, Duration.ofDays(1)),
        /** Anybody's secret, from one tablet. */
        TABLET(15, Duration.ofHours(1)),
        /** Anybody's secret, from one address, which a whole shop may share. */
        ADDRESS(30, Duration.ofHours(1)),
        /** The word that the log shows at first start. */
        FIRST_WORD(5, Duration.ofDays(1)),
        /** The code of a consultation, typed on one tablet or from one address. */
        CODE(20, Duration.ofMinutes(15)),
        /** A code or private link in an address that leads nowhere, from one address. */
        LINK(30, Duration.ofMinutes(15));

        private final int free;
        private final Duration remembered;

        /**
         * @param free wrong tries after which the first pause begins
         * @param remembered how long without another wrong try until they are forgotten
         */
        Kind(int free, Duration remembered) {
            this.free = free;
            this.remembered = remembered;
        }
    }

    static final Duration FIRST = Duration.ofMinutes(1);
    static final Duration LONGEST = Duration.ofMinutes(30);
    private static final Duration REMEMBERED = Duration.ofDays(1);
    private static final int LONGEST_SUBJECT = 100;

    private final JdbcClient database;
    private final Clock clock;

    Throttle(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    private record Count(int tries, LocalDateTime lastAt, Optional<LocalDateTime> closedUntil, int version) {

        /** What is left of a pause. */
        Optional<Duration> pause(LocalDateTime now) {
            return closedUntil.map(until -> Duration.between(now, until))
                    // A pause longer than any is what remains of a clock that was set back.
                    .filter(p -> p.compareTo(Duration.ZERO) > 0 && p.compareTo(LONGEST) <= 0);
        }
    }

    /**
     * Begins a try, which counts as a wrong one until {@link #right} or {@link #spare} says otherwise.
     *
     * @return how long to wait, if no try is allowed now; it is not counted then
     */
    public Optional<Duration> begin(Kind kind, String subject) {
        String key = key(subject);
        while (true) {
            LocalDateTime now = now();
            Optional<Count> found = count(kind, key);
            if (found.isEmpty()) {
                if (insert(kind, key, now)) {
                    return Optional.empty();
                }
                continue;
            }
            Count count = found.get();
            Optional<Duration> pause = count.pause(now);
            if (pause.isPresent()) {
                return pause;
            }
            int tries = count.lastAt().isBefore(now.minus(kind.remembered)) ? 1 : count.tries() + 1;
            if (update(kind, key, count, tries, now, pause(kind, tries).map(now::plus))) {
                return Optional.empty();
            }
        }
    }

    /** How long to wait, if no try would be allowed now. Nothing is counted: for what is tried once it has turned out to be wrong, with {@link #begin}. */
    public Optional<Duration> pause(Kind kind, String subject) {
        return count(kind, key(subject)).flatMap(count -> count.pause(now()));
    }

    private LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /** The try was right, and what was wrong before does not matter any more. */
    public void right(Kind kind, String subject) {
        database.sql("delete from throttle where kind = :kind and subject = :subject").param("kind", kind.name()).param("subject", key(subject)).update();
    }

    /** The try that was begun was none, or was right without making up for the others. */
    public void spare(Kind kind, String subject) {
        database.sql("""
                        update throttle set tries = case when tries > 0 then tries - 1 else 0 end, closed_until = null, version = version + 1
                        where kind = :kind and subject = :subject""")
                .param("kind", kind.name()).param("subject", key(subject)).update();
    }

    /** The pause after so many wrong tries. */
    static Optional<Duration> pause(Kind kind, int tries) {
        if (tries < kind.free) {
            return Optional.empty();
        }
        int doublings = Math.min(tries - kind.free, 10);
        Duration pause = FIRST.multipliedBy(1L << doublings);
        return Optional.of(pause.compareTo(LONGEST) < 0 ? pause : LONGEST);
    }

    private static String key(String subject) {
        return subject.length() <= LONGEST_SUBJECT ? subject : Digest.of(subject.getBytes(StandardCharsets.UTF_8));
    }

    private Optional<Count> count(Kind kind, String key) {
        return database.sql("select tries, last_at, closed_until, version from throttle where kind = :kind and subject = :subject")
                .param("kind", kind.name()).param("subject", key)
                .query((row, i) -> new Count(row.getInt("tries"), row.getTimestamp("last_at").toLocalDateTime(),
                        Optional.ofNullable(row.getTimestamp("closed_until")).map(Timestamp::toLocalDateTime), row.getInt("version")))
                .optional();
    }

    private boolean insert(Kind kind, String key, LocalDateTime now) {
        database.sql("delete from throttle where last_at < :before").param("before", now.minus(REMEMBERED)).update();
        try {
            database.sql("insert into throttle (kind, subject, tries, last_at, version) values (:kind, :subject, 1, :now, 1)")
                    .param("kind", kind.name()).param("subject", key).param("now", now).update();
            return true;
        } catch (DuplicateKeyException another) {
            return false;
        }
    }

    private boolean update(Kind kind, String key, Count before, int tries, LocalDateTime now, Optional<LocalDateTime> closedUntil) {
        return database.sql("""
                        update throttle set tries = :tries, last_at = :now, closed_until = :closed, version = version + 1
                        where kind = :kind and subject = :subject and version = :version""")
                .param("tries", tries).param("now", now).param("closed", closedUntil.map(Timestamp::valueOf).orElse(null), java.sql.Types.TIMESTAMP)
                .param("kind", kind.name()).param("subject", key).param("version", before.version()).update() == 1;
    }
}
