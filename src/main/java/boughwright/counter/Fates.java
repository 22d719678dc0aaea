package boughwright.counter;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What became of consultations, read from what is kept of them. */
@Repository
class Fates {

    private static final String FATES = """
            select c.code, c.begun_at,
                   (select max(revision) from proposal p where p.code = c.code and p.outcome = 'kit') as planned,
                   (select max(revision) from proposal p where p.code = c.code and p.outcome = 'conflict') as clashed,
                   (select max(number) from quote q where q.code = c.code) as quoted,
                   (select count(*) from hold h where h.code = c.code and (h.state in ('HELD', 'READY', 'PARTLY', 'COLLECTED'))) as taken,
                   (select coalesce(sum(collected), 0) from hold_line l where l.code = c.code) as collected,
                   coalesce((select q.total from quote q where q.code = c.code and q.number = (select max(number) from quote where code = c.code)),
                            (select p.total from proposal p where p.code = c.code and p.revision = (select max(revision) from proposal where code = c.code))) as total
            from consultation c
            """;

    private final JdbcClient database;
    private final ZoneId zone;

    Fates(JdbcClient database, Clock clock) {
        this.database = database;
        this.zone = clock.getZone();
    }

    /** Of consultations begun on these days, both included. */
    List<Fate> between(LocalDate from, LocalDate to) {
        return database.sql(FATES + " where c.begun_at >= :from and c.begun_at < :to order by c.begun_at, c.code")
                .param("from", utc(from)).param("to", utc(to.plusDays(1))).query(this::row).list();
    }

    Optional<Fate> of(String code) {
        return database.sql(FATES + " where c.code = :code").param("code", code).query(this::row).optional();
    }

    /** How often each of these became of a product in consultations begun on these days: {@code what}, SKU and count. */
    List<Map<String, Object>> products(LocalDate from, LocalDate to) {
        return database.sql("""
                        select u.what, u.sku, count(*) as many from product_use u join consultation c on c.code = u.code
                        where c.begun_at >= :from and c.begun_at < :to group by u.what, u.sku
                        union all
                        select 'BLOCKED', b.sku, count(distinct b.code) from blocked b join consultation c on c.code = b.code
                        where c.begun_at >= :from and c.begun_at < :to group by b.sku""")
                .param("from", utc(from)).param("to", utc(to.plusDays(1))).query().listOfRows();
    }

    /** The same of one consultation. */
    List<Map<String, Object>> products(String code) {
        return database.sql("""
                        select what, sku, 1 as many from product_use where code = :code
                        union all
                        select 'BLOCKED', sku, 1 from blocked where code = :code group by sku""")
                .param("code", code).query().listOfRows();
    }

    private LocalDateTime utc(LocalDate day) {
        return day.atStartOfDay(zone).withZoneSameInstant(ZoneOffset.UTC).toLocalDateTime();
    }

    private Fate row(ResultSet row, int number) throws SQLException {
        LocalDate day = row.getObject("begun_at", LocalDateTime.class).atZone(ZoneOffset.UTC).withZoneSameInstant(zone).toLocalDate();
        boolean collected = row.getInt("collected") > 0;
        return new Fate(row.getString("code"), day, row.getObject("planned") != null, row.getObject("clashed") != null, row.getObject("quoted") != null,
                collected || row.getInt("taken") > 0, collected, Optional.ofNullable(row.getBigDecimal("total")));
    }
}
