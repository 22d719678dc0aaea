package boughwright.storage;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceUtils;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** Makes sure that what has been committed is on the disk. H2 may keep a commit in its own memory for a moment; PostgreSQL does not. */
@Component
public class Settling {

    private final JdbcClient database;
    private final boolean h2;

    public Settling(JdbcClient database, DataSource source) {
        this.database = database;
        this.h2 = isH2(source);
    }

    /**
     * Returns when everything committed so far survives the loss of the process. Within a transaction nothing is done, since nothing is
     * committed yet: whoever has begun it settles afterwards.
     */
    public void settle() {
        if (h2 && !TransactionSynchronizationManager.isActualTransactionActive()) {
            database.sql("checkpoint sync").update();
        }
    }

    private static boolean isH2(DataSource source) {
        Connection connection = DataSourceUtils.getConnection(source);
        try {
            return connection.getMetaData().getDatabaseProductName().equals("H2");
        } catch (SQLException e) {
            throw new IllegalStateException("the database does not say what it is", e);
        } finally {
            DataSourceUtils.releaseConnection(connection, source);
        }
    }
}
