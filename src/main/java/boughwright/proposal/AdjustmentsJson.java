package boughwright.proposal;

import boughwright.brief.BriefFault;
import boughwright.brief.Word;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Traits;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Spot;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What hands changed, as JSON: {@code quantities}, {@code products}, {@code tastes}, {@code caps}, {@code levels}, {@code dropped},
 * {@code importance}, {@code kept}, {@code moved} and the {@code currency} of the caps. Only what is there is written; docs/proposal.schema.json describes it.
 */
public final class AdjustmentsJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Set<String> FIELDS = Set.of("quantities", "products", "tastes", "caps", "levels", "dropped", "importance", "kept", "moved", "currency");
    /** Traits of which a customer speaks, with their words. */
    private static final Map<Trait, List<String>> TASTES = Map.of(Trait.TEXTURE, Word.words(Traits.Texture.class), Trait.FINISH,
            Word.words(Traits.Finish.class), Trait.MATERIAL, Word.words(Traits.Material.class), Trait.FAMILY, Word.words(Traits.Family.class));

    private final Currency currency;
    private final Optional<Catalogue> catalogue;
    private final List<BriefFault> faults = new ArrayList<>();

    private AdjustmentsJson(Currency currency, Optional<Catalogue> catalogue) {
        this.currency = currency;
        this.catalogue = catalogue;
    }

    /** What came of reading. */
    public sealed interface Reading {

        record Read(Adjustments adjustments) implements Reading {
        }

        record Faulty(List<BriefFault> faults) implements Reading {
        }
    }

    public static ObjectNode of(Adjustments hand) {
        ObjectNode node = JSON.createObjectNode();
        if (!hand.quantities().isEmpty()) {
            hand.quantities().forEach(node.putObject("quantities")::put);
        }
        if (!hand.products().isEmpty()) {
            hand.products().forEach(node.putObject("products")::put);
        }
        if (!hand.tastes().isEmpty()) {
            ArrayNode tastes = node.putArray("tastes");
            hand.tastes().forEach(t -> {
                ObjectNode taste = tastes.addObject().put("wanted", t.wanted()).put("trait", t.trait().word()).put("value", t.value());
                t.role().ifPresent(r -> taste.put("role", r.word()));
            });
        }
        if (!hand.caps().isEmpty()) {
            ObjectNode caps = node.putObject("caps");
            hand.caps().forEach((layer, most) -> caps.put(layer.word(), most.decimal()));
            node.put("currency", hand.caps().values().iterator().next().currency().getCurrencyCode());
        }
        if (!hand.levels().isEmpty()) {
            ObjectNode levels = node.putObject("levels");
            hand.levels().forEach((layer, level) -> levels.put(layer.word(), level));
        }
        if (!hand.dropped().isEmpty()) {
            hand.dropped().forEach(l -> node.withArray("dropped").add(l.word()));
        }
        if (!hand.importance().isEmpty()) {
            hand.importance().forEach(node.withArray("importance")::add);
        }
        if (!hand.kept().isEmpty()) {
            hand.kept().forEach(node.putObject("kept")::put);
        }
        if (!hand.moved().isEmpty()) {
            ObjectNode moved = node.putObject("moved");
            hand.moved().forEach((id, spot) -> moved.putObject(id).put("height", spot.height()).put("clock", spot.clock()));
        }
        return node;
    }

    /** Reads strictly, and tells all faults at once. */
    public static Reading read(String json, Currency currency, Catalogue catalogue) {
        AdjustmentsJson reader = new AdjustmentsJson(currency, Optional.of(catalogue));
        JsonNode node = null;
        try {
            node = JSON.readTree(json == null ? "" : json);
        } catch (JsonProcessingException e) {
            reader.fault("changes", "", "changes.object");
        }
        if (node != null && !node.isObject()) {
            reader.fault("changes", node.isMissingNode() ? "" : node.toString(), "changes.object");
        }
        if (!reader.faults.isEmpty() || node == null) {
            return new Reading.Faulty(List.copyOf(reader.faults));
        }
        Adjustments read = reader.adjustments(node);
        return reader.faults.isEmpty() ? new Reading.Read(read) : new Reading.Faulty(List.copyOf(reader.faults));
    }

    /**
     * What {@link #of} has written, as it was, even when a product has left the catalogue since.
     *
     * @throws IllegalStateException when it is anything else
     */
    public static Adjustments stored(String json) {
        try {
            JsonNode node = JSON.readTree(json);
            AdjustmentsJson reader = new AdjustmentsJson(Currency.getInstance(node.path("currency").asText("XXX")), Optional.empty());
            Adjustments read = reader.adjustments(node);
            if (reader.faults.isEmpty()) {
                return read;
            }
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("saved changes are broken: " + json, e);
        }
        throw new IllegalStateException("saved changes are broken: " + json);
    }

    private boolean sold(String sku) {
        return catalogue.isEmpty() || catalogue.get().product(sku).isPresent();
    }

    private void fault(String field, String value, String key, Object... arguments) {
        faults.add(BriefFault.wrong(field, value, Text.of(key, arguments)));
    }

    private Adjustments adjustments(JsonNode node) {
        node.fieldNames().forEachRemaining(name -> {
            if (!FIELDS.contains(name)) {
                fault(name, node.get(name).toString(), "changes.unknown", String.join(", ", new TreeSet<>(FIELDS)));
            }
        });
        if (node.has("currency") && !node.path("currency").asText().equals(currency.getCurrencyCode())) {
            fault("currency", node.path("currency").asText(), "changes.choose", currency.getCurrencyCode());
        }
        Adjustments hand = Adjustments.NONE;
        for (Map.Entry<String, JsonNode> e : entries(node, "quantities")) {
            if (e.getValue().isIntegralNumber() && e.getValue().canConvertToInt() && e.getValue().intValue() >= 0
                    && e.getValue().intValue() <= Adjustments.MOST) {
                hand = hand.withQuantity(e.getKey(), e.getValue().intValue());
            } else {
                fault("quantities." + e.getKey(), e.getValue().asText(), "changes.quantity", String.valueOf(Adjustments.MOST));
            }
        }
        for (Map.Entry<String, JsonNode> e : entries(node, "products")) {
            if (e.getValue().isTextual() && sold(e.getValue().textValue())) {
                hand = hand.withProduct(e.getKey(), e.getValue().textValue());
            } else {
                fault("products." + e.getKey(), e.getValue().asText(), "changes.sku");
            }
        }
        for (Map.Entry<String, JsonNode> e : entries(node, "caps")) {
            Optional<Layer> layer = layer("caps." + e.getKey(), e.getKey());
            Optional<Money> most = Money.read(e.getValue().textValue(), currency);
            if (layer.isPresent() && most.isPresent()) {
                hand = hand.withCap(layer.get(), most.get());
            } else if (layer.isPresent()) {
                fault("caps." + e.getKey(), e.getValue().asText(), "brief.budget.mend");
            }
        }
        for (Map.Entry<String, JsonNode> e : entries(node, "levels")) {
            Optional<Layer> layer = layer("levels." + e.getKey(), e.getKey());
            if (layer.isPresent() && Word.words(Traits.Level.class).contains(e.getValue().asText())) {
                hand = hand.withLevel(layer.get(), e.getValue().asText());
            } else if (layer.isPresent()) {
                fault("levels." + e.getKey(), e.getValue().asText(), "changes.choose", String.join(", ", Word.words(Traits.Level.class)));
            }
        }
        for (JsonNode dropped : node.path("dropped")) {
            Optional<Layer> layer = layer("dropped", dropped.asText());
            hand = layer.isPresent() ? hand.withDropped(layer.get()) : hand;
        }
        for (int i = 0; i < node.path("tastes").size(); i++) {
            Optional<Taste> taste = taste("tastes[" + i + "]", node.get("tastes").get(i));
            hand = taste.isPresent() ? hand.withTaste(taste.get()) : hand;
        }
        List<String> importance = new ArrayList<>();
        node.path("importance").forEach(id -> importance.add(id.asText()));
        Map<String, String> kept = new TreeMap<>();
        entries(node, "kept").forEach(e -> kept.put(e.getKey(), e.getValue().asText()));
        for (Map.Entry<String, JsonNode> e : entries(node, "moved")) {
            try {
                hand = hand.withMoved(e.getKey(), new Spot(e.getValue().path("height").asDouble(0), e.getValue().path("clock").asDouble(0)));
            } catch (IllegalArgumentException bad) {
                fault("moved." + e.getKey(), e.getValue().toString(), "changes.moved");
            }
        }
        return hand.withImportance(importance).keeping(kept);
    }

    private List<Map.Entry<String, JsonNode>> entries(JsonNode node, String name) {
        List<Map.Entry<String, JsonNode>> entries = new ArrayList<>();
        if (node.has(name) && !node.get(name).isObject()) {
            fault(name, node.get(name).toString(), "changes.object");
        } else {
            node.path(name).fields().forEachRemaining(entries::add);
        }
        return entries;
    }

    private Optional<Layer> layer(String field, String word) {
        Optional<Layer> layer = Word.read(Layer.class, word);
        if (layer.isEmpty()) {
            fault(field, word, "changes.choose", String.join(", ", Word.words(Layer.class)));
        }
        return layer;
    }

    private Optional<Taste> taste(String field, JsonNode node) {
        Optional<Trait> trait = Word.read(Trait.class, node.path("trait").asText());
        String value = node.path("value").asText();
        Optional<Role> role = node.has("role") ? Word.read(Role.class, node.path("role").asText()) : Optional.empty();
        if (node.has("role") && role.isEmpty()) {
            fault(field + ".role", node.path("role").asText(), "changes.choose", String.join(", ", Word.words(Role.class)));
            return Optional.empty();
        }
        boolean product = trait.equals(Optional.of(Trait.PRODUCT)) && sold(value);
        if (trait.isEmpty() || !product && !TASTES.containsKey(trait.get())) {
            fault(field + ".trait", node.path("trait").asText(), "changes.choose", "texture, finish, material, family, product");
            return Optional.empty();
        }
        if (!product && !TASTES.get(trait.get()).contains(value)) {
            fault(field + ".value", value, "changes.choose", String.join(", ", TASTES.get(trait.get())));
            return Optional.empty();
        }
        return Optional.of(new Taste(node.path("wanted").asBoolean(false), trait.get(), value, role));
    }
}
