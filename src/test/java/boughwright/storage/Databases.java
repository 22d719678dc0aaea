package boughwright.storage;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** Both kinds of database that a kiosk may have, so that tests can hold for each. */
public enum Databases {

    H2 {
        @Override
        public DataSource fresh() {
            return at("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1" + Storage.CAREFUL);
        }
    },

    POSTGRESQL {
        @Override
        public DataSource fresh() {
            return PostgresFixture.database();
        }
    };

    /** A migrated database that nobody else uses. */
    public abstract DataSource fresh();

    /** A pool of connections to a database, migrated. */
    static DataSource at(String address) {
        return at(address, address.startsWith("jdbc:h2") ? "sa" : "postgres");
    }

    static DataSource at(String address, String user) {
        HikariConfig pool = new HikariConfig();
        pool.setJdbcUrl(address);
        pool.setUsername(user);
        pool.setExceptionOverrideClassName(ClosedConnections.class.getName());
        // Every test has a database of its own, and nobody closes the pools.
        pool.setMinimumIdle(0);
        pool.setIdleTimeout(10_000);
        HikariDataSource source = new HikariDataSource(pool);
        Flyway.configure().dataSource(source).load().migrate();
        return source;
    }
}
