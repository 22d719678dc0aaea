package boughwright.shelf;

import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.CatalogueFixture;
import boughwright.intake.Delivery;
import boughwright.intake.Intake;
import boughwright.intake.IntakeFile;
import boughwright.intake.Kind;
import boughwright.intake.Mapping;
import boughwright.intake.ColumnGuess;
import boughwright.intake.Opening;
import boughwright.intake.Progress;
import boughwright.storage.Changes;
import boughwright.storage.Databases;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** A shelf in a database of its own. */
public final class ShelfFixture {

    static final String AUTHOR = "Ada";
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    final DataSource source;
    final Shelf shelf;
    final Changes changes;
    final Till till;
    final Photos photos;
    final FileMappings mappings;
    final Uses uses;
    final Reservations reservations;

    private ShelfFixture(DataSource source) {
        this.source = source;
        this.changes = new Changes(JdbcClient.create(source));
        ShelfBooks books = books(source, changes, NOON);
        this.shelf = new Shelf(books);
        this.till = new Till(JdbcClient.create(source), books, shelf);
        this.photos = new Photos(JdbcClient.create(source), books);
        this.mappings = new FileMappings(JdbcClient.create(source), books);
        this.uses = new Uses(new JdbcTemplate(source));
        this.reservations = new Reservations(new JdbcTemplate(source), changes, shelf);
    }

    private static ShelfBooks books(DataSource source, Changes changes, Clock clock) {
        return new ShelfBooks(new JdbcTemplate(source), new Transactions(new TransactionTemplate(new DataSourceTransactionManager(source))), changes,
                new Settling(JdbcClient.create(source), source), clock);
    }

    /** A shelf that is not opened yet, in a database that others use too. */
    public static Shelf shelf(DataSource source, Changes changes, Clock clock) {
        return new Shelf(books(source, changes, clock));
    }

    /** What a shelf promises, in a database that others use too. */
    public static Reservations reservations(DataSource source, Changes changes, Shelf shelf) {
        return new Reservations(new JdbcTemplate(source), changes, shelf);
    }

    static ShelfFixture empty() {
        return empty(Databases.H2);
    }

    static ShelfFixture empty(Databases databases) {
        return new ShelfFixture(databases.fresh());
    }

    /** With its database in a file, as a kiosk has it. */
    static ShelfFixture onDisk(Path folder) {
        return at("jdbc:h2:file:" + folder.toAbsolutePath().resolve("shop") + ";WRITE_DELAY=0");
    }

    private static ShelfFixture at(String address) {
        DataSource source = JdbcConnectionPool.create(address, "sa", "");
        Flyway.configure().dataSource(source).load().migrate();
        return new ShelfFixture(source);
    }

    /** Opened with a file of these rows. */
    static ShelfFixture with(String... rows) {
        return with(Databases.H2, rows);
    }

    static ShelfFixture with(Databases databases, String... rows) {
        ShelfFixture fixture = empty(databases);
        fixture.open(rows);
        return fixture;
    }

    List<CatalogueFault> open(String... rows) {
        return shelf.open(() -> CatalogueFixture.LOOKS, CatalogueFixture.USD, CatalogueFixture.file(rows));
    }

    /** Opened with the season that ships. */
    void openWith(Set<String> looks) throws IOException {
        shelf.open(() -> looks, CatalogueFixture.USD, Files.readString(Path.of("catalogue-samples/season.csv")));
    }

    /** The same database opened by a kiosk that has been started anew. */
    ShelfFixture again(String... rows) {
        ShelfFixture fixture = unopened();
        fixture.open(rows);
        return fixture;
    }

    /** What another kiosk has of the same database before it is opened. */
    ShelfFixture unopened() {
        return new ShelfFixture(source);
    }

    /** A file as staff would drop it, with its columns matched as guessed. */
    static Delivery.Read delivery(Path folder, Kind kind, String text) {
        try {
            Path file = Files.writeString(Files.createTempFile(folder, "file", ".csv"), text);
            IntakeFile opened = ((Opening.Opened) IntakeFile.of("delivery.csv", file)).file();
            return (Delivery.Read) Intake.read(opened, kind, Mapping.of(ColumnGuess.of(opened, kind)), CatalogueFixture.LOOKS, CatalogueFixture.USD,
                    Progress.SILENT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
