package boughwright.publishing;

import boughwright.text.Text;
import boughwright.storage.Changes;
import boughwright.storage.Packed;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * All editions, which of them is live when, and what was done with them by whom. What a method has kept survives the loss of the process.
 * Kiosks that share a database write one after another and hear of each other ({@link #whenChangedElsewhere}).
 */
@Repository
public class Editions {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Of the table {@code change_count}. */
    private static final String TOPIC = "editions";

    private final JdbcClient database;
    private final Transactions transactions;
    private final Changes changes;
    private final Settling settling;
    private final Clock clock;

    Editions(JdbcClient database, Transactions transactions, Changes changes, Settling settling, Clock clock) {
        this.database = database;
        this.transactions = transactions;
        this.changes = changes;
        this.settling = settling;
        this.clock = clock;
    }

    /** Runs work that changes something here, in a transaction and alone among all kiosks; again when another one was in its way. */
    <T> T alone(Supplier<T> work) {
        T answer = transactions.run(() -> {
            changes.bump(TOPIC);
            return work.get();
        });
        settling.settle();
        return answer;
    }

    /** Calls when another kiosk has changed something. */
    void whenChangedElsewhere(Runnable listener) {
        changes.whenChanged(TOPIC, listener);
    }

    /** Today where the shop stands. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** When an edition was kept, by the clock of the shop. */
    public String moment(KeptEdition edition) {
        return moment(edition.madeAt());
    }

    /** When something was done, by the clock of the shop. */
    public String moment(HouseEvent event) {
        return moment(event.madeAt());
    }

    private String moment(LocalDateTime utc) {
        return Text.moment(utc.atZone(ZoneOffset.UTC).withZoneSameInstant(clock.getZone()).toLocalDateTime());
    }

    private LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /** The newest first. */
    public List<KeptEdition> all() {
        return database.sql("select * from edition order by number desc").query(Editions::edition).list();
    }

    public Optional<KeptEdition> edition(int number) {
        return database.sql("select * from edition where number = :number").param("number", number).query(Editions::edition).optional();
    }

    public Optional<KeptEdition> edition(String id) {
        return database.sql("select * from edition where id = :id").param("id", id).query(Editions::edition).optional();
    }

    /** The newest first. */
    public List<Publication> publications() {
        return database.sql("select * from publication order by id desc").query(Editions::publication).list();
    }

    /** What is live on a day; empty before the first publication. */
    public Optional<Publication> live(LocalDate day) {
        return publications().stream().filter(p -> !p.withdrawn() && !p.startsOn().isAfter(day))
                .max(Comparator.comparing(Publication::startsOn).thenComparing(Publication::id));
    }

    /** What will go live later, the soonest first. */
    public List<Publication> toCome(LocalDate day) {
        return publications().stream().filter(p -> !p.withdrawn() && p.startsOn().isAfter(day)).sorted(Comparator.comparing(Publication::startsOn)).toList();
    }

    /** Whether an edition is called so, in capitals or not. */
    public boolean hasTitle(String title) {
        return database.sql("select count(*) from edition where lower(title) = lower(:title)").param("title", title).query(Integer.class).single() > 0;
    }

    /** An id that no edition has, made of a title: {@code winter-26-second-thoughts}. */
    public String freeId(String title) {
        String plain = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String stem = plain.isEmpty() ? "edition" : plain.substring(0, Math.min(60, plain.length()));
        String id = stem;
        for (int i = 2; edition(id).isPresent(); i++) {
            id = stem + "-" + i;
        }
        return id;
    }

    /**
     * Keeps an edition and says that it goes live on a day, both or neither.
     *
     * @param edition whose number and time do not matter: they are given here
     * @param startsOn empty to keep it without publishing it
     * @return its number; empty when another edition has got its id or title meanwhile, and nothing is kept
     */
    Optional<Integer> keep(KeptEdition edition, Optional<LocalDate> startsOn, String changes) {
        return alone(() -> {
            if (hasTitle(edition.title()) && edition.origin() == KeptEdition.Origin.STAFF || edition(edition.id()).isPresent()) {
                return Optional.<Integer>empty();
            }
            int next = next("edition", "number");
            database.sql("""
                            insert into edition (number, id, title, note, author, origin, based_on, made_at, texts, override)
                            values (:number, :id, :title, :note, :author, :origin, :based, :made, :texts, :override)""")
                    .param("number", next).param("id", edition.id()).param("title", edition.title()).param("note", edition.note())
                    .param("author", edition.author()).param("origin", edition.origin().name()).param("based", edition.basedOn().orElse(null))
                    .param("made", now()).param("texts", packed(edition.texts())).param("override", edition.override()).update();
            insertNote(edition.author(), HouseEvent.Kind.KEPT, Optional.of(next), changes);
            startsOn.ifPresent(day -> insertPublication(next, day, edition.author(), HouseEvent.Kind.PUBLISHED));
            return Optional.of(next);
        });
    }

    /** An edition that is kept already goes live again from today on. */
    void rollBack(int number, String author) {
        alone(() -> {
            insertPublication(number, today(), author, HouseEvent.Kind.ROLLED_BACK);
            return number;
        });
    }

    /** A publication that has not begun does not take place. */
    void withdraw(int publication, String author) {
        alone(() -> {
            database.sql("update publication set withdrawn = true where id = :id and starts_on > :today").param("id", publication).param("today", today()).update();
            Optional<Integer> edition = publications().stream().filter(p -> p.id() == publication).map(Publication::edition).findFirst();
            insertNote(author, HouseEvent.Kind.WITHDRAWN, edition, "");
            return publication;
        });
    }

    private void insertPublication(int edition, LocalDate startsOn, String author, HouseEvent.Kind kind) {
        database.sql("insert into publication (id, edition, starts_on, made_at, author, withdrawn) values (:id, :edition, :starts, :made, :author, false)")
                .param("id", next("publication", "id")).param("edition", edition).param("starts", startsOn).param("made", now())
                .param("author", author).update();
        insertNote(author, kind, Optional.of(edition), startsOn.toString());
    }

    /** That somebody has made a file the draft. */
    public void imported(String author, String file) {
        note(author, HouseEvent.Kind.IMPORTED, Optional.empty(), file.length() <= 80 ? file : file.substring(0, 79) + "…");
    }

    /** Adds to what is told under "history". */
    void note(String author, HouseEvent.Kind kind, Optional<Integer> edition, String words) {
        alone(() -> {
            insertNote(author, kind, edition, words);
            return words;
        });
    }

    private void insertNote(String author, HouseEvent.Kind kind, Optional<Integer> edition, String words) {
        database.sql("insert into house_event (id, made_at, author, what, edition, words) values (:id, :made, :author, :what, :edition, :words)")
                .param("id", next("house_event", "id")).param("made", now()).param("author", author).param("what", kind.name())
                .param("edition", edition.orElse(null)).param("words", words).update();
    }

    /** The newest first. */
    public List<HouseEvent> history(int most) {
        return database.sql("select * from house_event order by id desc fetch first :most rows only").param("most", most)
                .query((row, i) -> new HouseEvent(row.getTimestamp("made_at").toLocalDateTime(), row.getString("author"),
                        HouseEvent.Kind.valueOf(row.getString("what")), Optional.ofNullable((Integer) row.getObject("edition")), row.getString("words")))
                .list();
    }

    /** Nobody else can take the same: whoever writes here does so alone. */
    private int next(String table, String column) {
        return database.sql("select coalesce(max(" + column + "), 0) + 1 from " + table).query(Integer.class).single();
    }

    /** Packed, since tables are long and repeat themselves: a database keeps what it has read, and a season has many editions. */
    static String packed(SortedMap<String, String> texts) {
        try {
            return Packed.of(JSON.writeValueAsString(texts));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("an edition could not be written", impossible);
        }
    }

    private static SortedMap<String, String> unpacked(String packed) throws IOException {
        return JSON.readValue(Packed.open(packed), new TypeReference<TreeMap<String, String>>() { });
    }

    private static KeptEdition edition(ResultSet row, int index) throws SQLException {
        try {
            return new KeptEdition(row.getInt("number"), row.getString("id"), row.getString("title"), row.getString("note"), row.getString("author"),
                    KeptEdition.Origin.valueOf(row.getString("origin")), Optional.ofNullable((Integer) row.getObject("based_on")),
                    row.getTimestamp("made_at").toLocalDateTime(), unpacked(row.getString("texts")), row.getString("override"));
        } catch (IOException broken) {
            throw new IllegalStateException("edition " + row.getInt("number") + " could not be read", broken);
        }
    }

    private static Publication publication(ResultSet row, int index) throws SQLException {
        return new Publication(row.getInt("id"), row.getInt("edition"), row.getDate("starts_on").toLocalDate(),
                row.getTimestamp("made_at").toLocalDateTime(), row.getString("author"), row.getBoolean("withdrawn"));
    }
}
