package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.measure.Units;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
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
}
