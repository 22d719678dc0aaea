package boughwright.people;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What was done with people and tablets, by whom. */
@Component
public class PeopleEvents {

    private static final int LONGEST = 120;

    private final JdbcClient database;
    private final Clock clock;

    PeopleEvents(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    void note(String author, PeopleEvent.Kind kind, String words) {
        database.sql("insert into people_event (made_at, author, what, words) values (:made, :author, :what, :words)")
                .param("made", LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC)).param("author", author).param("what", kind.name())
                .param("words", words.length() <= LONGEST ? words : words.substring(0, LONGEST)).update();
    }

    /** The newest first. */
    public List<PeopleEvent> newest(int most) {
        return database.sql("select made_at, author, what, words from people_event order by id desc fetch first :most rows only").param("most", most)
                .query((row, i) -> new PeopleEvent(row.getTimestamp("made_at").toLocalDateTime(), row.getString("author"),
                        PeopleEvent.Kind.valueOf(row.getString("what")), row.getString("words")))
                .list();
    }

    /** When it was, by the clock of the shop. */
    public java.time.ZonedDateTime moment(LocalDateTime utc) {
        return utc.atZone(ZoneOffset.UTC).withZoneSameInstant(clock.getZone());
    }
}
