package boughwright.people;

import boughwright.people.Throttle.Kind;
import boughwright.storage.Settling;
import boughwright.text.Text;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The people who work here. At first start there is nobody: the log shows a word that lets whoever runs the kiosk, and nobody else in the
 * shop, become the first manager. A shop always keeps a manager who may sign in. What a method has kept survives the loss of the process.
 * Safe for several threads and several kiosks on one database.
 */
@Component
public class People {

    public static final int LONGEST_NAME = 60;
    public static final int SHORTEST_MANAGER_PIN = 6;
    public static final int LEAST_LOCK_MINUTES = 1;
    public static final int MOST_LOCK_MINUTES = 60;
    static final Duration STARTING_WORD_LASTS = Duration.ofDays(3);
    /** Away from enrolled tablets, where a password was typed. */
    static final Duration LOCK_ELSEWHERE = Duration.ofMinutes(30);

    private static final Logger LOG = LoggerFactory.getLogger(People.class);
    private static final String COLUMNS = "select id, name, role, password, pin, starting, starting_until, active, stamp from person ";

    private final JdbcClient database;
    private final TransactionTemplate transaction;
    private final Settling settling;
    private final Throttle throttle;
    private final Tablets tablets;
    private final PeopleEvents events;
    private final Clock clock;
    private final PasswordEncoder encoder = PasswordEncoderFactories.createDelegatingPasswordEncoder();
    /** Judged in place of a secret that is not there, so that the answer takes as long. */
    private final String nobodys = encoder.encode(Digest.word());
    private final String firstWord = Digest.word();
    private final boolean anotherFirst;

    /** @param anotherFirst lets the word from the log make a manager although there is one, for a shop whose managers have lost their passwords */
    People(JdbcClient database, TransactionTemplate transaction, Settling settling, Throttle throttle, Tablets tablets, PeopleEvents events, Clock clock,
            @Value("${boughwright.new-manager:false}") boolean anotherFirst) {
        this.database = database;
        this.transaction = transaction;
        this.settling = settling;
        this.throttle = throttle;
        this.tablets = tablets;
        this.events = events;
        this.clock = clock;
        this.anotherFirst = anotherFirst;
        if (!begun()) {
            LOG.info(Text.of("staff.first-word", firstWord));
        }
    }

    private record Kept(int id, Person person, String password, String pin, String starting, Optional<LocalDateTime> startingUntil, boolean active, int stamp) {
    }

    /** What came of a manager's change. */
    public sealed interface Change {

        record Done() implements Change {
        }

        /** @param word told once, with which the person chooses PIN and password */
        record Word(String word) implements Change {
        }

        /** Nothing has changed. */
        record Refused(Why why) implements Change {
        }
    }

    /** Why a change was not made. */
    public enum Why {

        NAME_SHAPE, NAME_TAKEN, LAST_MANAGER, GONE;

