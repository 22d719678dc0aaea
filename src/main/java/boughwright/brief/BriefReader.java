package boughwright.brief;

import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.measure.Units;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a brief from JSON, strictly: a field it does not know, a value outside what is served or a text without a unit is a
 * fault, and all faults are reported at once.
 *
 * <p>Only {@code tree.height} is required. Defaults: medium, the usual diameter for height and fullness, wall, not lit, not
 * real, ceiling unknown, no heat near, no toddlers, no pets, the shop's first look, that look's palette, generous, no budget,
 * nothing owned.
 */
public final class BriefReader {

    /** Ceilings that a room may have; a lower tree in a lower room is refused before this matters. */
    private static final Length LOWEST_CEILING = Length.ofFeet(4);
    private static final Length HIGHEST_CEILING = Length.ofFeet(60);
    private static final int MOST_OWNED = 200;
    static final int MOST_OF_ONE = 10_000;

    /** How the parser tells of a key that stands twice in one object. */
    private static final Pattern TWICE = Pattern.compile("^Duplicate [Ff]ield '([^']*)'");

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .build();

    private final ShopChoices shop;

    public BriefReader(ShopChoices shop) {
        this.shop = shop;
    }

    /** Reads JSON text; text that is no JSON object gives one fault that names line and column. */
    public BriefReading read(String json) {
        try {
            return read(JSON.readTree(json == null ? "" : json));
        } catch (JsonProcessingException e) {
            return new BriefReading.Faulty(List.of(new BriefFault("brief", "", unreadable(e), BriefFault.Kind.UNREADABLE)));
        }
    }

    private static String unreadable(JsonProcessingException e) {
        String where = e.getLocation() == null ? "" : Text.of("brief.json.where",
                String.valueOf(e.getLocation().getLineNr()), String.valueOf(e.getLocation().getColumnNr()));
        Matcher twice = TWICE.matcher(e.getOriginalMessage());
        return twice.find() ? Text.of("brief.json.twice", twice.group(1), where) : Text.of("brief.json.mend", where);
    }

    /** Reads a JSON tree; see the class. */
    public BriefReading read(JsonNode json) {
        if (json == null || !json.isObject()) {
            String value = json == null || json.isMissingNode() ? "" : json.toString();
            return new BriefReading.Faulty(List.of(new BriefFault("brief", value, Text.of("brief.json.object"), BriefFault.Kind.UNREADABLE)));
        }
        List<BriefFault> faults = new ArrayList<>();
        Fields root = new Fields(json, "", faults);
        Fields tree = root.object("tree");
        Fields room = root.object("room");
        Fields household = root.object("household");

        Optional<Length> height = tree.length("height", Tree.LEAST_HEIGHT, Tree.GREATEST_HEIGHT, Text.of("brief.height.mend"));
        if (height.isEmpty() && !tree.has("height")) {
            faults.add(BriefFault.missing("tree.height", Text.of("brief.height.mend")));
        }
        Units units = Units.of(tree.rawText("height"));
        Fullness fullness = tree.choice("fullness", Fullness.class, Fullness.MEDIUM);
        Optional<Length> diameter = readDiameter(tree, height, units);
        SeenFrom seenFrom = tree.choice("seenFrom", SeenFrom.class, SeenFrom.WALL);
        boolean lit = tree.flag("lit");
        boolean real = tree.flag("real");
        tree.refuseOthers("height", "widestDiameter", "fullness", "seenFrom", "lit", "real");

        Optional<Length> ceiling = room.length("ceiling", LOWEST_CEILING, HIGHEST_CEILING, Text.of("brief.ceiling.mend"));
        if (height.isPresent() && ceiling.isPresent() && height.get().metres() > ceiling.get().metres() + Fields.HAIR) {
            faults.add(BriefFault.wrong("room.ceiling", room.rawText("ceiling"), Text.of("brief.ceiling.lower", height.get().show(units))));
        }
        Room theRoom = new Room(ceiling, room.flag("nearHeat"));
        room.refuseOthers("ceiling", "nearHeat");

        Household theHousehold = new Household(household.flag("toddlers"), household.flag("pets"));
        household.refuseOthers("toddlers", "pets");

        Look look = readLook(root, faults);
        Palette palette = readPalette(root, look, faults);
        Abundance abundance = root.choice("abundance", Abundance.class, Abundance.GENEROUS);
        Optional<Money> budget = readBudget(root, faults);
        List<Owned> owned = readOwned(root, faults);
        root.refuseOthers("tree", "room", "household", "look", "palette", "abundance", "budget", "owned");

        if (!faults.isEmpty() || height.isEmpty()) {
            return new BriefReading.Faulty(List.copyOf(faults));
        }
        Tree theTree = new Tree(height.get(), diameter.orElse(Tree.usualDiameter(height.get(), fullness)), fullness, seenFrom, lit, real);
        return new BriefReading.Read(new Brief(theTree, theRoom, theHousehold, look, palette, abundance, budget, owned, units,
                json.toString()));
    }

    private static Optional<Length> readDiameter(Fields tree, Optional<Length> height, Units units) {
        if (height.isEmpty()) {
            return tree.length("widestDiameter", Length.ofInches(1), Tree.GREATEST_HEIGHT, Text.of("brief.diameter.unit"));
        }
        Length narrowest = new Length(height.get().metres() * Tree.NARROWEST);
        Length widest = new Length(height.get().metres() * Tree.WIDEST);
        return tree.length("widestDiameter", narrowest, widest, Text.of("brief.diameter.mend", height.get().show(units),
                narrowest.roundedUp(units).show(units), widest.roundedDown(units).show(units)));
    }

