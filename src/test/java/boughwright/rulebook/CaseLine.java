package boughwright.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of a case file that says something: neither blank nor a comment.
 *
 * @param file path below src/test/resources/rules, {@code <topic>/<name>}
 * @param number counted from 1
 */
record CaseLine(String file, int number, String text) {

    private static final Path FOLDER = Path.of("src/test/resources/rules");

    /** Those of every case file of that name, topic by topic. */
    static List<CaseLine> of(String name) {
        try (var files = Files.walk(FOLDER, 2)) {
            List<CaseLine> all = new ArrayList<>();
            for (Path file : files.filter(path -> path.endsWith(name)).sorted().toList()) {
                all.addAll(of(FOLDER.relativize(file).toString().replace('\\', '/'), Files.readAllLines(file)));
            }
            return all;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<CaseLine> of(String file, List<String> texts) {
        List<CaseLine> lines = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i).strip();
            if (!text.isEmpty() && !text.startsWith("#")) {
                lines.add(new CaseLine(file, i + 1, text));
            }
        }
        return lines;
    }

    /** The name of the rule or table file that the line is about, without its folder and ending. */
    String topic() {
        return file.substring(0, file.indexOf('/'));
    }

    static String topicOf(String rulebookFile) {
        return rulebookFile.substring(rulebookFile.lastIndexOf('/') + 1, rulebookFile.lastIndexOf('.'));
    }

    AssertionError fault(String what) {
        return new AssertionError(FOLDER + "/" + file + ":" + number + ": " + what);
    }
}
