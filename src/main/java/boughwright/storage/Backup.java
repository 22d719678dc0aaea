package boughwright.storage;

import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;

/**
 * Copies of everything that is kept, in one file that H2 and PostgreSQL both take: a ZIP with one file of JSON lines for each table and a
 * list of contents with counts and SHA-256 digests. A copy is the state of one moment, whatever is written meanwhile. It is there whole or
 * not at all; so is what is restored from it, and nothing is restored from a file that is damaged or comes from a newer kiosk.
 */
final class Backup {

    /** Of the file; rises when a kiosk of today could not read it any more. */
    private static final int FORMAT = 1;
    private static final String CONTENTS = "contents.json";
    private static final int BATCH = 500;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final DataSource source;

    Backup(DataSource source) {
        this.source = source;
    }

    /** What keeps a copy from being made or restored; everything is as it was. */
    static final class Refused extends Exception {

        Refused(String sentence) {
            super(sentence);
        }
    }

    /** @param rows in all tables together */
    record Done(int tables, long rows) {
    }

    private record Contents(String schema, SortedMap<String, Listed> tables) {
    }

    private record Listed(List<String> columns, long rows, String digest) {
    }

    /** Writes a copy. @throws Refused when the file is there already, or nothing is kept yet */
    Done write(Path file) throws IOException, SQLException, Refused {
        Path target = file.toAbsolutePath().normalize();
        if (Files.exists(target)) {
            throw new Refused(Text.of("backup.there", file));
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        try (OutputStream out = ownersOnly(part); Connection connection = source.getConnection()) {
            Done done = write(out, connection);
            // The name must not be there before its bytes are.
            try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
                written.force(true);
            }
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            return done;
        } catch (IOException | SQLException | Refused | RuntimeException e) {
            Files.deleteIfExists(part);
            throw e;
        }
    }

    /** A copy holds what only the database may know, such as digests of passwords. */
    private static OutputStream ownersOnly(Path part) throws IOException {
        Files.deleteIfExists(part);
        if (part.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(part, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        }
        return Files.newOutputStream(part);
    }

    private static Done write(OutputStream out, Connection connection) throws IOException, SQLException, Refused {
        connection.setAutoCommit(false);
        // All tables as of one moment. H2 knows that under this name, PostgreSQL under both.
        connection.setTransactionIsolation(Tables.isH2(connection) ? Connection.TRANSACTION_SERIALIZABLE : Connection.TRANSACTION_REPEATABLE_READ);
        try {
            List<Tables.Table> tables = Tables.in(connection);
            if (tables.isEmpty()) {
                throw new Refused(Text.of("backup.nothing"));
            }
            ObjectNode contents = JSON.createObjectNode();
            contents.put("format", FORMAT).put("schema", Tables.schemaVersion(connection));
            ObjectNode listed = contents.putObject("tables");
            long all = 0;
            ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
            for (Tables.Table table : tables) {
                zip.putNextEntry(new ZipEntry(entry(table.name())));
                MessageDigest digest = sha256();
                long rows = write(table, new DigestOutputStream(zip, digest), connection);
                zip.closeEntry();
                ObjectNode node = listed.putObject(table.name());
                table.columns().forEach(node.putArray("columns")::add);
                node.put("rows", rows).put("sha256", HexFormat.of().formatHex(digest.digest()));
                all += rows;
            }
            zip.putNextEntry(new ZipEntry(CONTENTS));
            zip.write(JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(contents));
            zip.closeEntry();
            zip.finish();
            out.flush();
            return new Done(tables.size(), all);
        } finally {
            connection.rollback();
            connection.setAutoCommit(true);
        }
    }

    private static String entry(String table) {
        return "tables/" + table + ".jsonl";
    }

    private static long write(Tables.Table table, OutputStream out, Connection connection) throws IOException, SQLException {
        long rows = 0;
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        try (Statement statement = connection.createStatement()) {
            statement.setFetchSize(BATCH);
            try (ResultSet result = statement.executeQuery("select " + String.join(", ", table.columns()) + " from " + table.name())) {
                while (result.next()) {
                    ArrayNode row = JSON.createArrayNode();
                    for (int i = 0; i < table.columns().size(); i++) {
                        row.add(Cell.read(result, i + 1, table.types().get(i)));
                    }
                    writer.write(JSON.writeValueAsString(row));
                    writer.write('\n');
                    rows++;
                }
            }
        }
        writer.flush();
        return rows;
    }

    /**
     * Puts back what a copy holds. The file is read whole and compared with its list of contents before anything is touched; then everything
     * is put back in one transaction.
     *
     * @param replace whether what is kept now may go
     * @throws Refused when the file is no copy, is damaged or newer than this kiosk, or when something is kept already
     */
    Done read(Path file, boolean replace) throws IOException, SQLException, Refused {
        try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            Contents contents = contents(zip, file);
            for (String table : contents.tables().keySet()) {
                check(zip, table, contents.tables().get(table), file);
            }
            MigrationVersion theirs = MigrationVersion.fromVersion(contents.schema());
            MigrationInfo[] known = Flyway.configure().dataSource(source).load().info().all();
            if (theirs.compareTo(known[known.length - 1].getVersion()) > 0) {
                throw new Refused(Text.of("backup.newer", file));
            }
            prepare(theirs, replace);
            Done done = load(zip, contents);
            Flyway.configure().dataSource(source).load().migrate();
            return done;
        } catch (NoSuchFileException | java.io.FileNotFoundException e) {
            throw new Refused(Text.of("cli.no-file", file));
        } catch (ZipException | JsonProcessingException e) {
            throw new Refused(Text.of("backup.damaged", file));
        }
    }

