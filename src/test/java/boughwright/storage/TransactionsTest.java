package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

class TransactionsTest {

    private final JdbcConnectionPool source = JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
    private final JdbcClient database = JdbcClient.create(source);
    private final List<Long> pauses = new ArrayList<>();
    private final Transactions transactions = transactions(1);
    private final AtomicInteger runs = new AtomicInteger();

    private Transactions transactions(long seed) {
        return new Transactions(new TransactionTemplate(new DataSourceTransactionManager(source)), new SplittableRandom(seed), pauses::add);
    }

    private static RuntimeException failure(String state) {
        return new CannotAcquireLockException("in the way", new SQLException("in the way", state));
    }

    @ParameterizedTest
    @ValueSource(strings = {"40001", "40P01"})
    void work_that_was_in_another_s_way_is_done_again_from_its_beginning(String state) {
        database.sql("create table note (words varchar(20))").update();

        String answer = transactions.run(() -> {
            database.sql("insert into note values ('once')").update();
            if (runs.incrementAndGet() < 4) {
                throw failure(state);
            }
            return "done";
        });

        assertThat(answer).isEqualTo("done");
        assertThat(runs).hasValue(4);
        assertThat(pauses).hasSize(3);
        assertThat(database.sql("select count(*) from note").query(Integer.class).single()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"23505", "40002", "40003", "55P03", "57014", "08006", "HYT00", "25P02"})
    void any_other_failure_comes_out_as_it_is_after_one_try(String state) {
        RuntimeException failure = failure(state);

        assertThatThrownBy(() -> transactions.run(() -> {
            runs.incrementAndGet();
            throw failure;
        })).isSameAs(failure);

        assertThat(runs).hasValue(1);
        assertThat(pauses).isEmpty();
    }

    @Test
    void the_first_state_in_a_chain_of_causes_counts() {
        SQLException deadlock = new SQLException("deadlock", "40P01");
        SQLException broken = new SQLException("duplicate", "23505");
        broken.initCause(deadlock);

        assertThat(Transactions.inTheWay(new DataIntegrityViolationException("", deadlock))).isTrue();
        assertThat(Transactions.inTheWay(new DataIntegrityViolationException("", broken))).isFalse();
        assertThat(Transactions.inTheWay(new SQLException("no state", (String) null))).isFalse();
    }

    @Test
    void who_is_always_in_the_way_is_told_in_the_end() {
        assertThatThrownBy(() -> transactions.run((Runnable) () -> {
            runs.incrementAndGet();
            throw failure("40001");
        })).isInstanceOf(CannotAcquireLockException.class);

        assertThat(runs).hasValue(Transactions.TRIES);
        assertThat(pauses).hasSize(Transactions.TRIES - 1).allSatisfy(p -> assertThat(p).isBetween(0L, 250L));
    }

    @Test
    void the_same_seed_waits_equally_long_and_another_does_not() {
        List<List<Long>> waits = new ArrayList<>();
        for (long seed : new long[] {7, 7, 8}) {
            pauses.clear();
            assertThatThrownBy(() -> transactions(seed).run((Runnable) () -> {
                throw failure("40001");
            })).isInstanceOf(CannotAcquireLockException.class);
            waits.add(List.copyOf(pauses));
        }
        assertThat(waits.get(0)).isEqualTo(waits.get(1)).isNotEqualTo(waits.get(2));
    }

    @Test
    void within_a_transaction_it_is_the_whole_that_is_done_again() {
        AtomicInteger whole = new AtomicInteger();

        transactions.run(() -> {
            whole.incrementAndGet();
            transactions.run(() -> {
                if (runs.incrementAndGet() == 1) {
                    throw failure("40001");
                }
            });
        });

        assertThat(whole).hasValue(2);
        assertThat(runs).hasValue(2);
    }

    @Test
    void who_fails_after_the_commit_does_not_make_it_happen_twice() {
        assertThatThrownBy(() -> transactions.run(() -> {
            runs.incrementAndGet();
            transactions.whenCommitted(() -> {
                throw failure("40001");
            });
        })).isInstanceOf(CannotAcquireLockException.class);

        assertThat(runs).hasValue(1);
    }
}
