package boughwright;

import boughwright.cli.CommandLine;
import boughwright.storage.BackupCommand;
import java.util.Locale;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.autoconfigure.security.servlet.UserDetailsServiceAutoConfiguration;

/** Starts the kiosk, or answers a single command when the first argument names one. */
// Nobody signs in by Spring's own user, whose password it would tell in the log.
@SpringBootApplication(exclude = UserDetailsServiceAutoConfiguration.class)
public class Boughwright {

    /** Runs the command that {@code args} names, without a server; starts the kiosk otherwise. */
    public static void main(String[] args) {
        // Rules are compiled under the machine's own locale, and in some a dotless i makes "int" unknown.
        Locale.setDefault(Locale.ENGLISH);
        if (BackupCommand.understands(args)) {
            System.exit(new BackupCommand(System.out, System.err).run(args));
        }
        if (CommandLine.understands(args)) {
            // Before the first line is logged; the kiosk's own log is Spring's.
            System.setProperty("logback.configurationFile", "logback-commands.xml");
            System.exit(new CommandLine(System.out, System.err).run(args));
        }
        SpringApplication.run(Boughwright.class, args);
    }
}
