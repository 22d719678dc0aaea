package boughwright.cli;

import boughwright.proposal.Designer;
import boughwright.text.Text;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What stands after {@code plan} on the command line. */
record PlanArguments(Path brief, Path out, Optional<Path> catalogue, Optional<Path> rules, Optional<Path> changes, long seed) {

    private static final List<String> OPTIONS = List.of("--out", "--catalogue", "--rules", "--changes", "--seed");

    /** The arguments make no sense; the message says which and why. */
    static final class Unreadable extends Exception {

        Unreadable(String message) {
            super(message);
        }
    }

    static PlanArguments read(String... args) throws Unreadable {
        Path brief = null;
        Path out = null;
        Path catalogue = null;
        Path rules = null;
        Path changes = null;
        long seed = Designer.SEED;
        for (int i = 1; i < args.length; i++) {
            String argument = args[i];
            if (!argument.startsWith("--")) {
                if (brief != null) {
                    throw new Unreadable(Text.of("cli.two-briefs", argument));
                }
                brief = Path.of(argument);
                continue;
            }
            if (!OPTIONS.contains(argument)) {
                throw new Unreadable(Text.of("cli.unknown", argument));
            }
            if (i + 1 == args.length || args[i + 1].isBlank()) {
                throw new Unreadable(Text.of("cli.no-value", argument));
            }
            String value = args[++i];
            switch (argument) {
                case "--out" -> out = Path.of(value);
                case "--catalogue" -> catalogue = Path.of(value);
                case "--rules" -> rules = Path.of(value);
                case "--changes" -> changes = Path.of(value);
                default -> seed = seed(value);
            }
        }
        if (brief == null || out == null) {
            throw new Unreadable(Text.of(brief == null ? "cli.no-brief" : "cli.no-out"));
        }
        for (Path file : Arrays.asList(brief, catalogue, changes)) {
            if (file != null && Files.isDirectory(file)) {
                throw new Unreadable(Text.of("cli.folder", file.toString()));
            }
        }
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new Unreadable(Text.of("cli.out-file", out.toString()));
        }
        return new PlanArguments(brief, out, Optional.ofNullable(catalogue), Optional.ofNullable(rules), Optional.ofNullable(changes), seed);
    }

    private static long seed(String value) throws Unreadable {
        try {
            return Long.parseLong(value);
        } catch (NumberFormatException e) {
            throw new Unreadable(Text.of("cli.seed", value));
        }
    }
}
