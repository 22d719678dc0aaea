package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.brief.Word;
import boughwright.measure.Length;
import boughwright.measure.Units;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the interview has heard so far; knows no screen. Lengths stay as they were said until the brief is read. */
final class Answers {

    private static final ObjectMapper JSON = new ObjectMapper();

    Units units = Units.FEET;
    String height = "";
    String diameter = "";
    Fullness fullness = Fullness.MEDIUM;
    SeenFrom seenFrom = SeenFrom.WALL;
    boolean lit;
    boolean real;
    String ceiling = "";
    boolean nearHeat;
    boolean toddlers;
    boolean pets;
    String look = "";
    /** Id of one of the shop's palettes; empty for the look's own. */
    String palette = "";
    /** Four colours by role when the customer chose their own; else empty. */
    final Map<String, String> ownColours = new LinkedHashMap<>();
    Abundance abundance = Abundance.GENEROUS;
    /** Plain decimal; empty for no limit. */
    String budget = "";
    final Map<String, Integer> owned = new LinkedHashMap<>();
    /** What is owned in the customer's words. */
    final List<String> ownedInWords = new ArrayList<>();

    Optional<Length> heightRead() {
        return Length.read(height);
    }

    /** The measured diameter, or the usual one; empty while the height is unknown. */
    Optional<Length> diameterRead() {
        return Length.read(diameter).or(() -> heightRead().map(h -> Tree.usualDiameter(h, fullness)));
    }

    /** The brief as JSON, with only what was answered. */
    String brief() {
        ObjectNode root = JSON.createObjectNode();
        ObjectNode tree = root.putObject("tree");
        tree.put("height", height);
        if (!diameter.isBlank()) {
            tree.put("widestDiameter", diameter);
        }
        tree.put("fullness", fullness.word()).put("seenFrom", seenFrom.word()).put("lit", lit).put("real", real);
        ObjectNode room = root.putObject("room");
        if (!ceiling.isBlank()) {
            room.put("ceiling", ceiling);
        }
        room.put("nearHeat", nearHeat);
        root.putObject("household").put("toddlers", toddlers).put("pets", pets);
        if (!look.isEmpty()) {
            root.put("look", look);
        }
        if (!ownColours.isEmpty()) {
            ownColours.forEach(root.putObject("palette")::put);
        } else if (!palette.isEmpty()) {
            root.put("palette", palette);
        }
        root.put("abundance", abundance.word());
        if (!budget.isBlank()) {
            root.put("budget", budget);
        }
        if (!owned.isEmpty() || !ownedInWords.isEmpty()) {
            ArrayNode list = root.putArray("owned");
            owned.forEach((sku, quantity) -> list.addObject().put("sku", sku).put("quantity", quantity));
            ownedInWords.forEach(text -> list.addObject().put("text", text));
        }
        return root.toString();
    }

    /**
     * What {@link #brief} has written, read again; what is missing or no answer of ours is as it was before anything was asked.
     *
     * @param brief any brief, also one that came over the interface; empty for none
     */
    static Answers of(String brief, Units units) {
        Answers answers = new Answers();
        answers.units = units;
        JsonNode root = read(brief);
        JsonNode tree = root.path("tree");
        answers.height = tree.path("height").asText("");
        answers.diameter = tree.path("widestDiameter").asText("");
        answers.fullness = Word.read(Fullness.class, tree.path("fullness").asText("")).orElse(answers.fullness);
        answers.seenFrom = Word.read(SeenFrom.class, tree.path("seenFrom").asText("")).orElse(answers.seenFrom);
        answers.lit = tree.path("lit").asBoolean();
        answers.real = tree.path("real").asBoolean();
        answers.ceiling = root.path("room").path("ceiling").asText("");
        answers.nearHeat = root.path("room").path("nearHeat").asBoolean();
        answers.toddlers = root.path("household").path("toddlers").asBoolean();
        answers.pets = root.path("household").path("pets").asBoolean();
        answers.look = root.path("look").asText("");
        if (root.path("palette").isObject()) {
            root.path("palette").fields().forEachRemaining(c -> answers.ownColours.put(c.getKey(), c.getValue().asText()));
        } else {
            answers.palette = root.path("palette").asText("");
        }
        answers.abundance = Word.read(Abundance.class, root.path("abundance").asText("")).orElse(answers.abundance);
        answers.budget = root.path("budget").asText("");
        for (JsonNode piece : root.path("owned")) {
            if (piece.has("text")) {
                answers.ownedInWords.add(piece.path("text").asText());
            } else {
                answers.owned.put(piece.path("sku").asText(), piece.path("quantity").asInt());
            }
        }
        return answers;
    }

    private static JsonNode read(String brief) {
        try {
            return brief.isBlank() ? MissingNode.getInstance() : JSON.readTree(brief);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a kept brief is JSON", e);
        }
    }
}
