package boughwright.storage;

import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;

/** What is the matter with the place where everything is kept, as far as a failure tells. */
public enum Trouble {

    /** The database cannot be reached; it may be back soon. */
    AWAY,
    /** There is no room left on the disk. */
    FULL,
    /** Something else, or nothing to do with it. */
    NONE;

    /**
     * SQLSTATEs of PostgreSQL's manual, "PostgreSQL Error Codes": class 08 connection exceptions, 57P01 to 57P03 a server that stops or does
     * not take connections yet, 53100 disk full, 53300 too many connections.
     */
    private static final Set<String> AWAY_STATES = Set.of("57P01", "57P02", "57P03", "53300");
    private static final String FULL_STATE = "53100";
    /** Of H2: connection broken, database closed, is closing, already closed; a file that cannot be opened, read or written any more. */
    private static final Set<Integer> H2_AWAY = Set.of(90067, 90098, 90121, 90007, 90028, 90031, 90020);

    /** Of a failure and everything that caused it. */
    public static Trouble of(Throwable failure) {
        Trouble found = NONE;
        int depth = 0;
        for (Throwable cause = failure; cause != null && depth++ < 30; cause = cause.getCause()) {
            // Closing itself after the disk is full makes H2 look away; the first cause is nearer to the truth.
            if (full(cause)) {
                return FULL;
            }
            if (away(cause)) {
                found = AWAY;
            }
        }
        return found;
    }

    private static boolean full(Throwable cause) {
        return cause instanceof SQLException sql && FULL_STATE.equals(sql.getSQLState())
                || cause.getMessage() != null && (cause.getMessage().contains("No space left on device") || cause.getMessage().contains("not enough space on the disk"));
    }

    private static boolean away(Throwable cause) {
        if (cause instanceof SQLTransientConnectionException || cause instanceof SQLNonTransientConnectionException || cause instanceof SQLRecoverableException) {
            return true;
        }
        return cause instanceof SQLException sql && (H2_AWAY.contains(sql.getErrorCode())
                || sql.getSQLState() != null && (sql.getSQLState().startsWith("08") || AWAY_STATES.contains(sql.getSQLState())));
    }
}
