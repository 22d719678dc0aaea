package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.HandClock;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupDeskTest {

    @TempDir
    private Path folder;

    private final HandClock clock = new HandClock("2026-11-26T02:00:00Z");

    private BackupDesk desk(Path copies) {
        return new BackupDesk(Databases.H2.fresh(), clock, folder, copies.toString(), "03:30", 2);
    }

    private static List<String> names(Path folder) throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private void at(BackupDesk desk, String time) {
        clock.set(time);
        desk.look();
    }

    @Test
    void a_copy_is_made_each_night_and_the_newest_stay() throws Exception {
        Path copies = folder.resolve("copies");
        BackupDesk desk = desk(copies);
        at(desk, "2026-11-26T03:29:00Z");
        assertThat(copies).doesNotExist();
        at(desk, "2026-11-26T03:31:00Z");
        at(desk, "2026-11-26T03:32:00Z");
        assertThat(names(copies)).containsExactly("boughwright-2026-11-26.zip");
        at(desk, "2026-11-27T03:31:00Z");
        Files.writeString(copies.resolve("another.zip"), "not ours");
        at(desk, "2026-11-28T09:00:00Z");
        assertThat(names(copies)).containsExactly("another.zip", "boughwright-2026-11-27.zip", "boughwright-2026-11-28.zip");
    }

    @Test
    void a_clock_that_is_set_makes_neither_a_flood_of_copies_nor_takes_one_away() throws Exception {
        Path copies = folder.resolve("copies");
        BackupDesk desk = desk(copies);
        at(desk, "2026-11-26T04:00:00Z");
        at(desk, "2026-11-26T03:00:00Z");
        at(desk, "2026-11-26T04:00:00Z");
        at(desk, "2026-11-25T23:00:00Z");
        at(desk, "2026-11-26T04:30:00Z");

        assertThat(names(copies)).containsExactly("boughwright-2026-11-25.zip", "boughwright-2026-11-26.zip");
    }

    @Test
    void a_folder_that_cannot_be_written_is_told_and_tried_again_the_next_day() throws Exception {
        Path copies = Files.writeString(folder.resolve("copies"), "a file, no folder");
        BackupDesk desk = desk(copies);
        at(desk, "2026-11-26T04:00:00Z");
        Files.delete(copies);
        at(desk, "2026-11-26T05:00:00Z");
        assertThat(copies).doesNotExist();
        at(desk, "2026-11-27T05:00:00Z");
        assertThat(names(copies)).containsExactly("boughwright-2026-11-27.zip");
    }

    @Test
    void without_a_folder_no_copies_are_made() {
        BackupDesk desk = desk(Path.of(""));
        at(desk, "2026-11-26T04:00:00Z");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_command_beside_the_kiosk_gets_its_copy_from_it_and_hears_why_not() throws Exception {
        BackupDesk desk = desk(Path.of(""));
        Path copy = folder.resolve("mine.zip");
        CompletableFuture<Void> kiosk = CompletableFuture.runAsync(() -> {
            for (int i = 0; i < 40; i++) {
                desk.look();
                try {
                    Thread.sleep(50);
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            }
        });

        assertThat(BackupDesk.ask(folder, copy).rows()).isPositive();
        assertThat(copy).isNotEmptyFile();
        assertThatThrownBy(() -> BackupDesk.ask(folder, copy)).isInstanceOf(Backup.Refused.class).hasMessageContaining("mine.zip");
        kiosk.join();
        assertThat(names(folder)).containsExactly("mine.zip");
    }

    private String said(int code, String... args) {
        ByteArrayOutputStream words = new ByteArrayOutputStream();
        PrintStream both = new PrintStream(words, true, StandardCharsets.UTF_8);
        assertThat(new BackupCommand(both, both).run(args)).isEqualTo(code);
        return words.toString(StandardCharsets.UTF_8);
    }

    @Test
    void the_commands_copy_a_folder_restore_it_elsewhere_and_say_what_is_wrong() throws Exception {
        String from = "--boughwright.data=" + folder.resolve("from");
        String to = "--boughwright.data=" + folder.resolve("to");
        String copy = folder.resolve("copy.zip").toString();
        String url = "jdbc:h2:file:" + folder.resolve("from/boughwright").toAbsolutePath();
        assertThat(said(2, "backup", copy, from)).contains("no data");
        try (var pool = (com.zaxxer.hikari.HikariDataSource) Databases.at(url, "boughwright")) {
            org.springframework.jdbc.core.simple.JdbcClient.create(pool).sql("update change_count set version = 5").update();
        }

        assertThat(said(0, "backup", copy, from)).contains("rows");
        assertThat(said(2, "backup", copy, from)).contains("already");
        assertThat(said(0, "restore", copy, to)).contains("rows");
        assertThat(said(0, "restore", copy, "--replace", to)).contains("rows");
        assertThat(said(2, "restore", folder.resolve("none.zip").toString(), to)).contains("none.zip");
        assertThat(said(2, "restore", to)).contains("Usage");
        assertThat(said(2, "backup", copy, "--replace", from)).contains("Usage");
        assertThat(said(1, "backup", folder.resolve("no/folder/copy.zip").toString(), from)).contains("copy.zip");
    }
}
