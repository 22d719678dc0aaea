package boughwright.quote;

import boughwright.measure.Money;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/** A quote as JSON, for keeping and for other programs; amounts are decimal text, days as in ISO 8601. */
public final class QuoteJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private QuoteJson() {
    }

    public static String text(Quote quote) {
        ObjectNode root = JSON.createObjectNode();
        root.put("code", quote.code()).put("number", quote.number()).put("revision", quote.revision()).put("shop", quote.shop()).put("by", quote.by())
                .put("madeOn", quote.madeOn().toString()).put("validTo", quote.validTo().toString()).put("currency", quote.currency().getCurrencyCode());
        ArrayNode lines = root.putArray("lines");
        quote.lines().forEach(l -> lines.addObject().put("sku", l.sku()).put("name", l.name()).put("shelf", l.shelf()).put("packs", l.packs())
                .put("packSize", l.packSize()).put("each", l.each().decimal()).put("price", l.price().decimal()).put("tax", l.tax().decimal()));
        root.put("goods", quote.goods().decimal());
        root.set("terms", tax(quote.terms()));
        root.put("tax", quote.tax().decimal()).put("total", quote.total().decimal());
        ArrayNode substitutions = root.putArray("substitutions");
        quote.substitutions().forEach(s -> substitutions.addObject().put("role", s.role()).put("was", s.was()).put("is", s.is()));
        return root.toString();
    }

    /** @throws IllegalArgumentException when the text is not a quote as written here */
    public static Quote read(String text) {
        JsonNode root;
        try {
            root = JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("a kept quote is JSON", e);
        }
        Currency currency = Currency.getInstance(root.required("currency").asText());
        List<QuoteLine> lines = new ArrayList<>();
        root.required("lines").forEach(l -> lines.add(new QuoteLine(l.required("sku").asText(), l.required("name").asText(), l.required("shelf").asText(),
                l.required("packs").asInt(), l.required("packSize").asInt(), money(l, "each", currency), money(l, "price", currency), money(l, "tax", currency))));
        List<Substitution> substitutions = new ArrayList<>();
        root.required("substitutions").forEach(s -> substitutions.add(new Substitution(s.required("role").asText(), s.required("was").asText(),
                s.required("is").asText())));
        return new Quote(root.required("code").asText(), root.required("number").asInt(), root.required("revision").asInt(), root.required("shop").asText(),
                root.required("by").asText(), LocalDate.parse(root.required("madeOn").asText()), LocalDate.parse(root.required("validTo").asText()), currency,
                lines, money(root, "goods", currency), tax(root.required("terms")), money(root, "tax", currency), money(root, "total", currency),
                substitutions);
    }

    /** How a shop taxes. */
    public static ObjectNode tax(Tax tax) {
        return JSON.createObjectNode().put("name", tax.name()).put("percent", tax.percent().toPlainString()).put("within", tax.within())
                .put("basis", tax.basis().name()).put("rounding", tax.rounding().name());
    }

    public static Tax tax(JsonNode node) {
        return new Tax(node.required("name").asText(), new BigDecimal(node.required("percent").asText()), node.required("within").asBoolean(),
                Tax.Basis.valueOf(node.required("basis").asText()), Tax.Rounding.valueOf(node.required("rounding").asText()));
    }

    private static Money money(JsonNode node, String field, Currency currency) {
        return new Money(new BigDecimal(node.required(field).asText()), currency);
    }
}
