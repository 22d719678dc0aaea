package boughwright.counter;

import boughwright.consultation.Interviews;
import boughwright.shelf.Reservations;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * What is kept of customers, for how long, and how it is given to them or erased. A consultation is forgotten with everything that bears
 * its code; what is left are sums of a day, which are nobody's own.
 */
@Repository
public class Keeping {

    private static final Logger LOG = LoggerFactory.getLogger(Keeping.class);
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Every table with a code in it, those first that others do not need. */
    static final List<String> TABLES = List.of("resume_mark", "plan_link", "consultation_note", "hold_line", "hold", "quote", "reserved", "blocked", "product_use", "proposal",
            "consultation");

    private final JdbcClient database;
    private final Interviews interviews;
    private final Reservations reservations;
    private final FigureBooks figures;
    private final ShopTerms terms;
    private final Transactions transactions;
    private final Settling settling;
    private final Clock clock;

    Keeping(JdbcClient database, Interviews interviews, Reservations reservations, FigureBooks figures, ShopTerms terms, Transactions transactions, Settling settling, Clock clock) {
        this.database = database;
        this.interviews = interviews;
        this.reservations = reservations;
        this.figures = figures;
        this.terms = terms;
        this.transactions = transactions;
        this.settling = settling;
        this.clock = clock;
    }

    /**
     * Erases a consultation and everything that bears its code; what was held for it goes back to the shelf.
     *
     * @param code may be typed with spaces and in capitals
     * @return whether there was one
     */
    public boolean erase(String code) {
        Optional<String> kept = interviews.open(code).map(c -> c.code());
        kept.ifPresent(c -> {
            transactions.run(() -> {
                Turn.take(database, c);
                figures.rememberOf(c);
                reservations.giveBack(c);
                TABLES.forEach(t -> database.sql("delete from " + t + " where code = :code").param("code", c).update());
                database.sql("update consultation set follows = null where follows = :code").param("code", c).update();
            });
            settling.settle();
        });
        return kept.isPresent();
    }

    /**
     * Everything that is kept under a code, as JSON: one list of rows for each table, with the columns' own names.
     *
     * @return empty when there is no such consultation
     */
    public Optional<String> export(String code) {
        return interviews.open(code).map(c -> {
            ObjectNode root = JSON.createObjectNode();
            root.put("code", c.code());
            for (String table : TABLES) {
                ArrayNode rows = root.putArray(table);
                database.sql("select * from " + table + " where code = :code").param("code", c.code()).query().listOfRows().forEach(row -> {
                    ObjectNode node = rows.addObject();
                    Map<String, Object> sorted = new TreeMap<>();
                    row.forEach((column, value) -> sorted.put(column.toLowerCase(Locale.ROOT), value));
                    // Links and resume marks are as good as keys; who has the export need not have those too.
                    List.of("token", "hash").forEach(sorted::remove);
                    sorted.forEach((column, value) -> node.put(column, value == null ? null : value.toString()));
                });
            }
            return root.toPrettyString();
        });
    }

    /**
     * Forgets consultations whose time is up: nothing is held for them, and nobody has touched them for as long as the shop's terms say.
     *
     * @return how many
     */
    public int forgetOld() {
        Terms now = terms.now();
        LocalDateTime today = Utc.now(clock);
        List<String> old = database.sql("""
                        select c.code from consultation c
                        where c.touched_at < case when exists (select 1 from hold_line l where l.code = c.code and l.collected > 0)
                                                  then cast(:collected as timestamp) else cast(:other as timestamp) end
                        and not exists (select 1 from hold h where h.code = c.code and h.state in ('HELD', 'READY', 'PARTLY'))
                        order by c.code""")
                .param("collected", today.minusDays(now.number(Terms.Number.KEEP_COLLECTED_DAYS)))
                .param("other", today.minusDays(now.number(Terms.Number.KEEP_OTHER_DAYS))).query(String.class).list();
        int forgotten = 0;
        for (String code : old) {
            try {
                forgotten += erase(code) ? 1 : 0;
            } catch (IllegalStateException another) {
                LOG.info("{}", another.getMessage());
            }
        }
        return forgotten;
    }
}
