package boughwright.rulebook;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.brief.ShopChoices;
import boughwright.colour.Srgb;
import com.fasterxml.jackson.core.JsonProcessingException;
import boughwright.brief.Word;
import boughwright.needs.House;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import boughwright.text.Words;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What one edition of the rulebook is called, what it consists of and what the shop offers under it.
 *
 * @param sizing paths of the decision-table files
 * @param rules paths of the rule files
 * @param house the numbers and words that the rules read
 */
public record Edition(String id, String title, String shop, List<String> sizing, List<String> rules, ShopChoices choices, House house) {

    private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

    /**
     * Reads {@code edition.json}.
     *
     * @param words what its looks and palettes are called in other languages
     * @throws JsonProcessingException when the text is no JSON
     * @throws IllegalArgumentException when something is missing or wrong; the message says what
     */
    public static Edition read(String json, Words words) throws JsonProcessingException {
        JsonNode root = JSON.readTree(json);
        List<Palette> palettes = new ArrayList<>();
        for (JsonNode p : root.required("palettes")) {
            palettes.add(new Palette(text(p, "id"), text(p, "title"), colour(p, "main"), colour(p, "second"), colour(p, "spark"), colour(p, "ground"), words));
        }
        List<Look> looks = new ArrayList<>();
        for (JsonNode l : root.required("looks")) {
            looks.add(new Look(text(l, "id"), text(l, "title"), text(l, "blurb"), text(l, "palette"), texts(l, "textures"), texts(l, "finishes"), words));
        }
        ShopChoices choices = new ShopChoices(looks, palettes, currency(text(root, "currency")));
        for (Look look : looks) {
            if (choices.palette(look.palette()).isEmpty()) {
                throw new IllegalArgumentException("the look " + look.id() + " names the palette " + look.palette() + ", which is not listed");
            }
        }
        return new Edition(text(root, "id"), text(root, "title"), text(root, "shop"), texts(root, "sizing"), texts(root, "rules"), choices, house(root));
    }

    /** As {@link #read(String, Words)}, in English alone. */
    public static Edition read(String json) throws JsonProcessingException {
        return read(json, Words.NONE);
    }

    private static House house(JsonNode root) {
        SortedMap<HouseNumber, BigDecimal> numbers = new TreeMap<>();
        root.required("numbers").fields().forEachRemaining(field -> {
            HouseNumber number = Word.read(HouseNumber.class, field.getKey())
                    .orElseThrow(() -> new IllegalArgumentException("no house number is called " + field.getKey()));
            if (!field.getValue().isNumber()) {
                throw new IllegalArgumentException(field.getKey() + " must be a number, not " + field.getValue());
            }
            numbers.put(number, field.getValue().decimalValue());
        });
        SortedMap<HouseWords, SortedSet<String>> words = new TreeMap<>();
        root.required("words").fieldNames().forEachRemaining(name -> {
            HouseWords list = Word.read(HouseWords.class, name).orElseThrow(() -> new IllegalArgumentException("no list of words is called " + name));
            words.put(list, new TreeSet<>(texts(root.get("words"), name)));
        });
        return new House(numbers, words);
    }

    private static Currency currency(String code) {
        return Currency.getAvailableCurrencies().stream().filter(c -> c.getCurrencyCode().equals(code)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("not a currency of ISO 4217: " + code));
    }

    private static String text(JsonNode node, String field) {
        return node.required(field).asText();
    }

    private static Srgb colour(JsonNode node, String field) {
        return Srgb.read(text(node, field)).orElseThrow(() -> new IllegalArgumentException("not a colour: " + node.get(field)));
    }

    private static List<String> texts(JsonNode node, String field) {
        List<String> texts = new ArrayList<>();
        node.required(field).forEach(t -> texts.add(t.asText()));
        return List.copyOf(texts);
    }
}
