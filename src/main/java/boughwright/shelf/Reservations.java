package boughwright.shelf;

import boughwright.storage.Changes;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Packs that are promised to somebody. No pack is promised twice: each promise is one conditional update of the product's row, which the
 * database serialises, on whichever kiosk it is made. Every method works within the transaction of its caller and is worth nothing when
 * that one is taken back. Products are always touched in the order of their SKUs, so that two promises do not wait for each other crosswise.
 */
@Component
public class Reservations {

    /** Of the table {@code change_count}. */
    public static final String TOPIC = "stock";

    private final JdbcClient database;
    private final JdbcTemplate jdbc;
    private final Changes changes;
    private final Shelf shelf;

    Reservations(JdbcTemplate jdbc, Changes changes, Shelf shelf) {
        this.jdbc = jdbc;
        this.database = JdbcClient.create(jdbc);
        this.changes = changes;
        this.shelf = shelf;
        changes.whenChanged(TOPIC, shelf::promisesChanged);
    }

    /**
     * Promises packs to a code, beside what it has already.
     *
     * @param packs by SKU, each at least 1
     * @return what is too scarce, by SKU, and how many packs of it could be had; empty when all are promised. When it is not empty
     *         the caller must take its transaction back: some of the others may be promised
     */
    public SortedMap<String, Integer> take(String code, SortedMap<String, Integer> packs) {
        SortedMap<String, Integer> scarce = new TreeMap<>();
        packs.forEach((sku, count) -> {
            int taken = database.sql("update stock set held = held + :count where sku = :sku and on_hand - held >= :count").param("count", count)
                    .param("sku", sku).update();
            if (taken == 0) {
                scarce.put(sku, left(sku));
            } else if (scarce.isEmpty()) {
                add(code, sku, count);
            }
        });
        if (scarce.isEmpty() && !packs.isEmpty()) {
            tell();
        }
        return scarce;
    }

    /** Packs that nobody has been promised; never below 0. */
    public int left(String sku) {
        return database.sql("select on_hand - held from stock where sku = :sku").param("sku", sku).query(Integer.class).optional().map(n -> Math.max(0, n)).orElse(0);
    }

    private void add(String code, String sku, int count) {
        int there = database.sql("update reserved set packs = packs + :count where code = :code and sku = :sku").param("count", count).param("code", code)
                .param("sku", sku).update();
        if (there == 0) {
            database.sql("insert into reserved (code, sku, packs) values (:code, :sku, :count)").param("code", code).param("sku", sku)
                    .param("count", count).update();
        }
    }

    /** What a code has been promised, by SKU. */
    public SortedMap<String, Integer> of(String code) {
        SortedMap<String, Integer> packs = new TreeMap<>();
        database.sql("select sku, packs from reserved where code = :code").param("code", code).query(row -> {
            packs.put(row.getString("sku"), row.getInt("packs"));
        });
        return packs;
    }

    /**
     * Gives promised packs back to the shelf; of what was not promised, nothing is given.
     *
     * @param packs by SKU, each at least 1
     */
    public void giveBack(String code, SortedMap<String, Integer> packs) {
        lower(code, packs).forEach((sku, count) -> jdbc.update("update stock set held = held - ? where sku = ?", count, sku));
        tell();
    }

    /** Everything that a code was promised goes back to the shelf. */
    public void giveBack(String code) {
        SortedMap<String, Integer> all = of(code);
        if (!all.isEmpty()) {
            giveBack(code, all);
        }
    }

    /** Promised packs leave the shop: they are neither promised nor on hand any more. */
    public void handOver(String code, SortedMap<String, Integer> packs) {
        // First of all: who changes the shelf meanwhile waits here, and not crosswise for the rows below.
        long version = changes.bump(ShelfBooks.TOPIC);
        Map<String, Integer> handed = lower(code, packs);
        handed.forEach((sku, count) -> jdbc.update("update stock set held = held - ? where sku = ?", count, sku));
        shelf.sold(version, handed);
        tell();
    }

    /** Promised packs that were not where they should be: they are neither promised nor, for all anybody knows, on hand. */
    public void missing(String code, String sku, int packs) {
        handOver(code, new TreeMap<>(Map.of(sku, packs)));
    }

    /** Takes packs off what a code was promised, as far as there are. @return how many of each */
    private Map<String, Integer> lower(String code, SortedMap<String, Integer> packs) {
        Map<String, Integer> lowered = new LinkedHashMap<>();
        packs.forEach((sku, count) -> {
            int promised = database.sql("select packs from reserved where code = :code and sku = :sku for update").param("code", code).param("sku", sku)
                    .query(Integer.class).optional().orElse(0);
            int back = Math.min(promised, count);
            if (back == 0) {
                return;
            }
            if (back == promised) {
                jdbc.update("delete from reserved where code = ? and sku = ?", code, sku);
            } else {
                jdbc.update("update reserved set packs = packs - ? where code = ? and sku = ?", back, code, sku);
            }
            lowered.put(sku, back);
        });
        return lowered;
    }

    /** Last in the transaction, since those of one topic wait for each other from there on. */
    private void tell() {
        changes.bump(TOPIC);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                shelf.promisesChanged();
            }
        });
    }
}
