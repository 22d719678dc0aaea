package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.storage.Backup.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Timestamp;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.transaction.support.TransactionTemplate;

class BackupTest {

    private static final byte[] PICTURE = {(byte) 0xff, (byte) 0xd8, 0, 1, (byte) 0x80, 10, 13};
    private static final LocalDateTime MADE = LocalDateTime.of(2026, 11, 25, 9, 30, 15, 123_456_000);

    @TempDir
    private Path folder;

    /** A connection of its own for each call, as the commands have it: nobody else is at work. */
    private static DataSource empty(Databases databases) {
        return databases == Databases.H2 ? new DriverManagerDataSource("jdbc:h2:mem:" + java.util.UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "")
                : new DriverManagerDataSource(PostgresFixture.address(), "postgres", "");
    }

    private static DataSource filled(Databases databases) {
        DataSource source = empty(databases);
        org.flywaydb.core.Flyway.configure().dataSource(source).load().migrate();
        JdbcClient database = JdbcClient.create(source);
        database.sql("insert into product (sku, cells, gone, version) values ('BL-1', '{\"name\": \"Kugeln, “rot” ü\\n\"}', false, 7)").update();
        database.sql("insert into product_photo (sku, kept_at, picture) values ('BL-1', :at, :picture)").param("at", MADE).param("picture", PICTURE).update();
        database.sql("""
                insert into edition (number, id, title, note, author, origin, based_on, made_at, texts, override)
                values (1, 'winter', 'Winter', '', 'Ada', 'STAFF', null, :at, 'x', '')""").param("at", MADE).update();
        database.sql("insert into publication (id, edition, starts_on, made_at, author, withdrawn) values (1, 1, date '2026-11-25', :at, 'Ada', true)")
                .param("at", MADE).update();
        database.sql("""
                insert into person (name, plain, role, password, pin, starting, active, stamp, made_at)
                values ('Ada', 'ada', 'MANAGER', 'secret', '', '', true, 1, :at)""").param("at", MADE).update();
        database.sql("update change_count set version = 42 where topic = 'shelf'").update();
        return source;
    }

    /** Everything in all tables, as both kinds of database show it alike. */
    private static Map<String, List<String>> all(DataSource source) throws Exception {
        Map<String, List<String>> all = new TreeMap<>();
        try (var connection = source.getConnection()) {
            for (Tables.Table table : Tables.in(connection)) {
                List<String> sorted = new java.util.ArrayList<>(table.columns());
                java.util.Collections.sort(sorted);
                all.put(table.name(), JdbcClient.create(source).sql("select * from " + table.name()).query((row, i) -> {
                    StringBuilder words = new StringBuilder();
                    for (String column : sorted) {
                        Object value = row.getObject(column);
                        words.append(column).append('=').append(value instanceof byte[] bytes ? Arrays.toString(bytes)
                                : value instanceof Timestamp at ? at.toLocalDateTime() : value instanceof java.sql.Clob clob ? row.getString(column) : value).append('|');
                    }
                    return words.toString();
                }).list().stream().sorted().toList());
            }
        }
        return all;
    }

    private static int people(DataSource source) {
        return JdbcClient.create(source).sql("select count(*) from person").query(Integer.class).single();
    }

