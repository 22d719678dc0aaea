package boughwright.shelf;

import boughwright.catalogue.CatalogueFault;
import boughwright.text.Text;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The door for the shop's till: stock and prices, signed with a key, each call once. Safe for several threads.
 *
 * <p>A call bears a mark of its own; the same call with the same mark again, as after a broken line, is answered as before and does nothing
 * more (as in the IETF draft "The Idempotency-Key HTTP Header Field", from memory). Marks are remembered for a week.
 */
@Component
public class Till {

    /** How long a mark may be. */
    public static final int LONGEST_MARK = 200;

    private static final Duration REMEMBERED = Duration.ofDays(7);

    private final JdbcClient database;
    private final ShelfBooks books;
    private final Shelf shelf;

    Till(JdbcClient database, ShelfBooks books, Shelf shelf) {
        this.database = database;
        this.books = books;
        this.shelf = shelf;
    }

    /** What came of a call. */
    public sealed interface Answer {

        /**
         * Everything it says is so now.
         *
         * @param changed products that were otherwise before
         * @param again whether the same call was answered before
         */
        record Done(int changed, boolean again) implements Answer {
        }

        /** Nothing has changed. The line of a fault is the place in the call, from 1. */
        record Refused(List<CatalogueFault> faults) implements Answer {
        }

        /** Another call bore this mark; nothing has changed. */
        record OtherCall() implements Answer {
        }
    }

    /** Makes a key, which takes the place of the one before. It is told this once; what is kept cannot be turned back into it. */
    public String newKey(String author) {
        byte[] bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        return books.alone(version -> {
            database.sql("delete from till_key").update();
            database.sql("insert into till_key (id, hash, made_at, author) values (1, :hash, :made, :author)").param("hash", Shelf.digest(key))
                    .param("made", books.now()).param("author", author).update();
            return key;
        });
    }

    /** No key opens any more. */
    public void takeAway() {
        books.alone(version -> database.sql("delete from till_key").update());
    }

    /** Who made the key that opens now, and when. */
    public Optional<String> keyMadeBy() {
        return database.sql("select author from till_key where id = 1").query(String.class).optional();
    }

    /** Whether a key opens. A key has 256 random bits, so a plain digest of it is safe to keep. */
    public boolean opens(String key) {
        return database.sql("select hash from till_key where id = 1").query(String.class).optional()
                .filter(hash -> MessageDigest.isEqual(hash.getBytes(StandardCharsets.UTF_8), Shelf.digest(key).getBytes(StandardCharsets.UTF_8))).isPresent();
    }

    /**
     * Takes stock and prices, all of the call or nothing.
     *
     * @param mark of the call
     * @param body of the call, to know it again by
     * @param lines cells by place in the call, from 1: sku or gtin, and stock or price or both
     */
    public Answer put(String mark, String body, SortedMap<Integer, Map<String, String>> lines) {
        return books.alone(version -> answer(mark, Shelf.digest(body), lines));
    }

    private Answer answer(String mark, String digest, SortedMap<Integer, Map<String, String>> lines) {
        Optional<Kept> kept = database.sql("select digest, answer from till_call where id = :id").param("id", mark)
                .query((row, i) -> new Kept(row.getString("digest"), row.getString("answer"))).optional();
        if (kept.isPresent()) {
            return kept.get().digest().equals(digest) ? new Answer.Done(Integer.parseInt(kept.get().answer()), true) : new Answer.OtherCall();
        }
        Shelf.Outcome outcome = shelf.till(lines, Text.of("shelf.till.author"));
        if (outcome instanceof Shelf.Outcome.Refused refused) {
            return new Answer.Refused(refused.faults());
        }
        int changed = outcome instanceof Shelf.Outcome.Done done ? done.products() : 0;
        remember(mark, digest, changed);
        return new Answer.Done(changed, false);
    }

    private record Kept(String digest, String answer) {
    }

    private void remember(String mark, String digest, int changed) {
        database.sql("delete from till_call where made_at < :before").param("before", books.now().minus(REMEMBERED)).update();
        database.sql("insert into till_call (id, made_at, digest, answer) values (:id, :made, :digest, :answer)").param("id", mark)
                .param("made", books.now()).param("digest", digest).param("answer", String.valueOf(changed)).update();
    }
}
