package boughwright.counter;

import boughwright.consultation.Consultation;
import boughwright.consultation.Consultations;
import boughwright.consultation.Interviews;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All consultations as the counter sees them: found, listed, copied. */
@Repository
public class Counter {

    private static final String ENTRIES = """
            select c.code, c.nickname, c.begun_at, c.touched_at, coalesce(p.brief, c.answers) as brief, coalesce(p.revision, 0) as revision, p.total, p.outcome,
                   q.number as quote, h.state as hold, h.ends_at,
                   case when exists (select 1 from hold_line l where l.code = c.code and l.collected > 0) then 1 else 0 end as collected
            from consultation c
            left join proposal p on p.code = c.code and p.revision = (select max(revision) from proposal where code = c.code)
            left join quote q on q.code = c.code and q.number = (select max(number) from quote where code = c.code)
            left join hold h on h.code = c.code and h.number = (select max(number) from hold where code = c.code)
            """;

    private final JdbcClient database;
    private final Consultations consultations;
    private final Interviews interviews;

    Counter(JdbcClient database, Consultations consultations, Interviews interviews) {
        this.database = database;
        this.consultations = consultations;
        this.interviews = interviews;
    }

    /**
     * Those touched last, the latest first.
     *
     * @param text part of a code or a nickname, in any case; empty for all
     */
    public List<Entry> find(String text, int most) {
        String part = "%" + text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-").replace("%", "").replace("_", "") + "%";
        String name = "%" + text.strip().toLowerCase(Locale.ROOT).replace("%", "").replace("_", "") + "%";
        return database.sql(ENTRIES + " where c.code like :part or lower(c.nickname) like :name order by c.touched_at desc, c.code fetch first :most rows only")
                .param("part", part).param("name", name).param("most", most).query(Counter::row).list();
    }

    /** One of them; the code may be typed with spaces and in capitals. */
    public Optional<Entry> entry(String code) {
        return interviews.open(code).flatMap(c -> database.sql(ENTRIES + " where c.code = :code").param("code", c.code()).query(Counter::row).optional());
    }

    private static Entry row(ResultSet row, int number) throws SQLException {
        return new Entry(row.getString("code"), row.getString("nickname"), row.getObject("begun_at", LocalDateTime.class), row.getObject("touched_at", LocalDateTime.class),
                row.getString("brief"), row.getInt("revision"), Optional.ofNullable(row.getBigDecimal("total")), state(row),
                Optional.ofNullable(row.getObject("ends_at", LocalDateTime.class)).filter(e -> open(row)));
    }

    private static boolean open(ResultSet row) {
        try {
            String hold = row.getString("hold");
            return hold != null && Hold.State.valueOf(hold).open();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Entry.State state(ResultSet row) throws SQLException {
        String hold = row.getString("hold");
        if (open(row)) {
            return hold.equals(Hold.State.HELD.name()) ? Entry.State.HELD : Entry.State.READY;
        }
        if (row.getInt("collected") == 1) {
            return Entry.State.COLLECTED;
        }
        if (row.getObject("quote") != null) {
            return Entry.State.QUOTED;
        }
        String outcome = row.getString("outcome");
        return outcome == null ? Entry.State.ASKING : outcome.equals("kit") ? Entry.State.PLANNED : Entry.State.CLASH;
    }

    /**
     * The same wishes under a code of its own, to be changed without touching the first.
     *
     * @return empty when there is no such consultation
     */
    public Optional<String> copy(String code) {
        Optional<Consultation> first = interviews.open(code);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        Consultation was = first.get();
        String copy = interviews.begin(new Interviews.State(was.question(), was.answers(), was.units(), was.language()), Optional.of(was.code())).code();
        if (!was.nickname().isEmpty()) {
            interviews.nickname(copy, was.nickname());
        }
        Optional<Reopened> plan = consultations.reopen(was.code());
        plan.ifPresent(p -> {
            Saved saved = p.saved();
            consultations.go(copy, saved.brief(), p.outcome());
        });
        return Optional.of(copy);
    }
}
