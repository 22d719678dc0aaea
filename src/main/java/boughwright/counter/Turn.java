package boughwright.counter;

import org.springframework.jdbc.core.simple.JdbcClient;

/** Whose turn it is with a consultation: what is numbered within it, and what is held for it, is changed by one transaction after the other. */
final class Turn {

    private Turn() {
    }

    /** Waits, within a transaction, until nobody else has this consultation; it is ours until the transaction ends. @return whether there is such a one */
    static boolean take(JdbcClient database, String code) {
        return database.sql("select code from consultation where code = :code for update").param("code", code).query(String.class).optional().isPresent();
    }
}
