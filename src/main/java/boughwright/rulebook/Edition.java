package boughwright.rulebook;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.brief.ShopChoices;
import boughwright.colour.Srgb;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * What one edition of the rulebook is called, what it consists of and what the shop offers under it.
 *
 * @param sizing paths of the decision-table files
 * @param rules paths of the rule files
 */
public record Edition(String id, String title, String shop, List<String> sizing, List<String> rules, ShopChoices choices) {

    /**
     * Reads {@code edition.json}.
     *
     * @throws JsonProcessingException when the text is no JSON
     * @throws IllegalArgumentException when something is missing or wrong; the message says what
     */
    static Edition read(String json) throws JsonProcessingException {
        JsonNode root = new ObjectMapper().readTree(json);
        List<Palette> palettes = new ArrayList<>();
        for (JsonNode p : root.required("palettes")) {
            palettes.add(new Palette(text(p, "id"), text(p, "title"), colour(p, "main"), colour(p, "second"), colour(p, "spark"), colour(p, "ground")));
        }
        List<Look> looks = new ArrayList<>();
        for (JsonNode l : root.required("looks")) {
            looks.add(new Look(text(l, "id"), text(l, "title"), text(l, "blurb"), text(l, "palette"), texts(l, "textures"), texts(l, "finishes")));
        }
        ShopChoices choices = new ShopChoices(looks, palettes, currency(text(root, "currency")));
        for (Look look : looks) {
            if (choices.palette(look.palette()).isEmpty()) {
                throw new IllegalArgumentException("the look " + look.id() + " names the palette " + look.palette() + ", which is not listed");
            }
        }
        return new Edition(text(root, "id"), text(root, "title"), text(root, "shop"), texts(root, "sizing"), texts(root, "rules"), choices);
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
