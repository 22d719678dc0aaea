package boughwright.shelf;

import boughwright.text.Text;
import boughwright.storage.Changes;
import boughwright.storage.Packed;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongFunction;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The shelf in the database: its rows, and what was done to them. What a method has kept survives the loss of the process. */
@Repository
class ShelfBooks {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int BATCH = 1_000;
    /** What staff do; the till and the folder do not make the shelf theirs, and an undoing is not undone. */
    private static final String BY_STAFF = "('WHOLE', 'STOCK', 'PRICE', 'EDIT', 'BULK')";
    private static final int LONGEST_WORDS = 120;
    /** Of the table {@code change_count}. */
    static final String TOPIC = "shelf";

    private final JdbcTemplate jdbc;
    private final JdbcClient database;
    private final Transactions transactions;
    private final Changes changes;
    private final Settling settling;
    private final Clock clock;

    ShelfBooks(JdbcTemplate jdbc, Transactions transactions, Changes changes, Settling settling, Clock clock) {
        this.jdbc = jdbc;
        this.database = JdbcClient.create(jdbc);
        this.transactions = transactions;
        this.changes = changes;
        this.settling = settling;
        this.clock = clock;
    }

    /**
     * Runs work that changes something of the shelf, in a transaction and alone among all kiosks on this database; it may be run again when
     * another one was in its way.
     *
     * @param work given the count of this change, which rises from one to the next
     */
    <T> T alone(LongFunction<T> work) {
        T answer = transactions.run(() -> work.apply(changes.bump(TOPIC)));
        settling.settle();
        return answer;
    }

    /** Calls when what {@link #alone} does is committed, and never when it is not. */
    void whenCommitted(Runnable listener) {
        transactions.whenCommitted(listener);
    }

    /** Calls when another kiosk has changed something. */
    void whenChangedElsewhere(Runnable listener) {
        changes.whenChanged(TOPIC, listener);
    }

    /** The count of the newest change; rows that are read after this may be newer, and are never older. */
    long version() {
        return changes.version(TOPIC);
    }

    /** A product's cells as they are kept. */
    record KeptRow(Map<String, String> cells, boolean gone) {
    }

