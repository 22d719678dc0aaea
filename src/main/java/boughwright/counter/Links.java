package boughwright.counter;

import boughwright.storage.Settling;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Private links to plans: 128 random bits that nobody can guess, which open one plan until they end or are revoked. Whoever has the link
 * has the plan; who only heard the code has not.
 */
@Repository
public class Links {

    private static final int BYTES = 16;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final JdbcClient database;
    private final ShopTerms terms;
    private final Settling settling;
    private final Clock clock;

    Links(JdbcClient database, ShopTerms terms, Settling settling, Clock clock) {
        this.database = database;
        this.terms = terms;
        this.settling = settling;
        this.clock = clock;
    }

    /** @param endsAt UTC */
    public record Link(String token, String code, LocalDateTime endsAt) {
    }

    /** The link of a consultation that opens it now; one is made when there is none. */
    public Link of(String code) {
        return known(code).orElseGet(() -> make(code));
    }

    /** The link that opens a consultation now, if there is one. */
    public Optional<Link> known(String code) {
        return database.sql("select token, code, ends_at from plan_link where code = :code and not revoked and ends_at > :now order by made_at desc, token fetch first 1 rows only")
                .param("code", code).param("now", now()).query(Links::row).optional();
    }

    private Link make(String code) {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        Link link = new Link(HexFormat.of().formatHex(bytes), code, now().plusDays(terms.now().number(Terms.Number.LINK_DAYS)));
        database.sql("insert into plan_link (token, code, made_at, ends_at, revoked) values (:token, :code, :now, :ends, false)").param("token", link.token())
                .param("code", code).param("now", now()).param("ends", link.endsAt()).update();
        settling.settle();
        return link;
    }

    /** No link of a consultation opens it any more; the next that is asked for is a new one. */
    public void revoke(String code) {
        database.sql("update plan_link set revoked = true where code = :code").param("code", code).update();
        settling.settle();
    }

    /** The consultation that a token opens at this moment. */
    public Optional<String> open(String token) {
        return database.sql("select code from plan_link where token = :token and not revoked and ends_at > :now").param("token", token).param("now", now())
                .query(String.class).optional();
    }

    private static Link row(java.sql.ResultSet row, int number) throws java.sql.SQLException {
        return new Link(row.getString("token"), row.getString("code"), row.getObject("ends_at", LocalDateTime.class));
    }

    private LocalDateTime now() {
        return Utc.now(clock);
    }
}
