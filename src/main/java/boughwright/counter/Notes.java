package boughwright.counter;

import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Notes that staff keep with consultations, for each other's eyes. */
@Repository
public class Notes {

    /** Characters of a note. */
    public static final int LONGEST = 1_000;

    private final JdbcClient database;
    private final Transactions transactions;
    private final Settling settling;
    private final Clock clock;

    Notes(JdbcClient database, Transactions transactions, Settling settling, Clock clock) {
        this.database = database;
        this.transactions = transactions;
        this.settling = settling;
        this.clock = clock;
    }

    /** @param words not blank, {@link #LONGEST} at most */
    public void add(String code, String words, String author) {
        String plain = words.strip();
        if (plain.isEmpty() || plain.length() > LONGEST) {
            throw new IllegalArgumentException("a note of " + plain.length() + " characters");
        }
        transactions.run(() -> {
            Turn.take(database, code);
            database.sql("""
                            insert into consultation_note (code, number, made_at, author, words)
                            values (:code, (select coalesce(max(number), 0) + 1 from consultation_note where code = :code), :at, :author, :words)""")
                    .param("code", code).param("at", Utc.now(clock)).param("author", author).param("words", plain).update();
        });
        settling.settle();
    }

    /** The newest first. */
    public List<Note> of(String code) {
        return database.sql("select number, made_at, author, words from consultation_note where code = :code order by number desc").param("code", code)
                .query((row, i) -> new Note(row.getInt("number"), row.getObject("made_at", LocalDateTime.class), row.getString("author"), row.getString("words"))).list();
    }

    public void remove(String code, int number) {
        database.sql("delete from consultation_note where code = :code and number = :number").param("code", code).param("number", number).update();
        settling.settle();
    }
}