    /** Rows that were written by changes after that of a count; those of before there were counts have 0. */
    List<KeptRow> rowsSince(long version) {
        return database.sql("select cells, gone from product where version > :version order by sku").param("version", version)
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

    /** Whether staff have brought in a whole catalogue that stands. */
    boolean ownGoods() {
        return database.sql("select count(*) from shelf_event where not undone and what = 'WHOLE'").query(Integer.class).single() > 0;
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
        return Text.moment(event.madeAt().atZone(ZoneOffset.UTC).withZoneSameInstant(clock.getZone()).toLocalDateTime());
    }

    LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /**
     * Keeps rows and the event that made them; a part of what is done {@link #alone}.
     *
     * @param version of this change
     * @param known SKUs that have a row already
     * @param touched rows to be written, by SKU
     * @return the event as it stands then
     */
    ShelfEvent keep(long version, Set<String> known, Map<String, Row> touched, List<RowChange> changes, ShelfEvent.Kind kind, String words, String author, String source) {
        List<Object[]> inserts = new ArrayList<>();
        List<Object[]> updates = new ArrayList<>();
        touched.forEach((sku, row) -> {
            String cells = text(new TreeMap<>(row.cells()));
            (known.contains(sku) ? updates : inserts).add(new Object[] {cells, row.gone(), version, sku});
        });
        int added = (int) changes.stream().filter(RowChange::comes).count();
        int gone = (int) changes.stream().filter(RowChange::goes).count();
        batches("insert into product (cells, gone, version, sku) values (?, ?, ?, ?)", inserts);
        batches("update product set cells = ?, gone = ?, version = ? where sku = ?", updates);
        count(touched);
        int changed = changes.size() - added - gone;
        if (kind != ShelfEvent.Kind.TILL || !joined(kind, changed, author)) {
            note(kind, words, author, source, added, changed, gone, kind == ShelfEvent.Kind.TILL ? "" : Packed.of(text(changes)));
        }
        return events(1).get(0);
    }

    /** Keeps the numbers that packs are promised from as the cells are. */
    private void count(Map<String, Row> touched) {
        List<Object[]> counts = new ArrayList<>();
        touched.forEach((sku, row) -> counts.add(new Object[] {row.product().stock(), sku}));
        List<Object[]> missing = new ArrayList<>();
        for (int from = 0; from < counts.size(); from += BATCH) {
            List<Object[]> part = counts.subList(from, Math.min(counts.size(), from + BATCH));
            int[] updated = jdbc.batchUpdate("update stock set on_hand = ? where sku = ?", part);
            for (int i = 0; i < updated.length; i++) {
                if (updated[i] == 0) {
                    missing.add(part.get(i));
                }
            }
        }
        batches("insert into stock (on_hand, sku, held) values (?, ?, 0)", missing);
    }

    /** Numbers for those products that have none yet, as after an upgrade; a part of what is done {@link #alone}. */
    void countAll(Map<String, Row> rows) {
        Set<String> counted = new HashSet<>(database.sql("select sku from stock").query(String.class).list());
        Map<String, Row> missing = new TreeMap<>(rows);
        missing.keySet().removeAll(counted);
        if (!missing.isEmpty()) {
            count(missing);
        }
    }

    /** Packs that are promised to somebody, by SKU. */
    Map<String, Integer> promised() {
        Map<String, Integer> promised = new HashMap<>();
        database.sql("select sku, held from stock where held > 0").query(row -> {
            promised.put(row.getString("sku"), row.getInt("held"));
        });
        return promised;
    }

    /**
     * Takes packs off what is on hand, within the transaction of the caller.
     *
     * @param version of this change
     * @param packs by SKU
     */
    void sold(long version, Map<String, Integer> packs) {
        packs.forEach((sku, count) -> database.sql("select cells from product where sku = :sku").param("sku", sku).query(String.class).optional()
                .ifPresent(json -> {
                    Map<String, String> cells = new TreeMap<>(cells(json));
                    int left = Math.max(0, Integer.parseInt(cells.getOrDefault(Shelf.STOCK, "0")) - count);
                    cells.put(Shelf.STOCK, String.valueOf(left));
                    jdbc.update("update product set cells = ?, version = ? where sku = ?", text(cells), version, sku);
                    jdbc.update("update stock set on_hand = ? where sku = ?", left, sku);
                }));
        if (!packs.isEmpty() && !joined(ShelfEvent.Kind.COUNTER, packs.size(), "")) {
            note(ShelfEvent.Kind.COUNTER, "", "", "", 0, packs.size(), 0, "");
        }
    }

    private void note(ShelfEvent.Kind kind, String words, String author, String source, int added, int changed, int gone, String changes) {
        int id = database.sql("select coalesce(max(id), 0) + 1 from shelf_event").query(Integer.class).single();
        database.sql("""
                        insert into shelf_event (id, made_at, author, what, words, source, added, changed, gone, undone, changes)
                        values (:id, :made, :author, :what, :words, :source, :added, :changed, :gone, false, :changes)""")
                .param("id", id).param("made", now()).param("author", author).param("what", kind.name())
                .param("words", words.length() <= LONGEST_WORDS ? words : words.substring(0, LONGEST_WORDS - 1) + "…").param("source", source)
                .param("added", added).param("changed", changed).param("gone", gone).param("changes", changes).update();
    }

    /** A till calls all day long, and so does the counter: what one of them does without a break between is one event. */
    private boolean joined(ShelfEvent.Kind kind, int changed, String author) {
        List<ShelfEvent> newest = events(1);
        if (newest.isEmpty() || newest.get(0).kind() != kind || !newest.get(0).author().equals(author)
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
