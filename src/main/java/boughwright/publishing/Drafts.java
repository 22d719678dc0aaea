package boughwright.publishing;

import boughwright.house.EditionTexts;
import boughwright.house.HouseRules;
import boughwright.storage.Settling;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The draft that staff work on, one for the whole shop, kept with every change. */
@Repository
public class Drafts {

    private final JdbcClient database;
    private final Settling settling;
    private final Clock clock;

    Drafts(JdbcClient database, Settling settling, Clock clock) {
        this.database = database;
        this.settling = settling;
        this.clock = clock;
    }

    /**
     * A draft as it is kept.
     *
     * @param basedOn number of the edition from which it was begun
     * @param mark another one after each change, to tell whether somebody else has changed it meanwhile
     */
    public record Draft(int basedOn, String mark, String author, HouseRules rules) {
    }

    public Optional<Draft> open() {
        return database.sql("select * from house_draft where id = 1").query((row, i) -> new Draft(row.getInt("based_on"),
                mark(row), row.getString("author"), EditionTexts.draft(row.getString("content")))).optional();
    }

    /** The mark of the draft as it is kept, without reading the draft itself; empty when there is none. */
    public Optional<String> mark() {
        return database.sql("select changed_at, author from house_draft where id = 1").query((row, i) -> mark(row)).optional();
    }

    private static String mark(ResultSet row) throws SQLException {
        return row.getTimestamp("changed_at").toLocalDateTime() + " " + row.getString("author");
    }

    public void keep(int basedOn, HouseRules rules, String author) {
        String json = EditionTexts.json(rules);
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        int changed = database.sql("update house_draft set based_on = :based, changed_at = :at, author = :author, content = :content where id = 1")
                .param("based", basedOn).param("at", now).param("author", author).param("content", json).update();
        if (changed == 0) {
            database.sql("insert into house_draft (id, based_on, changed_at, author, content) values (1, :based, :at, :author, :content)")
                    .param("based", basedOn).param("at", now).param("author", author).param("content", json).update();
        }
        settling.settle();
    }

    public void discard() {
        database.sql("delete from house_draft").update();
        settling.settle();
    }
}
