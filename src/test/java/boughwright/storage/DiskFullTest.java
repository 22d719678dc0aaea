package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A small disk of its own that is really full. Only where a test may mount one, as root may on Linux; elsewhere it is skipped. */
class DiskFullTest {

    @TempDir
    private Path folder;

    private Path disk;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectory(folder.resolve("disk"));
        assumeThat(run("mount", "-t", "tmpfs", "-o", "size=24m", "tmpfs", disk.toString())).isZero();
    }

    @AfterEach
    void unmount() throws Exception {
        run("umount", "-l", disk.toString());
    }

    private static int run(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        } catch (IOException noSuchCommand) {
            return -1;
        }
    }

    /** Takes all room that is left. */
    private Path ballast() throws IOException {
        Path ballast = disk.resolve("ballast");
        byte[] bytes = new byte[1 << 14];
        try (OutputStream out = Files.newOutputStream(ballast)) {
            while (true) {
                out.write(bytes);
            }
        } catch (IOException full) {
            return ballast;
        }
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 4_000; i++) {
            text.append((char) ('a' + random.nextInt(26)));
        }
        return text.toString();
    }

    @Test
    void a_full_disk_is_told_nothing_acknowledged_is_lost_and_with_room_again_it_goes_on() throws Exception {
        SplittableRandom random = new SplittableRandom(3);
        List<String> acknowledged = new ArrayList<>();
        Trouble told = Trouble.NONE;
        try (HikariDataSource source = (HikariDataSource) Databases.at("jdbc:h2:file:" + disk.resolve("boughwright") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE" + Storage.CAREFUL)) {
            source.setConnectionTimeout(1_000);
            JdbcClient database = JdbcClient.create(source);
            Settling settling = new Settling(database, source);
            for (int i = 0; i < 300; i++) {
                keep(database, "early-" + i, text(random));
                acknowledged.add("early-" + i);
            }
            Path ballast = ballast();
            for (int i = 0; i < 2_000 && told == Trouble.NONE; i++) {
                try {
                    keep(database, "P-" + i, text(random));
                    settling.settle();
                    acknowledged.add("P-" + i);
                } catch (RuntimeException full) {
                    told = Trouble.of(full);
                    assertThat(told).as(full.toString()).isNotEqualTo(Trouble.NONE);
                }
            }
            assertThat(told).isNotEqualTo(Trouble.NONE);

            Files.delete(ballast);
            boolean again = false;
            for (int i = 0; i < 20 && !again; i++) {
                try {
                    keep(database, "again", "text");
                    settling.settle();
                    again = true;
                } catch (RuntimeException notYet) {
                    Thread.sleep(250);
                }
            }
            assertThat(again).as("goes on by itself").isTrue();
            assertThat(database.sql("select sku from product").query(String.class).list()).contains("again").containsAll(acknowledged);
        }
        try (HikariDataSource source = (HikariDataSource) Databases.at("jdbc:h2:file:" + disk.resolve("boughwright") + ";WRITE_DELAY=0" + Storage.CAREFUL)) {
            assertThat(JdbcClient.create(source).sql("select sku from product").query(String.class).list()).as("after a restart").contains("again").containsAll(acknowledged);
        }
        System.out.println("told " + told + " after " + acknowledged.size() + " rows");
    }

    private static void keep(JdbcClient database, String sku, String text) {
        database.sql("insert into product (sku, cells, gone, version) values (:sku, :cells, false, 0)").param("sku", sku).param("cells", text).update();
    }

    @Test
    void a_copy_that_does_not_fit_leaves_nothing_behind() throws Exception {
        Backup backup = new Backup(Databases.H2.fresh());
        Path ballast = ballast();
        Path copy = disk.resolve("copy.zip");

        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> backup.write(copy))).isInstanceOf(IOException.class);
        try (var files = Files.list(disk)) {
            assertThat(files).containsExactly(ballast);
        }
        Files.delete(ballast);
        assertThat(backup.write(copy).rows()).isPositive();
    }
}
