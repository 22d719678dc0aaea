package boughwright.counter;

import boughwright.storage.Settling;
import java.time.Clock;
import java.time.LocalDateTime;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionTemplate;

/** The shop's terms as the manager has set them; those that are usual until then. The same on all kiosks of one database. */
@Repository
public class ShopTerms {

    private final JdbcClient database;
    private final TransactionTemplate transaction;
    private final Settling settling;
    private final Clock clock;

    ShopTerms(JdbcClient database, TransactionTemplate transaction, Settling settling, Clock clock) {
        this.database = database;
        this.transaction = transaction;
        this.settling = settling;
        this.clock = clock;
    }

    public Terms now() {
        return database.sql("select content from shop_terms where id = 1").query(String.class).optional().map(Terms::read).orElse(Terms.USUAL);
    }

    /** Quotes and holds that are made already keep the terms under which they were made. */
    public void change(Terms terms, String author) {
        transaction.executeWithoutResult(status -> {
            LocalDateTime at = Utc.now(clock);
            int there = database.sql("update shop_terms set content = :content, changed_at = :at, author = :author where id = 1").param("content", terms.json())
                    .param("at", at).param("author", author).update();
            if (there == 0) {
                database.sql("insert into shop_terms (id, content, changed_at, author) values (1, :content, :at, :author)").param("content", terms.json())
                        .param("at", at).param("author", author).update();
            }
        });
        settling.settle();
    }
}
