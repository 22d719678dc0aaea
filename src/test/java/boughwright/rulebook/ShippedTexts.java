package boughwright.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The rulebook's files as they lie under rules/, and the means to spoil one of them. */
final class ShippedTexts {

    private ShippedTexts() {
    }

    static Map<String, String> of(String ending) {
        var root = Path.of("rules");
        try (var files = Files.walk(root)) {
            var texts = new TreeMap<String, String>();
            for (var file : files.filter(path -> path.toString().endsWith(ending)).toList()) {
                texts.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
            return texts;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Map<String, String> with(Map<String, String> texts, String file, String part, String replacement) {
        var changed = new TreeMap<>(texts);
        if (!texts.get(file).contains(part)) {
            throw new IllegalArgumentException(file + " holds no " + part);
        }
        changed.put(file, texts.get(file).replace(part, replacement));
        return changed;
    }

    static int lineOf(String text, String part) {
        return DrlSource.lineAt(text, text.indexOf(part));
    }
}
