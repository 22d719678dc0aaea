package boughwright.shelf;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which consultations a product has been in, and what became of it there. */
@Repository
public class Uses {

    private final JdbcTemplate jdbc;
    private final JdbcClient database;

    Uses(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
        this.database = JdbcClient.create(jdbc);
    }

    /** PROPOSED: it stood in a kit; CHOSEN: a hand put it or held it there; SWAPPED_OUT: a hand put another in its place. */
    public enum Kind { PROPOSED, CHOSEN, SWAPPED_OUT }

    /**
     * Adds to what is known of a consultation; what is known already counts once. Not settled: it is told, not relied on.
     *
     * @param at in UTC
     */
    public void note(String code, Map<Kind, Set<String>> skus, LocalDateTime at) {
        Set<String> noted = new HashSet<>(database.sql("select what || ' ' || sku from product_use where code = :code").param("code", code)
                .query(String.class).list());
        List<Object[]> rows = new ArrayList<>();
        skus.forEach((kind, each) -> each.stream().filter(sku -> !noted.contains(kind.name() + " " + sku))
                .forEach(sku -> rows.add(new Object[] {sku, code, kind.name(), at})));
        if (!rows.isEmpty()) {
            try {
                jdbc.batchUpdate("insert into product_use (sku, code, what, first_at) values (?, ?, ?, ?)", rows);
            } catch (DuplicateKeyException there) {
                // Another tablet keeps the same consultation at this moment; what is missed is noted with the next change.
            }
        }
    }

    /** Codes of the consultations by what became of the product there, the newest first; at most so many each. */
    public Map<Kind, List<String>> of(String sku, int most) {
        Map<Kind, List<String>> codes = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            codes.put(kind, database.sql("select code from product_use where sku = :sku and what = :what order by first_at desc, code fetch first :most rows only")
                    .param("sku", sku).param("what", kind.name()).param("most", most).query(String.class).list());
        }
        return codes;
    }

    /** In how many consultations each of these became of the product. */
    public Map<Kind, Integer> counts(String sku) {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            counts.put(kind, database.sql("select count(*) from product_use where sku = :sku and what = :what").param("sku", sku).param("what", kind.name())
                    .query(Integer.class).single());
        }
        return counts;
    }
}
