package boughwright.counter;

import java.time.Clock;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Products of which there was too little for somebody. Told to the manager, not relied on. */
@Repository
public class Blocked {

    /** HOLD: it could not be held. PICK: it was not where it should be. PLAN: a plan that was kept had to do without it. */
    public enum Kind { HOLD, PICK, PLAN }

    private final JdbcClient database;
    private final Clock clock;

    Blocked(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** The same again counts once. */
    public void note(String sku, String code, Kind kind) {
        int there = database.sql("select count(*) from blocked where sku = :sku and code = :code and what = :what").param("sku", sku).param("code", code)
                .param("what", kind.name()).query(Integer.class).single();
        if (there == 0) {
            try {
                database.sql("insert into blocked (sku, code, what, made_at) values (:sku, :code, :what, :at)").param("sku", sku).param("code", code)
                        .param("what", kind.name()).param("at", Utc.now(clock)).update();
            } catch (DuplicateKeyException noted) {
                // Another tablet has met the same at this moment.
            }
        }
    }
}
