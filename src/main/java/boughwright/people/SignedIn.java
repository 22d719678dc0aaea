package boughwright.people;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.dao.DataAccessException;

/**
 * Somebody who has signed in, for as long as nothing ends it: too long without a touch, half a day, a change of their rights or secrets,
 * the tablet no longer enrolled. Safe for several threads.
 */
public final class SignedIn {

    /** The name under which a browser's session holds it. */
    public static final String ATTRIBUTE = SignedIn.class.getName();

    static final Duration LONGEST = Duration.ofHours(12);
    /** Rights are looked up again after this, so that what a manager takes away ends at once everywhere. */
    private static final Duration SURE = Duration.ofSeconds(2);

    private final People people;
    private final int id;
    private final Optional<Integer> tablet;
    private final Instant since;
    private int stamp;
    private Instant seen;
    private Instant sure;
    private Duration lock;
    private Optional<Person> person;

    SignedIn(People people, int id, int stamp, Person person, Optional<Integer> tablet, Instant now) {
        this.people = people;
        this.id = id;
        this.stamp = stamp;
        this.person = Optional.of(person);
        this.tablet = tablet;
        this.since = now;
        this.seen = now;
        this.sure = now;
        this.lock = people.lockAfter(tablet.isPresent());
    }

    int id() {
        return id;
    }

    /** Who it is; empty for ever once it has ended. Asking is no sign of life. */
    public synchronized Optional<Person> person() {
        Instant now = people.now();
        if (person.isPresent() && over(sure, SURE, now)) {
            try {
                person = people.still(id, stamp, tablet);
                lock = people.lockAfter(tablet.isPresent());
                sure = now;
            } catch (DataAccessException away) {
                // While the database is away nothing can be changed with these rights either; they are looked up when it is back.
            }
        }
        if (over(seen, lock, now) || over(since, LONGEST, now)) {
            person = Optional.empty();
        }
        return person;
    }

    /** Also when the clock was set back: what is not yet cannot be counted from. */
    private static boolean over(Instant from, Duration allowed, Instant now) {
        return now.isBefore(from.minus(SURE)) || Duration.between(from, now).compareTo(allowed) > 0;
    }

    /** Somebody has touched the screen. */
    public synchronized void touched() {
        if (person().isPresent()) {
            seen = people.now();
        }
    }

    /** How long it lasts without a touch. */
    public synchronized Duration lock() {
        return lock;
    }

    /** It has ended. */
    public synchronized void end() {
        person = Optional.empty();
    }

    /** Their own secrets were changed by themselves. */
    synchronized void follow(int newStamp) {
        stamp = newStamp;
    }
}
