package boughwright.storage;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;
import java.util.Set;

/**
 * Tells the pool which connections are of no use any more. H2 closes itself when its disk is full and opens anew with the first connection
 * after the last of the old ones is gone; the pool would keep those for ever as long as somebody asks.
 */
public final class ClosedConnections implements SQLExceptionOverride {

    /** Of H2: connection broken, database closed, closing, already closed. */
    private static final Set<Integer> CLOSED = Set.of(90067, 90098, 90121, 90007);

    @java.lang.Override
    public Override adjudicate(SQLException failure) {
        return CLOSED.contains(failure.getErrorCode()) ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
    }
}
