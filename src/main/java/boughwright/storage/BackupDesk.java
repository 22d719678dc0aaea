package boughwright.storage;

import boughwright.text.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Makes copies while the kiosk runs: one each night into {@code boughwright.backup.folder}, of which the newest
 * {@code boughwright.backup.keep} stay; and one whenever the command {@code backup} asks for it, since an H2 file belongs to one process.
 * The command leaves its wish as a file in the folder of the data, which is open to whom the data is open to, and to nobody over the net.
 */
@Component
class BackupDesk implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(BackupDesk.class);
    private static final String WISH = "backup.wish";
    private static final String ANSWER = "backup.answer";
    private static final long EVERY_MILLIS = 500;
    private static final long PATIENCE_MILLIS = 120_000;
    private static final String NAME = "boughwright-";

    private final Backup backup;
    private final Clock clock;
    private final Path data;
    private final Optional<Path> folder;
    private final LocalTime at;
    private final int keep;
    private ScheduledExecutorService looking;
    private Optional<LocalDate> failedOn = Optional.empty();

    BackupDesk(DataSource source, Clock clock, @Value("${boughwright.data}") Path data, @Value("${boughwright.backup.folder}") String folder,
            @Value("${boughwright.backup.at}") String at, @Value("${boughwright.backup.keep}") int keep) {
        this.backup = new Backup(source);
        this.clock = clock;
        this.data = data;
        this.folder = folder.isBlank() ? Optional.empty() : Optional.of(Path.of(folder));
        this.at = LocalTime.parse(at.strip());
        this.keep = Math.max(1, keep);
    }

    @EventListener(ApplicationReadyEvent.class)
    synchronized void begin() {
        if (looking == null) {
            looking = Executors.newSingleThreadScheduledExecutor(task -> {
                Thread thread = new Thread(task, "copies of the data");
                thread.setDaemon(true);
                return thread;
            });
            looking.scheduleWithFixedDelay(this::look, EVERY_MILLIS, EVERY_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    @Override
    public synchronized void destroy() throws InterruptedException {
        if (looking != null) {
            looking.shutdown();
            looking.awaitTermination(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    void look() {
        try {
            answer();
            night();
        } catch (RuntimeException | IOException e) {
            LOG.error("A copy of the data could not be made", e);
        }
    }

    private void answer() throws IOException {
        Path wish = data.resolve(WISH);
        if (!Files.exists(wish)) {
            return;
        }
        Path file = Path.of(Files.readString(wish).strip());
        Files.delete(wish);
        String answer;
        try {
            Backup.Done done = backup.write(file);
            answer = "done " + done.tables() + " " + done.rows();
        } catch (Backup.Refused refused) {
            answer = "refused " + refused.getMessage();
        } catch (IOException | SQLException | RuntimeException broken) {
            LOG.error("The copy {} could not be made: {}", file, broken.toString());
            answer = "refused " + Text.of("cli.broken", broken.toString());
        }
        Path part = data.resolve(ANSWER + ".part");
        Files.writeString(part, answer);
        Files.move(part, data.resolve(ANSWER), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Asks the kiosk that runs on a folder for a copy, and waits for it. */
    static Backup.Done ask(Path data, Path file) throws IOException, Backup.Refused {
        Path answer = data.resolve(ANSWER);
        Files.deleteIfExists(answer);
        Path part = data.resolve(WISH + ".part");
        Files.writeString(part, file.toAbsolutePath().normalize().toString());
        Files.move(part, data.resolve(WISH), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        for (long waited = 0; waited < PATIENCE_MILLIS; waited += 100) {
            if (Files.exists(answer)) {
                String words = Files.readString(answer);
                Files.delete(answer);
                if (words.startsWith("done ")) {
                    String[] counts = words.split(" ");
                    return new Backup.Done(Integer.parseInt(counts[1]), Long.parseLong(counts[2]));
                }
                throw new Backup.Refused(words.substring("refused ".length()));
            }
            pause();
        }
        Files.deleteIfExists(data.resolve(WISH));
        throw new Backup.Refused(Text.of("backup.no-answer", data));
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(100);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    /**
     * Once a day, by the name of the file and not by how much time has passed: a clock that is set makes one copy too many or few, no more.
     * A kiosk that was off at night makes its copy when it is started after the hour has passed.
     */
    private void night() throws IOException {
        LocalDateTime now = LocalDateTime.now(clock);
        if (folder.isEmpty() || now.toLocalTime().isBefore(at) || failedOn.equals(Optional.of(now.toLocalDate()))) {
            return;
        }
        Path file = folder.get().resolve(NAME + now.toLocalDate() + ".zip");
        if (Files.exists(file)) {
            return;
        }
        try {
            Files.createDirectories(folder.get());
            Backup.Done done = backup.write(file);
            LOG.info("Copied {} rows to {}", done.rows(), file);
            forgetOld();
        } catch (Backup.Refused | SQLException | IOException broken) {
            failedOn = Optional.of(now.toLocalDate());
            LOG.error("Tonight’s copy {} could not be made; the next try is tomorrow: {}", file, broken.toString());
        }
    }

    private void forgetOld() throws IOException {
        List<Path> copies;
        try (Stream<Path> files = Files.list(folder.orElseThrow())) {
            copies = files.filter(f -> f.getFileName().toString().matches(NAME + "\\d{4}-\\d{2}-\\d{2}\\.zip")).sorted().toList();
        }
        for (Path old : copies.subList(0, Math.max(0, copies.size() - keep))) {
            Files.delete(old);
        }
    }
}
