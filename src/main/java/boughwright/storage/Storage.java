package boughwright.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.jdbc.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;

/** Keeps everything in a file database in the folder {@code boughwright.data}, unless PostgreSQL is asked for. */
@Configuration(proxyBeanMethods = false)
@Profile("!postgresql")
class Storage {

    /**
     * Waits for another transaction as long as PostgreSQL's users would, not one second; and always reads: H2 would otherwise give the last
     * result of a query again although another transaction has been committed meanwhile (2.3.232, seen with two connections: up to three
     * changes of fifty lost).
     */
    static final String CAREFUL = ";LOCK_TIMEOUT=10000;OPTIMIZE_REUSE_RESULTS=FALSE";

    /**
     * The database file {@code boughwright.mv.db} in {@code folder}, which is made when missing.
     * H2 refuses a path that is relative without saying so, hence the absolute one; it also holds back
     * acknowledged commits for half a second unless its write delay is 0.
     */
    @Bean
    JdbcConnectionDetails database(@Value("${boughwright.data}") Path folder) throws IOException {
        Path home = Files.createDirectories(folder.toAbsolutePath().normalize());
        String url = "jdbc:h2:file:" + home.resolve("boughwright") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE" + CAREFUL;
        return new FileDatabase(url);
    }

    private record FileDatabase(String getJdbcUrl) implements JdbcConnectionDetails {

        @Override
        public String getUsername() {
            return "boughwright";
        }

        @Override
        public String getPassword() {
            return "";
        }
    }
}
