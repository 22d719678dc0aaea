package boughwright.publishing;

import java.util.Locale;
import boughwright.text.Text;
import boughwright.house.ReferenceBrief;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reference briefs: those that ship, which are rehearsed only, and those of the shop with what they must give. */
@Repository
public class References {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final JdbcClient database;
    private final Editions editions;

    References(JdbcClient database, Editions editions) {
        this.database = database;
        this.editions = editions;
    }

    /** A brief of the shop's own. */
    public record Own(int id, ReferenceBrief brief, String author) {
    }

    /** What a brief is called in the language that is spoken; one of the shop's own as the shop called it. */
    public static String title(ReferenceBrief brief) {
        return Text.or("house.reference.shipped." + brief.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"), brief.title());
    }

    /** Those that ship: trees that shops meet most, of every look and palette. */
    public static List<ReferenceBrief> shipped() {
        try (InputStream in = References.class.getResourceAsStream("/boughwright/house/reference-briefs.json")) {
            List<ReferenceBrief> briefs = new ArrayList<>();
            for (JsonNode node : JSON.readTree(in)) {
                briefs.add(new ReferenceBrief(node.required("title").asText(), node.required("brief").toString(), new TreeMap<>()));
            }
            return List.copyOf(briefs);
        } catch (IOException broken) {
            throw new IllegalStateException("the reference briefs could not be read", broken);
        }
    }

    public List<Own> own() {
        return database.sql("select * from reference_brief order by id").query((row, i) -> new Own(row.getInt("id"),
                new ReferenceBrief(row.getString("title"), row.getString("brief"), expected(row.getString("expected"))), row.getString("author"))).list();
    }

    public void add(ReferenceBrief brief, String author) {
        editions.alone(() -> {
            int id = database.sql("select coalesce(max(id), 0) + 1 from reference_brief").query(Integer.class).single();
            database.sql("insert into reference_brief (id, title, brief, expected, author) values (:id, :title, :brief, :expected, :author)")
                    .param("id", id).param("title", brief.title()).param("brief", brief.brief()).param("expected", text(brief.expected()))
                    .param("author", author).update();
            editions.note(author, HouseEvent.Kind.REFERENCE, Optional.empty(), "+ " + brief.title());
            return id;
        });
    }

    public void remove(int id, String author) {
        editions.alone(() -> {
            own().stream().filter(o -> o.id() == id).findFirst().ifPresent(own -> {
                database.sql("delete from reference_brief where id = :id").param("id", id).update();
                editions.note(author, HouseEvent.Kind.REFERENCE, Optional.empty(), "− " + own.brief().title());
            });
            return id;
        });
    }

    private static SortedMap<String, Integer> expected(String json) {
        try {
            return JSON.readValue(json, new TypeReference<TreeMap<String, Integer>>() { });
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("a reference brief could not be read", broken);
        }
    }

    private static String text(SortedMap<String, Integer> expected) {
        try {
            return JSON.writeValueAsString(expected);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a reference brief could not be written", impossible);
        }
    }
}
