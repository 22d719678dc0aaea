package boughwright.storage;

import boughwright.text.Text;
import java.sql.SQLException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in plain words that another kiosk has the database file; an H2 file belongs to one process. */
class InUseAnalyzer extends AbstractFailureAnalyzer<SQLException> {

    private static final int IN_USE = 90020;

    @Override
    protected FailureAnalysis analyze(Throwable failure, SQLException cause) {
        return cause.getErrorCode() == IN_USE ? new FailureAnalysis(Text.of("storage.in-use"), Text.of("storage.in-use.mend"), failure) : null;
    }
}
