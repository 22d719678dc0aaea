package boughwright.people;

import boughwright.HandClock;
import boughwright.storage.Settling;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The people of a shop in a database in memory, with a clock that stands still until it is moved. */
final class PeopleFixture {

    static final String PASSWORD = "eleven pipers piping";
    static final Place ANYWHERE = new Place(Optional.empty(), "192.0.2.1");

    final DataSource source;
    final HandClock clock;
    final Throttle throttle;
    final Tablets tablets;
    final PeopleEvents events;
    final People people;

    private PeopleFixture(DataSource source, HandClock clock, boolean anotherFirst) {
        this.source = source;
        this.clock = clock;
        JdbcClient database = JdbcClient.create(source);
        Settling settling = new Settling(database, source);
        throttle = new Throttle(database, clock);
        events = new PeopleEvents(database, clock);
        tablets = new Tablets(database, settling, events, clock);
        people = new People(database, new TransactionTemplate(new DataSourceTransactionManager(source)), settling, throttle, tablets, events, clock, anotherFirst);
    }

    /** An empty database. */
    static DataSource database() {
        return JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
    }

    /** Nobody is there yet. */
    static PeopleFixture empty() {
        return of(database());
    }

    static PeopleFixture of(DataSource source) {
        Flyway.configure().dataSource(source).load().migrate();
        return new PeopleFixture(source, new HandClock("2026-11-25T10:00:00Z"), false);
    }

    /** With Ada, the manager. */
    static PeopleFixture withManager() {
        PeopleFixture fixture = empty();
        fixture.people.begin(fixture.people.firstWord(), "Ada", PASSWORD, ANYWHERE);
        return fixture;
    }

    /** Another kiosk on the same database. */
    PeopleFixture another(boolean anotherFirst) {
        return new PeopleFixture(source, clock, anotherFirst);
    }

    Person ada() {
        return new Person("Ada", Role.MANAGER);
    }

    /** Adds somebody who has chosen a PIN. @return their id */
    int add(String name, Role role, String pin) {
        String word = ((People.Change.Word) people.add(name, role, ada())).word();
        Starter starter = ((Entry.Starts) people.enter(name, word, ANYWHERE)).starter();
        people.choose(starter, pin, role == Role.MANAGER ? PASSWORD : "", ANYWHERE);
        return id(name);
    }

    int id(String name) {
        return people.all().stream().filter(c -> c.person().name().equals(name)).findFirst().orElseThrow().id();
    }

    /** On a tablet that is enrolled now. */
    Place tablet(String name) {
        return new Place(tablets.of(tablets.enrol(name, ada())), "192.0.2.7");
    }

    SignedIn in(Entry entry) {
        return ((Entry.In) entry).signedIn();
    }
}
