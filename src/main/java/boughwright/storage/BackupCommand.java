package boughwright.storage;

import boughwright.text.Text;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.jdbc.JdbcConnectionDetails;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/**
 * The commands {@code backup FILE} and {@code restore FILE [--replace]}. They take the options by which the kiosk is told where its data is,
 * and start no kiosk. Exit code 0; 2 when refused, with a sentence that says why and everything as it was; 1 for a broken machine.
 */
public final class BackupCommand {

    private static final List<String> WORDS = List.of("backup", "restore");
    private static final String REPLACE = "--replace";
    private static final int IN_USE = 90020;
    private static final int NOT_THERE = 90146;

    private final PrintStream out;
    private final PrintStream err;

    public BackupCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Whether {@code args} begin with one of the two. */
    public static boolean understands(String... args) {
        return args.length > 0 && WORDS.contains(args[0]);
    }

    /** Runs the command that {@code args} name and returns the exit code. */
    public int run(String... args) {
        List<String> options = Arrays.stream(args).skip(1).filter(a -> a.startsWith("--") && !a.equals(REPLACE)).toList();
        List<String> files = Arrays.stream(args).skip(1).filter(a -> !a.startsWith("--")).toList();
        boolean backup = args[0].equals("backup");
        if (files.size() != 1 || backup && List.of(args).contains(REPLACE)) {
            err.println(Text.of("backup.usage"));
            return 2;
        }
        Path file = Path.of(files.get(0));
        try (ConfigurableApplicationContext setup = setup(options)) {
            return backup ? backup(file, setup) : restore(file, List.of(args).contains(REPLACE), setup);
        } catch (Backup.Refused e) {
            err.println(e.getMessage());
            return 2;
        } catch (FileSystemException e) {
            err.println(Text.of("backup.no-file", e.getFile(), Optional.ofNullable(e.getReason()).orElse(e.getClass().getSimpleName())));
            return 1;
        } catch (IOException | SQLException | RuntimeException e) {
            err.println(Text.of("cli.broken", root(e).toString()));
            return 1;
        }
    }

    /** No configuration by name, or the kiosk would find it too. */
    @Import(Storage.class)
    static class Setup {
    }

    private static ConfigurableApplicationContext setup(List<String> options) {
        return new SpringApplicationBuilder(Setup.class).web(WebApplicationType.NONE).bannerMode(Banner.Mode.OFF).logStartupInfo(false)
                .properties("logging.level.root=WARN").run(options.toArray(String[]::new));
    }

    private static DataSource source(ConfigurableApplicationContext setup, String more) {
        JdbcConnectionDetails file = setup.getBeanProvider(JdbcConnectionDetails.class).getIfAvailable();
        if (file != null) {
            return new DriverManagerDataSource(file.getJdbcUrl() + more, file.getUsername(), file.getPassword());
        }
        Environment given = setup.getEnvironment();
        return new DriverManagerDataSource(given.getRequiredProperty("spring.datasource.url"), given.getProperty("spring.datasource.username", ""),
                given.getProperty("spring.datasource.password", ""));
    }

    private int backup(Path file, ConfigurableApplicationContext setup) throws IOException, SQLException, Backup.Refused {
        Backup.Done done;
        try {
            done = new Backup(source(setup, ";IFEXISTS=TRUE")).write(file);
        } catch (SQLException | RuntimeException e) {
            if (code(e) == NOT_THERE) {
                throw new Backup.Refused(Text.of("backup.nothing"));
            }
            if (code(e) != IN_USE) {
                throw e;
            }
            // The kiosk runs and has its file to itself; it makes the copy.
            done = BackupDesk.ask(Path.of(setup.getEnvironment().getRequiredProperty("boughwright.data")), file);
        }
        out.println(Text.of("backup.done", file, done.tables(), done.rows()));
        return 0;
    }

    private int restore(Path file, boolean replace, ConfigurableApplicationContext setup) throws IOException, SQLException, Backup.Refused {
        try {
            Backup.Done done = new Backup(source(setup, "")).read(file, replace);
            out.println(Text.of("backup.restored", file, done.tables(), done.rows()));
            return 0;
        } catch (SQLException | RuntimeException e) {
            if (code(e) == IN_USE) {
                throw new Backup.Refused(Text.of("backup.at-work"));
            }
            throw e;
        }
    }

    private static Throwable root(Throwable thrown) {
        return thrown.getCause() == null ? thrown : root(thrown.getCause());
    }

    private static int code(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && (sql.getErrorCode() == IN_USE || sql.getErrorCode() == NOT_THERE)) {
                return sql.getErrorCode();
            }
        }
        return 0;
    }
}