    @ParameterizedTest
    @CsvSource({"H2, H2", "H2, POSTGRESQL", "POSTGRESQL, H2", "POSTGRESQL, POSTGRESQL"})
    void what_was_copied_is_all_there_in_an_empty_database_of_either_kind(Databases from, Databases to) throws Exception {
        DataSource first = filled(from);
        Path file = folder.resolve("copy.zip");
        Backup.Done done = new Backup(first).write(file);
        DataSource second = empty(to);

        assertThat(new Backup(second).read(file, false)).isEqualTo(done);

        assertThat(all(second)).isEqualTo(all(first)).containsKeys("product", "person", "proposal", "consultation");
        JdbcClient.create(second).sql("""
                insert into person (name, plain, role, password, pin, starting, active, stamp, made_at)
                values ('Ben', 'ben', 'ASSOCIATE', '', '', '', true, 1, :at)""").param("at", MADE).update();
        assertThat(people(second)).as("numbers that the database gives go on").isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource
    void data_that_is_there_is_replaced_only_when_told(Databases databases) throws Exception {
        Path file = folder.resolve("copy.zip");
        new Backup(filled(Databases.H2)).write(file);
        DataSource other = filled(databases);
        JdbcClient.create(other).sql("update person set name = 'Ben'").update();

        assertThatThrownBy(() -> new Backup(other).read(file, false)).isInstanceOf(Refused.class).hasMessageContaining("--replace");
        assertThat(JdbcClient.create(other).sql("select name from person").query(String.class).list()).containsExactly("Ben");
        new Backup(other).read(file, true);
        assertThat(JdbcClient.create(other).sql("select name from person").query(String.class).list()).containsExactly("Ada");
    }

    @Test
    void every_damaged_file_is_refused_and_nothing_is_touched() throws Exception {
        Path file = folder.resolve("copy.zip");
        new Backup(filled(Databases.H2)).write(file);
        byte[] whole = Files.readAllBytes(file);
        DataSource other = filled(Databases.H2);
        Map<String, List<String>> before = all(other);
        Path bad = folder.resolve("bad.zip");

        for (int cut : new int[] {0, 1, 30, whole.length / 2, whole.length - 1}) {
            Files.write(bad, Arrays.copyOf(whole, cut));
            assertThatThrownBy(() -> new Backup(other).read(bad, true)).as("cut at " + cut).isInstanceOf(Refused.class);
        }
        int refused = 0;
        for (int at = 0; at < whole.length; at += 37) {
            byte[] flipped = whole.clone();
            flipped[at] ^= 0x20;
            Files.write(bad, flipped);
            try {
                new Backup(other).read(bad, true);
            } catch (Refused | IOException e) {
                refused++;
                assertThat(all(other)).isEqualTo(before);
            }
            // A bit that means nothing, such as one of a time stamp, does no harm: then everything is as in the copy.
            assertThat(all(other)).isEqualTo(before);
        }
        assertThat(refused).isGreaterThan(whole.length / 37 / 2);
        Files.writeString(bad, "no copy at all");
        assertThatThrownBy(() -> new Backup(other).read(bad, true)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new Backup(other).read(folder.resolve("none.zip"), true)).isInstanceOf(Refused.class).hasMessageContaining("none.zip");
        assertThat(all(other)).isEqualTo(before);
    }

    @Test
    void a_copy_of_a_newer_kiosk_is_refused() throws Exception {
        DataSource newer = filled(Databases.H2);
        JdbcClient.create(newer).sql("update \"flyway_schema_history\" set \"version\" = '9999' where \"version\" = '1'").update();
        Path file = folder.resolve("copy.zip");
        new Backup(newer).write(file);

        assertThatThrownBy(() -> new Backup(empty(Databases.H2)).read(file, true)).isInstanceOf(Refused.class).hasMessageContaining("newer");
    }

    @Test
    void a_copy_of_an_older_kiosk_is_brought_up_to_date() throws Exception {
        DataSource older = empty(Databases.H2);
        org.flywaydb.core.Flyway.configure().dataSource(older).target("2").load().migrate();
        JdbcClient.create(older).sql("insert into manager (id, password, set_at) values (1, 'secret', :at)").param("at", MADE).update();
        Path file = folder.resolve("copy.zip");
        new Backup(older).write(file);
        DataSource now = empty(Databases.POSTGRESQL);

        new Backup(now).read(file, false);

        assertThat(JdbcClient.create(now).sql("select password from person where role = 'MANAGER'").query(String.class).list()).containsExactly("secret");
        assertThatThrownBy(() -> new Backup(now).read(file, true)).isInstanceOf(Refused.class).hasMessageContaining("empty");
    }

    @ParameterizedTest
    @EnumSource
    void a_copy_made_while_others_write_is_the_state_of_one_moment(Databases databases) throws Exception {
        DataSource source = filled(databases);
        JdbcClient database = JdbcClient.create(source);
        AtomicBoolean stop = new AtomicBoolean();
        // In every moment the version of the topic and that of the product are the same.
        database.sql("update product set version = 42").update();
        TransactionTemplate transaction = new TransactionTemplate(new DataSourceTransactionManager(source));
        CompletableFuture<Void> writer = CompletableFuture.runAsync(() -> {
            while (!stop.get()) {
                transaction.executeWithoutResult(status -> {
                    database.sql("update product set version = version + 1").update();
                    database.sql("update change_count set version = version + 1 where topic = 'shelf'").update();
                });
            }
        });
        try {
            for (int i = 0; i < 8; i++) {
                Path file = folder.resolve("copy" + i + ".zip");
                new Backup(source).write(file);
                DataSource copy = empty(Databases.H2);
                new Backup(copy).read(file, false);
                JdbcClient copied = JdbcClient.create(copy);
                assertThat(copied.sql("select version from product").query(Long.class).single())
                        .isEqualTo(copied.sql("select version from change_count where topic = 'shelf'").query(Long.class).single());
            }
        } finally {
            stop.set(true);
            writer.join();
        }
    }

    @Test
    void a_file_that_is_there_is_not_overwritten_and_nothing_half_written_stays() throws Exception {
        Path file = folder.resolve("copy.zip");
        Files.writeString(file, "precious");
        Backup backup = new Backup(filled(Databases.H2));

        assertThatThrownBy(() -> backup.write(file)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new Backup(empty(Databases.H2)).write(folder.resolve("of-nothing.zip"))).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> backup.write(folder.resolve("no/such/folder/copy.zip"))).isInstanceOf(IOException.class);

        assertThat(file).hasContent("precious");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void postgresql_is_not_restored_while_a_kiosk_is_connected() throws Exception {
        Path file = folder.resolve("copy.zip");
        new Backup(filled(Databases.H2)).write(file);
        DataSource source = empty(Databases.POSTGRESQL);
        try (var other = source.getConnection()) {
            assertThatThrownBy(() -> new Backup(source).read(file, true)).isInstanceOf(Refused.class).hasMessageContaining("Stop");
            assertThat(other.isValid(1)).isTrue();
        }
        new Backup(source).read(file, true);
        assertThat(people(source)).isEqualTo(1);
    }
}