        public String key() {
            return "people.refused." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What came of choosing secrets. */
    public sealed interface Choice {

        record Chosen(SignedIn signedIn) implements Choice {
        }

        /** @param key of a message */
        record Refused(String key) implements Choice {
        }

        record Wait(Duration pause) implements Choice {
        }
    }

    /** What the log says at first start. */
    String firstWord() {
        return firstWord;
    }

    Instant now() {
        return clock.instant();
    }

    private LocalDateTime utc() {
        return LocalDateTime.ofInstant(now(), ZoneOffset.UTC);
    }

    /** Whether there is a manager, so that nobody becomes the first one any more. */
    public boolean begun() {
        return !anotherFirst && database.sql("select count(*) from person where role = 'MANAGER' and active").query(Integer.class).single() > 0;
    }

    private static Kept kept(ResultSet row, int index) throws SQLException {
        return new Kept(row.getInt("id"), new Person(row.getString("name"), Role.valueOf(row.getString("role"))), row.getString("password"), row.getString("pin"),
                row.getString("starting"), Optional.ofNullable(row.getTimestamp("starting_until")).map(Timestamp::toLocalDateTime), row.getBoolean("active"), row.getInt("stamp"));
    }

    private Optional<Kept> kept(int id) {
        return database.sql(COLUMNS + "where id = :id").param("id", id).query(People::kept).optional();
    }

    private Optional<Kept> named(String name) {
        return database.sql(COLUMNS + "where plain = :plain").param("plain", plain(name)).query(People::kept).optional();
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private static boolean isName(String name) {
        return !name.isBlank() && name.strip().length() <= LONGEST_NAME && plain(name).length() <= LONGEST_NAME;
    }

    /** What is wrong with a password that somebody of this name chooses. */
    public static Optional<Secrets.Fault> fault(String password, String name) {
        List<String> names = new ArrayList<>(List.of(name, "boughwright"));
        names.addAll(List.of(name.strip().split("\\s+")));
        return Secrets.password(password, names);
    }

    /**
     * Makes the first manager and signs them in.
     *
     * @param word from the log
     * @param password without a {@link #fault}
     */
    public Entry begin(String word, String name, String password, Place place) {
        if (begun() || !isName(name) || fault(password, name).isPresent()) {
            return new Entry.Wrong();
        }
        Optional<Duration> pause = throttle.begin(Kind.FIRST_WORD, place.subject());
        if (pause.isPresent()) {
            return new Entry.Wait(pause.get());
        }
        if (!word.strip().toLowerCase(Locale.ROOT).equals(firstWord) || named(name).isPresent() && !anotherFirst) {
            return new Entry.Wrong();
        }
        throttle.right(Kind.FIRST_WORD, place.subject());
        String hash = encoder.encode(password);
        // With somebody of this name there already, their password is what was lost.
        if (database.sql("update person set password = :hash, role = 'MANAGER', active = true, stamp = stamp + 1 where plain = :plain").param("hash", hash)
                .param("plain", plain(name)).update() == 0) {
            insert(name, Role.MANAGER, hash, "", Optional.empty());
        }
        events.note(name.strip(), PeopleEvent.Kind.FIRST, name.strip());
        settling.settle();
        return named(name).map(kept -> in(kept, place)).orElseGet(Entry.Wrong::new);
    }

    private void insert(String name, Role role, String password, String starting, Optional<LocalDateTime> until) {
        database.sql("""
                        insert into person (name, plain, role, password, pin, starting, starting_until, active, stamp, made_at)
                        values (:name, :plain, :role, :password, '', :starting, :until, true, 1, :made)""")
                .param("name", name.strip()).param("plain", plain(name)).param("role", role.name()).param("password", password).param("starting", starting)
                .param("until", until.map(Timestamp::valueOf).orElse(null), Types.TIMESTAMP).param("made", utc()).update();
    }

    private Entry in(Kept kept, Place place) {
        return new Entry.In(new SignedIn(this, kept.id(), kept.stamp(), kept.person(), place.tablet().map(Tablet::id), now()));
    }

    /** Signs in with a password, or begins with a starting word. An unknown name takes as long to be refused as a wrong password. */
    public Entry enter(String name, String secret, Place place) {
        Optional<Kept> found = named(name).filter(Kept::active);
        Optional<Duration> pause = begin(found, name, place);
        if (pause.isPresent()) {
            return new Entry.Wait(pause.get());
        }
        boolean password = found.map(Kept::password).filter(this::matchable).isPresent() & matches(secret, found.map(Kept::password));
        boolean starting = found.flatMap(Kept::startingUntil).filter(utc()::isBefore).isPresent()
                & matches(secret.strip().toLowerCase(Locale.ROOT), found.map(Kept::starting));
        if (!password && !starting) {
            return new Entry.Wrong();
        }
        Kept kept = found.get();
        right(kept, place);
        return password ? in(kept, place) : new Entry.Starts(new Starter(kept.id(), kept.stamp(), kept.person().name()));
    }

    /** Signs in with a PIN, on an enrolled tablet alone. */
    public Entry pin(int id, String pin, Place place) {
        if (place.tablet().isEmpty()) {
            return new Entry.Wrong();
        }
        Optional<Kept> found = kept(id).filter(Kept::active);
        Optional<Duration> pause = begin(found, "id " + id, place);
        if (pause.isPresent()) {
            return new Entry.Wait(pause.get());
        }
        if (!matches(pin, found.map(Kept::pin)) || found.isEmpty()) {
            return new Entry.Wrong();
        }
        right(found.get(), place);
        return in(found.get(), place);
    }

    private boolean matchable(String hash) {
        return !hash.isEmpty();
    }

    /** Takes as long whether there is a hash or not. */
    private boolean matches(String secret, Optional<String> hash) {
        boolean there = hash.filter(this::matchable).isPresent();
        boolean fits = !Secrets.tooLong(secret);
        boolean same = encoder.matches(fits ? secret : "", there ? hash.get() : nobodys);
        return there && fits && same;
    }

    private static Kind kind(Place place) {
        return place.tablet().isPresent() ? Kind.TABLET : Kind.ADDRESS;
    }

    /** Wrong tries elsewhere do not shut somebody out of an enrolled tablet. Unknown names are counted like known ones. */
    private static String subject(Optional<Kept> kept, String name, Place place) {
        String who = kept.map(k -> "person " + k.id()).orElse("nobody " + plain(name));
        return place.tablet().map(t -> who + " tablet " + t.id()).orElse(who);
    }

    private Optional<Duration> begin(Optional<Kept> kept, String name, Place place) {
        Optional<Duration> here = throttle.begin(kind(place), place.subject());
        if (here.isPresent()) {
            return here;
        }
        Optional<Duration> who = throttle.begin(Kind.PERSON, subject(kept, name, place));
        if (who.isPresent()) {
            throttle.spare(kind(place), place.subject());
        }
        return who;
    }

    /** Being right makes up for what the same person mistyped, and not for what others tried from here. */
    private void right(Kept kept, Place place) {
        throttle.right(Kind.PERSON, subject(Optional.of(kept), "", place));
        throttle.spare(kind(place), place.subject());
    }

    /** Who somebody still is; empty when their rights or secrets have changed, or the tablet is no longer enrolled. */
    Optional<Person> still(int id, int stamp, Optional<Integer> tablet) {
        return kept(id).filter(k -> k.active() && k.stamp() == stamp).filter(k -> tablet.isEmpty() || tablets.enrolled(tablet.get())).map(Kept::person);
    }

    /**
     * Chooses secrets with a starting word, which is used up by it, and signs in.
     *
     * @param pin empty for none
     * @param password empty for none; managers need one
     */
    public Choice choose(Starter starter, String pin, String password, Place place) {
        Optional<Kept> found = kept(starter.id()).filter(k -> k.active() && k.stamp() == starter.stamp());
        if (found.isEmpty()) {
            return new Choice.Refused("people.choose.gone");
        }
        Kept kept = found.get();
        if (pin.isEmpty() && password.isEmpty() || password.isEmpty() && kept.person().role() == Role.MANAGER) {
            return new Choice.Refused(pin.isEmpty() ? "people.choose.none" : "people.choose.manager");
        }
        Optional<String> wrong = pinFault(kept.person(), pin).or(() -> passwordFault(kept.person(), password));
        if (wrong.isPresent()) {
            return new Choice.Refused(wrong.get());
        }
        int changed = database.sql("""
                        update person set pin = :pin, password = :password, starting = '', starting_until = null, stamp = stamp + 1
                        where id = :id and stamp = :stamp and active""")
                .param("pin", hash(pin)).param("password", hash(password)).param("id", kept.id()).param("stamp", kept.stamp()).update();
        if (changed == 0) {
            return new Choice.Refused("people.choose.gone");
        }
        settling.settle();
        return new Choice.Chosen(new SignedIn(this, kept.id(), kept.stamp() + 1, kept.person(), place.tablet().map(Tablet::id), now()));
    }

    private String hash(String secret) {
        return secret.isEmpty() ? "" : encoder.encode(secret);
    }

    private static Optional<String> pinFault(Person person, String pin) {
        if (pin.isEmpty()) {
            return Optional.empty();
        }
        if (person.role() == Role.MANAGER && pin.length() < SHORTEST_MANAGER_PIN) {
            return Optional.of("people.fault.pin-manager");
        }
        return Secrets.pin(pin).map(Secrets.Fault::key);
    }

    private static Optional<String> passwordFault(Person person, String password) {
        return password.isEmpty() ? Optional.empty() : fault(password, person.name()).map(Secrets.Fault::key);
    }

    /** Somebody who is signed in chooses another password; others who are signed in under the same name are not any more. */
    public Choice changePassword(SignedIn who, String present, String password, Place place) {
        return change(who, present, place, "password", password, passwordFault(new Person(name(who), Role.ASSOCIATE), password), password.isEmpty());
    }

    /** Somebody who is signed in chooses another PIN. */
    public Choice changePin(SignedIn who, String present, String pin, Place place) {
        Optional<Person> person = who.person();
        return change(who, present, place, "pin", pin, person.flatMap(p -> pinFault(p, pin)), pin.isEmpty());
    }

    private static String name(SignedIn who) {
        return who.person().map(Person::name).orElse("");
    }

    /** @param present their password, or their PIN where that opens */
    private Choice change(SignedIn who, String present, Place place, String column, String secret, Optional<String> wrong, boolean none) {
        Optional<Kept> found = kept(who.id()).filter(k -> who.person().isPresent());
        if (found.isEmpty()) {
            return new Choice.Refused("people.choose.gone");
        }
        if (none || wrong.isPresent()) {
            return new Choice.Refused(none ? "people.choose.empty" : wrong.get());
        }
        Kept kept = found.get();
        Optional<Duration> pause = begin(found, "", place);
        if (pause.isPresent()) {
            return new Choice.Wait(pause.get());
        }
        boolean right = matches(present, Optional.of(kept.password()));
        right |= place.tablet().isPresent() && matches(present, Optional.of(kept.pin()));
        if (!right) {
            return new Choice.Refused("people.choose.wrong");
        }
        right(kept, place);
        if (database.sql("update person set " + column + " = :hash, stamp = stamp + 1 where id = :id and stamp = :stamp").param("hash", hash(secret))
                .param("id", kept.id()).param("stamp", kept.stamp()).update() == 0) {
            return new Choice.Refused("people.choose.gone");
        }
        who.follow(kept.stamp() + 1);
        settling.settle();
        return new Choice.Chosen(who);
    }

    private static Colleague colleague(Kept kept) {
        return new Colleague(kept.id(), kept.person(), !kept.pin().isEmpty(), !kept.password().isEmpty(), !kept.starting().isEmpty(), kept.active());
    }

    /** Everybody, by name. */
    public List<Colleague> all() {
        return database.sql(COLUMNS + "order by plain").query(People::kept).list().stream().map(People::colleague).toList();
    }

    /** Who may sign in, by name. */
    public List<Colleague> active() {
        return all().stream().filter(Colleague::active).toList();
    }

    private static void manager(Person by) {
        if (by.role() != Role.MANAGER) {
            throw new SecurityException("only a manager keeps the people");
        }
    }

    /** Adds somebody, who begins with the word that is given back. */
    public Change add(String name, Role role, Person by) {
        manager(by);
        if (!isName(name)) {
            return new Change.Refused(Why.NAME_SHAPE);
        }
        String word = Digest.word();
        try {
            insert(name, role, "", encoder.encode(word), Optional.of(utc().plus(STARTING_WORD_LASTS)));
        } catch (DuplicateKeyException taken) {
            return new Change.Refused(Why.NAME_TAKEN);
        }
        events.note(by.name(), PeopleEvent.Kind.ADDED, name.strip());
        settling.settle();
        return new Change.Word(word);
    }

    /** Forgets somebody's PIN and password; they begin anew with the word that is given back. */
    public Change reset(int id, Person by) {
        String word = Digest.word();
        Change change = change(id, by, PeopleEvent.Kind.RESET, false, "pin = '', password = '', starting = :one, starting_until = :two", encoder.encode(word),
                utc().plus(STARTING_WORD_LASTS));
        return change instanceof Change.Done ? new Change.Word(word) : change;
    }

    /** A PIN that was enough for another role is not for a manager's, so it is forgotten. */
    public Change changeRole(int id, Role role, Person by) {
        return change(id, by, PeopleEvent.Kind.ROLE, role == Role.MANAGER, "role = :one, pin = case when :two = 'MANAGER' then '' else pin end", role.name(), role.name());
    }

    /** Somebody may not sign in any more; who is signed in under the name is not from now on. */
    public Change switchOff(int id, Person by) {
        return change(id, by, PeopleEvent.Kind.OFF, false, "active = :one, starting = :two", false, "");
    }

    public Change switchOn(int id, Person by) {
        return change(id, by, PeopleEvent.Kind.ON, true, "active = :one, starting = :two", true, "");
    }

    /** @param staysManager whether a manager remains one who may sign in */
    private Change change(int id, Person by, PeopleEvent.Kind kind, boolean staysManager, String set, Object one, Object two) {
        manager(by);
        Change change = transaction.execute(status -> {
            // Holds the managers still, so that two of them do not take each other's rights at once.
            List<Integer> managers = database.sql("select id from person where role = 'MANAGER' and active and password <> '' order by id for update").query(Integer.class).list();
            if (!staysManager && managers.equals(List.of(id))) {
                return new Change.Refused(Why.LAST_MANAGER);
            }
            if (database.sql("update person set " + set + ", stamp = stamp + 1 where id = :id").param("one", one).param("two", two).param("id", id).update() == 0) {
                return new Change.Refused(Why.GONE);
            }
            events.note(by.name(), kind, kept(id).map(k -> k.person().name()).orElse(""));
            return new Change.Done();
        });
        settling.settle();
        return change;
    }

    /** Minutes without a touch after which an enrolled tablet locks itself. */
    public int lockMinutes() {
        return database.sql("select lock_minutes from people_setting where id = 1").query(Integer.class).single();
    }

    public void lockAfter(int minutes, Person by) {
        manager(by);
        database.sql("update people_setting set lock_minutes = :minutes where id = 1")
                .param("minutes", Math.max(LEAST_LOCK_MINUTES, Math.min(MOST_LOCK_MINUTES, minutes))).update();
        events.note(by.name(), PeopleEvent.Kind.LOCK, String.valueOf(minutes));
        settling.settle();
    }

    /** Minutes without a touch after which a sign-in by password elsewhere ends. */
    public static int elsewhereMinutes() {
        return (int) LOCK_ELSEWHERE.toMinutes();
    }

    /** How long somebody stays signed in without a touch. */
    public Duration lockAfter(boolean tablet) {
        return tablet ? Duration.ofMinutes(lockMinutes()) : LOCK_ELSEWHERE;
    }
}
