package boughwright.people;

import boughwright.storage.Settling;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The tablets on which a short PIN is enough. Safe for several threads. */
@Component
public class Tablets {

    /** The name of the cookie that holds a tablet's mark; over https with {@code __Host-} before it. */
    public static final String COOKIE = "boughwright-tablet";

    private static final String COLUMNS = "select id, name, enrolled_at, enrolled_by, seen_at from tablet ";

    private final JdbcClient database;
    private final Settling settling;
    private final PeopleEvents events;
    private final Clock clock;

    Tablets(JdbcClient database, Settling settling, PeopleEvents events, Clock clock) {
        this.database = database;
        this.settling = settling;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Enrols a tablet.
     *
     * @param name 1 to 60 characters, as {@code Tablet by the door}
     * @return the mark that it shows from now on, 128 random bits; it is told this once, and what is kept cannot be turned back into it
     */
    public String enrol(String name, Person manager) {
        String mark = Digest.token();
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        database.sql("insert into tablet (name, hash, enrolled_at, enrolled_by, seen_at) values (:name, :hash, :now, :by, :now)").param("name", name)
                .param("hash", digest(mark)).param("now", now).param("by", manager.name()).update();
        events.note(manager.name(), PeopleEvent.Kind.ENROLLED, name);
        settling.settle();
        return mark;
    }

    /** The tablet that shows a mark, if it is enrolled. */
    public Optional<Tablet> of(String mark) {
        if (mark.isBlank() || mark.length() > 100) {
            return Optional.empty();
        }
        Optional<Tablet> found = database.sql(COLUMNS + "where hash = :hash").param("hash", digest(mark)).query(Tablets::tablet).optional();
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        found.filter(t -> t.seenAt().isBefore(now.minusDays(1))).ifPresent(t -> database.sql("update tablet set seen_at = :now where id = :id")
                .param("now", now).param("id", t.id()).update());
        return found;
    }

    boolean enrolled(int id) {
        return database.sql("select count(*) from tablet where id = :id").param("id", id).query(Integer.class).single() > 0;
    }

    /** By name. */
    public List<Tablet> all() {
        return database.sql(COLUMNS + "order by name, id").query(Tablets::tablet).list();
    }

    /** The tablet is one like any other from now on; who is signed in on it by PIN is not any more. */
    public void revoke(int id, Person manager) {
        Optional<String> name = database.sql("select name from tablet where id = :id").param("id", id).query(String.class).optional();
        if (name.isPresent() && database.sql("delete from tablet where id = :id").param("id", id).update() == 1) {
            events.note(manager.name(), PeopleEvent.Kind.REVOKED, name.get());
            settling.settle();
        }
    }

    private static String digest(String mark) {
        return Digest.of(mark.getBytes(StandardCharsets.UTF_8));
    }

    private static Tablet tablet(ResultSet row, int index) throws SQLException {
        return new Tablet(row.getInt("id"), row.getString("name"), row.getTimestamp("enrolled_at").toLocalDateTime(), row.getString("enrolled_by"),
                row.getTimestamp("seen_at").toLocalDateTime());
    }
}
