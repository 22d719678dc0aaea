package boughwright.consultation;

import boughwright.measure.Units;
import boughwright.storage.Settling;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Consultations from their first answer on, before and after anything is proposed in them. What a method has kept and returned survives the
 * loss of the process.
 */
@Repository
public class Interviews {

    private static final int TRIES = 50;
    /** From the last tree of one year to the first of the next it is longer. */
    private static final Duration SEASON = Duration.ofDays(150);
    private static final int LONGEST_NICKNAME = 40;

    private final JdbcClient database;
    private final Settling settling;

    Interviews(JdbcClient database, Settling settling) {
        this.database = database;
        this.settling = settling;
    }

    /**
     * What a tablet knows of a consultation, all of which is kept at each answer.
     *
     * @param question where it stands; at most 20 characters
     * @param answers JSON of a brief that need not be whole, or empty
     * @param units in which lengths are said
     * @param language tag, such as {@code en}
     */
    public record State(String question, String answers, Units units, String language) {
    }

    /** Begins a consultation under a new code. */
    public Consultation begin(State state) {
        return begin(state, Optional.empty());
    }

    /** @param follows code of the consultation that this one takes up again or is a copy of */
    public Consultation begin(State state, Optional<String> follows) {
        for (int i = 0; i < TRIES; i++) {
            LocalDateTime now = now();
            Consultation begun = new Consultation(Codes.any(), now, now, "", state.language(), state.units(), state.question(), state.answers(), follows);
            try {
                database.sql("""
                                insert into consultation (code, begun_at, touched_at, nickname, language, units, question, answers, follows)
                                values (:code, :now, :now, '', :language, :units, :question, :answers, :follows)""")
                        .param("code", begun.code()).param("now", now).param("language", state.language()).param("units", word(state.units()))
                        .param("question", state.question()).param("answers", state.answers()).param("follows", follows.orElse(null)).update();
                settling.settle();
                return begun;
            } catch (DuplicateKeyException taken) {
                // Another consultation has these words already; others are as good.
            }
        }
        throw new IllegalStateException("no free code was found in " + TRIES + " tries");
    }

    /** Keeps an answer, or that the customer went on or back; nothing happens when the consultation was erased meanwhile. */
    public void keep(String code, State state) {
        database.sql("""
                        update consultation set question = :question, answers = :answers, units = :units, language = :language, touched_at = :now
                        where code = :code""")
                .param("code", code).param("question", state.question()).param("answers", state.answers()).param("units", word(state.units()))
                .param("language", state.language()).param("now", now()).update();
        // Not settled: what is committed outlives the process without it (storage/Storage), and two hundred tablets answer at once.
    }

    /** Keeps where it stands when nothing else has changed. */
    public void at(String code, String question) {
        database.sql("update consultation set question = :question, touched_at = :now where code = :code and question <> :question")
                .param("code", code).param("question", question).param("now", now()).update();
    }

    /** Keeps in which units lengths are said from now on. */
    public void units(String code, Units units) {
        database.sql("update consultation set units = :units, touched_at = :now where code = :code").param("code", code).param("units", word(units))
                .param("now", now()).update();
    }

    /** Says that the customer is still with it. */
    public void touch(String code) {
        database.sql("update consultation set touched_at = :now where code = :code").param("code", code).param("now", now()).update();
    }

    /** @param name shortened to what fits; empty for none */
    public void nickname(String code, String name) {
        String plain = name.strip().replaceAll("\\s+", " ");
        database.sql("update consultation set nickname = :name, touched_at = :now where code = :code").param("code", code)
                .param("name", plain.substring(0, Math.min(LONGEST_NICKNAME, plain.length()))).param("now", now()).update();
        settling.settle();
    }

    /** Says that it takes another up again, such as last year's. */
    public void follow(String code, String earlier) {
        database.sql("update consultation set follows = :earlier where code = :code").param("code", code).param("earlier", earlier).update();
        settling.settle();
    }

    /** The code may be typed with spaces and in capitals. */
    public Optional<Consultation> open(String code) {
        return Codes.read(code).flatMap(c -> database.sql("select * from consultation where code = :code").param("code", c).query(Interviews::row).optional());
    }

    /** Whether it was begun so long ago that its customer comes for another year's tree. */
    public boolean ofAnEarlierSeason(Consultation consultation) {
        return consultation.begunAt().isBefore(now().minus(SEASON));
    }

    private static String word(Units units) {
        return units.name().toLowerCase(Locale.ROOT);
    }

    /** As exactly as databases keep it. */
    private static LocalDateTime now() {
        return LocalDateTime.now(ZoneOffset.UTC).truncatedTo(ChronoUnit.MICROS);
    }

    private static Consultation row(ResultSet row, int number) throws SQLException {
        return new Consultation(row.getString("code"), row.getTimestamp("begun_at").toLocalDateTime(), row.getTimestamp("touched_at").toLocalDateTime(),
                row.getString("nickname"), row.getString("language"), Units.valueOf(row.getString("units").toUpperCase(Locale.ROOT)),
                row.getString("question"), row.getString("answers"), Optional.ofNullable(row.getString("follows")));
    }
}
