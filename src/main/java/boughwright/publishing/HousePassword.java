package boughwright.publishing;

import boughwright.storage.Settling;
import boughwright.text.Text;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/**
 * The password that opens the house rules. At first start there is none: the log shows a word that lets whoever runs the kiosk,
 * and nobody else in the shop, choose one. Five wrong tries in a row close the door for a minute. Safe for several threads.
 */
@Component
public class HousePassword {

    public static final int SHORTEST = 10;
    /** bcrypt takes no more bytes than this into account. */
    public static final int LONGEST = 72;

    private static final Logger LOG = LoggerFactory.getLogger(HousePassword.class);
    private static final int TRIES = 5;
    private static final Duration PAUSE = Duration.ofMinutes(1);
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";

    private final JdbcClient database;
    private final Editions editions;
    private final Settling settling;
    private final Clock clock;
    private final PasswordEncoder encoder = PasswordEncoderFactories.createDelegatingPasswordEncoder();
    private final String firstWord = word();
    private int wrong;
    private Instant closedUntil = Instant.MIN;

    HousePassword(JdbcClient database, Editions editions, Settling settling, Clock clock) {
        this.database = database;
        this.editions = editions;
        this.settling = settling;
        this.clock = clock;
        if (!hasPassword()) {
            LOG.info(Text.of("staff.first-word", firstWord));
        }
    }

    /** What the log says at first start. */
    String firstWord() {
        return firstWord;
    }

    /** What came of a try. */
    public enum Entry { IN, WRONG, WAIT }

    private static String word() {
        SecureRandom random = new SecureRandom();
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            word.append(i == 4 || i == 8 ? "-" : "").append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return word.toString();
    }

    public boolean hasPassword() {
        return kept().isPresent();
    }

    private Optional<String> kept() {
        return database.sql("select password from manager where id = 1").query(String.class).optional();
    }

    /**
     * Sets the password for the first time.
     *
     * @param word from the log
     */
    public synchronized Entry begin(String word, String password) {
        if (hasPassword() || closed()) {
            return closed() ? Entry.WAIT : Entry.WRONG;
        }
        if (!word.strip().toLowerCase(Locale.ROOT).equals(firstWord)) {
            return refused();
        }
        database.sql("insert into manager (id, password, set_at) values (1, :password, :at)").param("password", encoder.encode(password))
                .param("at", LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC)).update();
        editions.note("manager", HouseEvent.Kind.PASSWORD, Optional.empty(), "");
        settling.settle();
        wrong = 0;
        return Entry.IN;
    }

    /** Whether a password is long enough, and no longer than can be kept whole. */
    public static boolean takes(String password) {
        return password.length() >= SHORTEST && password.getBytes(java.nio.charset.StandardCharsets.UTF_8).length <= LONGEST;
    }

    public synchronized Entry enter(String password) {
        if (closed()) {
            return Entry.WAIT;
        }
        if (kept().filter(hash -> encoder.matches(password, hash)).isPresent()) {
            wrong = 0;
            return Entry.IN;
        }
        return refused();
    }

    private boolean closed() {
        return clock.instant().isBefore(closedUntil);
    }

    private Entry refused() {
        if (++wrong >= TRIES) {
            wrong = 0;
            closedUntil = clock.instant().plus(PAUSE);
        }
        return Entry.WRONG;
    }
}
