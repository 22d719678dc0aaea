package boughwright.storage;

import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What two kiosks on one database have of the storage. */
record TwoKiosks(JdbcClient database, Transactions transactions, Changes here, Changes there) {

    static TwoKiosks inMemory() {
        DataSource source = JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
        Flyway.configure().dataSource(source).load().migrate();
        return on(source);
    }

    static TwoKiosks on(DataSource source) {
        JdbcClient database = JdbcClient.create(source);
        Transactions transactions = new Transactions(new TransactionTemplate(new DataSourceTransactionManager(source)));
        return new TwoKiosks(database, transactions, new Changes(database), new Changes(database));
    }
}
