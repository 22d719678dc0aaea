package boughwright.storage;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A real PostgreSQL server, started once for all tests of this run and stopped with it. PostgreSQL does not run as root; where tests do, it
 * is started in a user namespace of its own ({@code unshare -U}), which the machine must allow.
 */
public final class PostgresFixture {

    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static EmbeddedPostgres server;

    private PostgresFixture() {
    }

    private static synchronized EmbeddedPostgres server() {
        if (server == null) {
            try {
                server = EmbeddedPostgres.builder().setServerConfig("max_connections", "200").start();
            } catch (IOException e) {
                throw new UncheckedIOException("PostgreSQL could not be started for the tests", e);
            }
        }
        return server;
    }

    /** The address of an empty database of its own, for the user {@code postgres} without a password. */
    public static String address() {
        String name = "shop" + DATABASES.incrementAndGet();
        JdbcClient.create(server().getPostgresDatabase()).sql("create database " + name).update();
        return server().getJdbcUrl("postgres", name);
    }

    /** An empty database of its own, migrated. */
    public static DataSource database() {
        return Databases.at(address());
    }
}
