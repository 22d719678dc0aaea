package boughwright.publishing;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The rulebook's files in the shop's own folder, or those that ship. */
final class ShopFiles {

    private final Optional<Path> folder;

    /** @param folder empty for the files that ship */
    ShopFiles(Optional<Path> folder) {
        this.folder = folder;
    }

    String read(String path) throws IOException {
        if (folder.isPresent()) {
            return Files.readString(folder.get().resolve(path));
        }
        try (InputStream in = ShopFiles.class.getResourceAsStream("/rules/" + path)) {
            if (in == null) {
                throw new FileNotFoundException(path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
