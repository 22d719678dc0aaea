package boughwright.publishing;

import boughwright.house.EditionTexts;
import boughwright.house.HouseRules;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The draft that staff work on, one for the whole shop, kept with every change. */
@Repository
public class Drafts {

    private final JdbcClient database;
    private final Transactions transactions;
    private final Settling settling;
    private final Clock clock;

    Drafts(JdbcClient database, Transactions transactions, Settling settling, Clock clock) {
        this.database = database;
        this.transactions = transactions;
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
        return database.sql("select version, changed_at, author from house_draft where id = 1").query((row, i) -> mark(row)).optional();
    }

    private static String mark(ResultSet row) throws SQLException {
        // The version begins anew with each draft.
        return row.getLong("version") + " " + row.getTimestamp("changed_at").toLocalDateTime() + " " + row.getString("author");
    }

    /**
     * Keeps the draft in the place of the one that is known, and does nothing when that is not the present one any more.
     *
     * @param known the mark of the draft that was changed; empty for the first of a draft
     * @return the mark of what is kept now; empty when somebody else, on this kiosk or another, has changed or thrown away the draft meanwhile
     */
    public Optional<String> keep(int basedOn, HouseRules rules, String author, Optional<String> known) {
        String json = EditionTexts.json(rules);
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        Optional<String> kept;
        try {
            kept = transactions.run(() -> {
                Optional<String> present = present();
                if (!present.equals(known)) {
                    return Optional.<String>empty();
                }
                if (present.isPresent()) {
                    database.sql("""
                                    update house_draft set version = version + 1, based_on = :based, changed_at = :at, author = :author, content = :content
                                    where id = 1""")
                            .param("based", basedOn).param("at", now).param("author", author).param("content", json).update();
                } else {
                    database.sql("insert into house_draft (id, version, based_on, changed_at, author, content) values (1, 1, :based, :at, :author, :content)")
                            .param("based", basedOn).param("at", now).param("author", author).param("content", json).update();
                }
                return mark();
            });
        } catch (DuplicateKeyException begunElsewhere) {
            return Optional.empty();
        }
        settling.settle();
        return kept;
    }

    /**
     * Throws the draft away that is known.
     *
     * @param known its mark
     * @return false when somebody else has changed it meanwhile; then it stays
     */
    public boolean discard(String known) {
        boolean gone = transactions.run(() -> {
            Optional<String> present = present();
            if (present.equals(Optional.of(known))) {
                database.sql("delete from house_draft where id = 1").update();
            }
            return present.isEmpty() || present.get().equals(known);
        });
        settling.settle();
        return gone;
    }

    /** The mark of the draft, which nobody else can change until this transaction ends. */
    private Optional<String> present() {
        return database.sql("select version, changed_at, author from house_draft where id = 1 for update").query((row, i) -> mark(row)).optional();
    }
}