    private static Contents contents(ZipFile zip, Path file) throws IOException, Refused {
        ZipEntry entry = zip.getEntry(CONTENTS);
        if (entry == null) {
            throw new Refused(Text.of("backup.no-backup", file));
        }
        JsonNode json;
        try (InputStream in = zip.getInputStream(entry)) {
            json = JSON.readTree(in.readAllBytes());
        }
        if (json.path("format").asInt() > FORMAT) {
            throw new Refused(Text.of("backup.newer", file));
        }
        SortedMap<String, Listed> tables = new TreeMap<>();
        for (var field : json.path("tables").properties()) {
            List<String> columns = new ArrayList<>();
            field.getValue().path("columns").forEach(c -> columns.add(c.asText()));
            tables.put(field.getKey(), new Listed(columns, field.getValue().path("rows").asLong(-1), field.getValue().path("sha256").asText()));
        }
        if (json.path("format").asInt() < 1 || tables.isEmpty() || json.path("schema").asText().isEmpty()) {
            throw new Refused(Text.of("backup.no-backup", file));
        }
        return new Contents(json.path("schema").asText(), tables);
    }

    private static void check(ZipFile zip, String table, Listed listed, Path file) throws IOException, Refused {
        ZipEntry entry = zip.getEntry(entry(table));
        MessageDigest digest = sha256();
        long rows = 0;
        if (entry != null) {
            try (InputStream in = new DigestInputStream(zip.getInputStream(entry), digest)) {
                byte[] bytes = new byte[1 << 16];
                for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
                    for (int i = 0; i < n; i++) {
                        rows += bytes[i] == '\n' ? 1 : 0;
                    }
                }
            }
        }
        if (entry == null || rows != listed.rows() || !HexFormat.of().formatHex(digest.digest()).equals(listed.digest())) {
            throw new Refused(Text.of("backup.damaged", file));
        }
    }

    /** Makes the tables as they were when the copy was made, unless there are some already. */
    private void prepare(MigrationVersion theirs, boolean replace) throws SQLException, Refused {
        try (Connection connection = source.getConnection()) {
            if (Tables.othersAtWork(connection)) {
                throw new Refused(Text.of("backup.at-work"));
            }
            if (!Tables.in(connection).isEmpty()) {
                if (!replace && Tables.holdsSomething(connection)) {
                    throw new Refused(Text.of("backup.not-empty"));
                }
                MigrationVersion ours = MigrationVersion.fromVersion(Tables.schemaVersion(connection));
                if (ours.compareTo(theirs) > 0) {
                    throw new Refused(Text.of("backup.older"));
                }
            }
        }
        Flyway.configure().dataSource(source).target(theirs).load().migrate();
    }

    private Done load(ZipFile zip, Contents contents) throws IOException, SQLException, Refused {
        try (Connection connection = source.getConnection()) {
            List<Tables.Table> tables = Tables.in(connection);
            long all = 0;
            connection.setAutoCommit(false);
            try {
                for (Tables.Table table : tables) {
                    Listed listed = contents.tables().get(table.name());
                    if (listed == null || !new java.util.TreeSet<>(listed.columns()).equals(new java.util.TreeSet<>(table.columns()))) {
                        throw new Refused(Text.of("backup.other-tables", table.name()));
                    }
                }
                for (int i = tables.size() - 1; i >= 0; i--) {
                    try (Statement statement = connection.createStatement()) {
                        statement.executeUpdate("delete from " + tables.get(i).name());
                    }
                }
                for (Tables.Table table : tables) {
                    all += load(zip, table.in(contents.tables().get(table.name()).columns()), connection);
                }
                connection.commit();
            } catch (IOException | SQLException | Refused | RuntimeException e) {
                connection.rollback();
                throw e;
            } finally {
                connection.setAutoCommit(true);
            }
            // Numbers that the database gives go on after the highest; should this be interrupted, restoring again mends it.
            for (Tables.Table table : tables) {
                Tables.goOnCounting(table, connection);
            }
            return new Done(tables.size(), all);
        }
    }

    private static long load(ZipFile zip, Tables.Table table, Connection connection) throws IOException, SQLException {
        String marks = String.join(", ", table.columns().stream().map(c -> "?").toList());
        long rows = 0;
        try (PreparedStatement insert = connection.prepareStatement(
                        "insert into " + table.name() + " (" + String.join(", ", table.columns()) + ") values (" + marks + ")");
                BufferedReader lines = new BufferedReader(new InputStreamReader(zip.getInputStream(zip.getEntry(entry(table.name()))), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                JsonNode row = JSON.readTree(line);
                for (int i = 0; i < table.columns().size(); i++) {
                    Cell.write(insert, i + 1, table.types().get(i), row.get(i));
                }
                insert.addBatch();
                if (++rows % BATCH == 0) {
                    insert.executeBatch();
                }
            }
            insert.executeBatch();
        }
        return rows;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
