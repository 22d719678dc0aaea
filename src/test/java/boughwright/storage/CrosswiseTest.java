package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Transactions that really are in each other's way, in real databases. */
class CrosswiseTest {

    private final AtomicInteger runs = new AtomicInteger();
    private final CyclicBarrier both = new CyclicBarrier(2);

    private static Transactions transactions(DataSource source, int isolation) {
        TransactionTemplate template = new TransactionTemplate(new DataSourceTransactionManager(source));
        template.setIsolationLevel(isolation);
        return new Transactions(template);
    }

    private static JdbcClient counters(DataSource source) {
        JdbcClient database = JdbcClient.create(source);
        database.sql("create table counter (id integer primary key, n integer not null)").update();
        database.sql("insert into counter values (1, 0), (2, 0)").update();
        return database;
    }

    /** The two wait for each other in their first run, so that they are in each other's way for certain. */
    private void meet(int run) {
        if (run <= 2) {
            try {
                both.await(10, TimeUnit.SECONDS);
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private static void inParallel(Runnable one, Runnable other) {
        CompletableFuture<Void> second = CompletableFuture.runAsync(other);
        one.run();
        second.join();
    }

    @ParameterizedTest
    @EnumSource
    void two_that_lock_rows_crosswise_both_end_well(Databases databases) {
        DataSource source = databases.fresh();
        JdbcClient database = counters(source);
        Transactions transactions = transactions(source, TransactionDefinition.ISOLATION_DEFAULT);

        inParallel(() -> transactions.run(() -> crosswise(database, 1, 2)), () -> transactions.run(() -> crosswise(database, 2, 1)));

        assertThat(database.sql("select n from counter order by id").query(Integer.class).list()).containsExactly(2, 2);
        assertThat(runs).as("one of the two was run again").hasValue(3);
    }

    private void crosswise(JdbcClient database, int first, int second) {
        int run = runs.incrementAndGet();
        database.sql("update counter set n = n + 1 where id = :id").param("id", first).update();
        meet(run);
        database.sql("update counter set n = n + 1 where id = :id").param("id", second).update();
    }

    /** Both read two rows and write one, so that no order of the two gives what both have seen: PostgreSQL's manual calls it write skew. */
    @Test
    void two_that_cannot_be_put_in_an_order_both_end_well() {
        DataSource source = Databases.POSTGRESQL.fresh();
        JdbcClient database = counters(source);
        Transactions transactions = transactions(source, TransactionDefinition.ISOLATION_SERIALIZABLE);

        inParallel(() -> transactions.run(() -> sumInto(database, 1)), () -> transactions.run(() -> sumInto(database, 2)));

        assertThat(database.sql("select n from counter order by n").query(Integer.class).list()).as("the second has seen what the first wrote").containsExactly(1, 2);
        assertThat(runs).hasValue(3);
    }

    private void sumInto(JdbcClient database, int id) {
        int run = runs.incrementAndGet();
        int sum = database.sql("select sum(n) + 1 from counter").query(Integer.class).single();
        meet(run);
        database.sql("update counter set n = :sum where id = :id").param("sum", sum).param("id", id).update();
    }
}
