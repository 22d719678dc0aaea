package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;

class DatabasesTest {

    @ParameterizedTest
    @EnumSource
    void every_migration_runs(Databases databases) {
        JdbcClient database = JdbcClient.create(databases.fresh());

        assertThat(database.sql("select count(*) from \"flyway_schema_history\" where \"success\" = false").query(Integer.class).single()).isZero();
        assertThat(database.sql("select count(*) from change_count").query(Integer.class).single()).isPositive();
    }
}