    private Look readLook(Fields root, List<BriefFault> faults) {
        String id = root.text("look", Text.of("brief.look.mend", words(shop.looks().stream().map(Look::id).toList()))).orElse(null);
        if (id == null) {
            return shop.looks().get(0);
        }
        Optional<Look> look = shop.look(id);
        if (look.isEmpty()) {
            faults.add(BriefFault.wrong("look", id, Text.of("brief.look.mend", words(shop.looks().stream().map(Look::id).toList()))));
        }
        return look.orElse(shop.looks().get(0));
    }

    private Palette readPalette(Fields root, Look look, List<BriefFault> faults) {
        Palette lookPalette = shop.palette(look.palette()).orElseThrow();
        JsonNode node = root.node("palette");
        String mend = Text.of("brief.palette.mend", words(shop.palettes().stream().map(Palette::id).toList()));
        if (node == null) {
            return lookPalette;
        }
        if (node.isTextual()) {
            Optional<Palette> palette = shop.palette(node.textValue());
            if (palette.isEmpty()) {
                faults.add(BriefFault.wrong("palette", node.textValue(), mend));
            }
            return palette.orElse(lookPalette);
        }
        if (!node.isObject()) {
            faults.add(BriefFault.wrong("palette", node.toString(), mend));
            return lookPalette;
        }
        Fields own = new Fields(node, "palette.", faults);
        int before = faults.size();
        List<Srgb> colours = new ArrayList<>();
        for (String role : List.of("main", "second", "spark", "ground")) {
            String hex = own.text(role, Text.of("brief.colour.mend")).orElse(null);
            Optional<Srgb> colour = Srgb.read(hex);
            if (colour.isPresent()) {
                colours.add(colour.get());
            } else if (hex != null) {
                faults.add(BriefFault.wrong("palette." + role, hex, Text.of("brief.colour.mend")));
            } else if (!own.has(role)) {
                faults.add(BriefFault.missing("palette." + role, Text.of("brief.colour.mend")));
            }
        }
        own.refuseOthers("main", "second", "spark", "ground");
        return faults.size() > before ? lookPalette
                : Palette.own(colours.get(0), colours.get(1), colours.get(2), colours.get(3));
    }

    private Optional<Money> readBudget(Fields root, List<BriefFault> faults) {
        String mend = Text.of("brief.budget.mend");
        Optional<String> text = root.text("budget", mend);
        Optional<Money> budget = text.flatMap(t -> Money.read(t, shop.currency())).filter(m -> m.amount().signum() > 0);
        if (text.isPresent() && budget.isEmpty()) {
            faults.add(BriefFault.wrong("budget", text.get(), mend));
        }
        return budget;
    }

    private List<Owned> readOwned(Fields root, List<BriefFault> faults) {
        JsonNode node = root.node("owned");
        List<Owned> owned = new ArrayList<>();
        if (node == null) {
            return owned;
        }
        if (!node.isArray() || node.size() > MOST_OWNED) {
            faults.add(BriefFault.wrong("owned", node.isArray() ? String.valueOf(node.size()) : node.toString(),
                    Text.of("brief.owned.mend", String.valueOf(MOST_OWNED))));
            return owned;
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < node.size(); i++) {
            String path = "owned[" + i + "]";
            if (!node.get(i).isObject()) {
                faults.add(BriefFault.wrong(path, node.get(i).toString(), Text.of("brief.owned.entry")));
                continue;
            }
            Fields entry = new Fields(node.get(i), path + ".", faults);
            if (entry.has("text")) {
                readDescribed(entry, path, i, faults).ifPresent(owned::add);
                continue;
            }
            String sku = entry.text("sku", Text.of("brief.owned.sku")).orElse("");
            Optional<Integer> quantity = entry.whole("quantity", 1, MOST_OF_ONE, Text.of("brief.owned.quantity", String.valueOf(MOST_OF_ONE)));
            entry.refuseOthers("sku", "quantity");
            if (!entry.has("sku")) {
                faults.add(BriefFault.missing(path + ".sku", Text.of("brief.owned.sku")));
            } else if (sku.isBlank() && entry.node("sku") != null && entry.node("sku").isTextual()) {
                faults.add(BriefFault.wrong(path + ".sku", sku, Text.of("brief.owned.sku")));
            } else if (!sku.isBlank() && !seen.add(sku)) {
                faults.add(BriefFault.wrong(path + ".sku", sku, Text.of("brief.owned.twice")));
            }
            if (quantity.isEmpty() && !entry.has("quantity")) {
                faults.add(BriefFault.missing(path + ".quantity", Text.of("brief.owned.quantity", String.valueOf(MOST_OF_ONE))));
            }
            quantity.ifPresent(q -> owned.add(new Owned(sku, q)));
        }
        return owned;
    }

    private static Optional<Owned> readDescribed(Fields entry, String path, int index, List<BriefFault> faults) {
        String mend = Text.of("brief.owned.text");
        Optional<String> text = entry.text("text", mend);
        entry.refuseOthers("text");
        Optional<OwnPieces> pieces = text.flatMap(OwnWords::read);
        if (text.isPresent() && pieces.isEmpty()) {
            faults.add(BriefFault.wrong(path + ".text", text.get(), mend));
        }
        return pieces.map(p -> new Owned("own-" + (index + 1), p.count(), Optional.of(p)));
    }

    private static String words(List<String> words) {
        return String.join(", ", words);
    }
}
