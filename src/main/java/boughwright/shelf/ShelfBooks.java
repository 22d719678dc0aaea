package boughwright.shelf;

import boughwright.storage.Packed;
import boughwright.storage.Settling;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionTemplate;

/** The shelf in the database: its rows, and what was done to them. What a method has kept survives the loss of the process. */
@Repository
class ShelfBooks {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).withLocale(Locale.US);
    private static final int BATCH = 1_000;
    /** What staff do; the till and the folder do not make the shelf theirs, and an undoing is not undone. */
    private static final String BY_STAFF = "('WHOLE', 'STOCK', 'PRICE', 'EDIT', 'BULK')";
    private static final int LONGEST_WORDS = 120;

    private final JdbcTemplate jdbc;
    private final JdbcClient database;
    private final TransactionTemplate transaction;
    private final Settling settling;
    private final Clock clock;

    ShelfBooks(JdbcTemplate jdbc, TransactionTemplate transaction, Settling settling, Clock clock) {
        this.jdbc = jdbc;
        this.database = JdbcClient.create(jdbc);
        this.transaction = transaction;
        this.settling = settling;
        this.clock = clock;
    }

    /** A product's cells as they are kept. */
    record KeptRow(Map<String, String> cells, boolean gone) {
    }

    List<KeptRow> rows() {
        return database.sql("select cells, gone from product order by sku")
                .query((row, i) -> new KeptRow(cells(row.getString("cells")), row.getBoolean("gone"))).list();
    }

    /** Digests of the files that the kiosk was started with and took. */
    List<String> sources() {
        return database.sql("select source from shelf_event where source <> '' order by id desc fetch first 1 rows only").query(String.class).list();
    }

    /** Whether staff have changed anything that stands. */
    boolean touched() {
        return database.sql("select count(*) from shelf_event where not undone and what in " + BY_STAFF).query(Integer.class).single() > 0;
    }

    Optional<ShelfEvent> undoable() {
        return database.sql("select * from shelf_event where not undone and what in " + BY_STAFF + " order by id desc fetch first 1 rows only")
                .query(ShelfBooks::event).optional();
    }

    List<ShelfEvent> events(int most) {
        return database.sql("select * from shelf_event order by id desc fetch first :most rows only").param("most", most).query(ShelfBooks::event).list();
    }

    List<RowChange> changes(int event) {
        return database.sql("select changes from shelf_event where id = :id").param("id", event).query(String.class).optional()
                .map(ShelfBooks::changes).orElse(List.of());
    }

    /** When something was done, by the clock of the shop. */
    String moment(ShelfEvent event) {
        return event.madeAt().atZone(ZoneOffset.UTC).withZoneSameInstant(clock.getZone()).format(MOMENT);
    }

    LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /**
     * Keeps rows and the event that made them, all or nothing.
     *
     * @param known SKUs that have a row already
     * @param touched rows to be written, by SKU
     * @return the event as it stands then
     */
    ShelfEvent keep(Set<String> known, Map<String, Row> touched, List<RowChange> changes, ShelfEvent.Kind kind, String words, String author, String source) {
        List<Object[]> inserts = new ArrayList<>();
        List<Object[]> updates = new ArrayList<>();
        touched.forEach((sku, row) -> {
            String cells = text(new TreeMap<>(row.cells()));
            (known.contains(sku) ? updates : inserts).add(new Object[] {cells, row.gone(), sku});
        });
        int added = (int) changes.stream().filter(RowChange::comes).count();
        int gone = (int) changes.stream().filter(RowChange::goes).count();
        transaction.executeWithoutResult(status -> {
            batches("insert into product (cells, gone, sku) values (?, ?, ?)", inserts);
            batches("update product set cells = ?, gone = ? where sku = ?", updates);
            if (kind == ShelfEvent.Kind.TILL && joined(changes.size() - added - gone, author)) {
                return;
            }
            int id = database.sql("select coalesce(max(id), 0) + 1 from shelf_event").query(Integer.class).single();
            database.sql("""
                            insert into shelf_event (id, made_at, author, what, words, source, added, changed, gone, undone, changes)
                            values (:id, :made, :author, :what, :words, :source, :added, :changed, :gone, false, :changes)""")
                    .param("id", id).param("made", now()).param("author", author).param("what", kind.name())
                    .param("words", words.length() <= LONGEST_WORDS ? words : words.substring(0, LONGEST_WORDS - 1) + "…").param("source", source)
                    .param("added", added).param("changed", changes.size() - added - gone).param("gone", gone)
                    .param("changes", kind == ShelfEvent.Kind.TILL ? "" : Packed.of(text(changes))).update();
        });
        settling.settle();
        return events(1).get(0);
    }

    /** A till calls all day long: what it does without a break between is one event. */
    private boolean joined(int changed, String author) {
        List<ShelfEvent> newest = events(1);
        if (newest.isEmpty() || newest.get(0).kind() != ShelfEvent.Kind.TILL || !newest.get(0).author().equals(author)
                || !newest.get(0).madeAt().toLocalDate().equals(now().toLocalDate())) {
            return false;
        }
        database.sql("update shelf_event set changed = changed + :more, made_at = :made where id = :id").param("more", changed).param("made", now())
                .param("id", newest.get(0).id()).update();
        return true;
    }

    private void batches(String sql, List<Object[]> rows) {
        for (int from = 0; from < rows.size(); from += BATCH) {
            jdbc.batchUpdate(sql, rows.subList(from, Math.min(rows.size(), from + BATCH)));
        }
    }

    void undone(int event) {
        database.sql("update shelf_event set undone = true where id = :id").param("id", event).update();
        settling.settle();
    }

    private static ShelfEvent event(ResultSet row, int index) throws SQLException {
        return new ShelfEvent(row.getInt("id"), row.getTimestamp("made_at").toLocalDateTime(), row.getString("author"),
                ShelfEvent.Kind.valueOf(row.getString("what")), row.getString("words"), row.getInt("added"), row.getInt("changed"), row.getInt("gone"),
                row.getBoolean("undone"));
    }

    private static Map<String, String> cells(String json) {
        try {
            return JSON.readValue(json, new TypeReference<LinkedHashMap<String, String>>() { });
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("a row of the shelf could not be read", broken);
        }
    }

    private static List<RowChange> changes(String packed) {
        try {
            return packed.isEmpty() ? List.of() : JSON.readValue(Packed.open(packed), new TypeReference<List<RowChange>>() { });
        } catch (IOException broken) {
            throw new IllegalStateException("what was done to the shelf could not be read", broken);
        }
    }

    private static String text(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the shelf could not be written", impossible);
        }
    }
}
