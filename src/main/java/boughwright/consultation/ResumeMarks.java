package boughwright.consultation;

import boughwright.storage.Settling;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Marks by which a browser that has lost its session, as when the server was started anew, takes up the consultations that were open in
 * it. A mark is 128 random bits which the browser alone keeps; here is only their hash. It ends with {@link #forget}, or {@link #LASTS}
 * after it was last used, so that a tablet that nobody could wipe opens nothing later.
 */
@Repository
public class ResumeMarks {

    /** From the last use on; longer than an idle tablet waits, and than the server takes to start. */
    public static final Duration LASTS = Duration.ofMinutes(10);

    private static final int BYTES = 16;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final JdbcClient database;
    private final Settling settling;

    ResumeMarks(JdbcClient database, Settling settling) {
        this.database = database;
        this.settling = settling;
    }

    /** A mark that nobody has, under which nothing is kept yet. */
    public static String fresh() {
        byte[] bits = new byte[BYTES];
        RANDOM.nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }

    /** Keeps that a consultation is open, as the latest of those under this mark; what has run out is thrown away. */
    public void open(String mark, String code) {
        LocalDateTime now = LocalDateTime.now(ZoneOffset.UTC);
        database.sql("delete from resume_mark where until < :now or hash = :hash and code = :code").param("now", now).param("hash", hash(mark))
                .param("code", code).update();
        try {
            database.sql("insert into resume_mark (hash, code, opened_at, until) values (:hash, :code, :now, :until)").param("hash", hash(mark))
                    .param("code", code).param("now", now).param("until", now.plus(LASTS)).update();
        } catch (DuplicateKeyException twice) {
            // The same tablet has opened it in two windows at once.
        }
        touch(mark);
        settling.settle();
    }

    /** Says that the mark is still in use. */
    public void touch(String mark) {
        database.sql("update resume_mark set until = :until where hash = :hash").param("hash", hash(mark))
                .param("until", LocalDateTime.now(ZoneOffset.UTC).plus(LASTS)).update();
    }

    /** Codes of the consultations that are open under a mark, the latest last. */
    public List<String> codes(String mark) {
        return database.sql("select code from resume_mark where hash = :hash and until >= :now order by opened_at, code").param("hash", hash(mark))
                .param("now", LocalDateTime.now(ZoneOffset.UTC)).query(String.class).list();
    }

    /** Nothing is open under this mark any more. */
    public void forget(String mark) {
        database.sql("delete from resume_mark where hash = :hash").param("hash", hash(mark)).update();
        settling.settle();
    }

    private static String hash(String mark) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(mark.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every JDK has SHA-256", impossible);
        }
    }
}
