package boughwright.intake;

import boughwright.brief.Word;
import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Writes products as a file that {@link Intake} reads back as the same products.
 *
 * <p>CSV and XLSX have the columns of {@link CatalogueRows#COLUMNS}, their text made harmless by {@link Formulas}; JSON is that of
 * {@code docs/catalogue.schema.json}. Products are written in the order given. The same products give the same bytes, but for the
 * moment of writing that an XLSX records.
 */
public final class CatalogueFile {

    private static final Set<String> NUMBERS = Set.of("width_mm", "length_mm", "bulbs", "watts", "max_run", "pack", "price", "stock");

    private CatalogueFile() {
    }

    /**
     * @param out stays open
     * @throws IOException when {@code out} fails
     */
    public static void write(Format format, List<Product> products, OutputStream out) throws IOException {
        if (format == Format.JSON) {
            json(products, out);
        } else {
            sheet(format, products.stream().map(CatalogueRows::cells)::iterator, out);
        }
    }

    /**
     * Headings, and two invented products to be replaced; it reads without a fault.
     *
     * @param currency the shop's
     * @param out stays open
     * @throws IOException when {@code out} fails
     */
    public static void template(Format format, Currency currency, OutputStream out) throws IOException {
        write(format, Examples.of(currency), out);
    }

    private static void sheet(Format format, Iterable<List<String>> rows, OutputStream out) throws IOException {
        Set<Integer> numbers = new HashSet<>();
        NUMBERS.forEach(column -> numbers.add(CatalogueRows.COLUMNS.indexOf(column)));
        try (SheetWriter writer = format == Format.XLSX ? SheetWriter.xlsx(out, Text.of("intake.sheet")) : SheetWriter.csv(out, ',')) {
            writer.row(CatalogueRows.COLUMNS, numbers, SheetWriter.Look.HEADING);
            for (List<String> row : rows) {
                writer.row(row, numbers, SheetWriter.Look.PLAIN);
            }
        }
    }

    private static void json(List<Product> products, OutputStream out) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).useDefaultPrettyPrinter()) {
            json.writeStartObject();
            json.writeArrayFieldStart("products");
            for (Product product : products) {
                json(product, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }

    private static void json(Product p, JsonGenerator json) throws IOException {
        List<String> cells = CatalogueRows.cells(p);
        json.writeStartObject();
        json.writeStringField("sku", p.sku());
        json.writeStringField("gtin", p.gtin());
        json.writeStringField("name", p.name());
        text(json, "brand", p.brand());
        json.writeStringField("color", p.colour().hex());
        text(json, "second_colour", cell(cells, "second_colour"));
        json.writeStringField("family", p.family().word());
        json.writeStringField("material", p.material().word());
        text(json, "pattern", cell(cells, "pattern"));
        text(json, "weave", cell(cells, "weave"));
        measure(json, "width", cell(cells, "width_mm"));
        measure(json, "depth", cell(cells, "length_mm"));
        json.writeObjectFieldStart("offers");
        json.writeNumberField("price", p.price().amount());
        json.writeStringField("priceCurrency", p.price().currency().getCurrencyCode());
        json.writeObjectFieldStart("inventoryLevel");
        json.writeNumberField("value", p.stock());
        json.writeEndObject();
        json.writeEndObject();
        words(json, "roles", p.roles());
        json.writeStringField("texture", p.texture().word());
        json.writeStringField("finish", p.finish().word());
        json.writeStringField("shape", p.shape().word());
        for (String column : List.of("bulbs", "watts", "max_run", "pack")) {
            if (!cell(cells, column).isEmpty()) {
                json.writeNumberField(column, new BigDecimal(cell(cells, column)));
            }
        }
        json.writeStringField("level", p.level().word());
        json.writeStringField("shelf", p.shelf());
        json.writeArrayFieldStart("looks");
        for (String look : p.looks()) {
            json.writeString(look);
        }
        json.writeEndArray();
        words(json, "safety", p.safety());
        json.writeEndObject();
    }

    private static String cell(List<String> cells, String column) {
        return cells.get(CatalogueRows.COLUMNS.indexOf(column));
    }

    private static void text(JsonGenerator json, String field, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(field, text);
        }
    }

    private static void measure(JsonGenerator json, String field, String millimetres) throws IOException {
        if (!millimetres.isEmpty()) {
            json.writeObjectFieldStart(field);
            json.writeNumberField("value", new BigDecimal(millimetres));
            json.writeStringField("unitCode", LengthUnit.MM.code());
            json.writeEndObject();
        }
    }

    private static void words(JsonGenerator json, String field, Collection<? extends Word> words) throws IOException {
        json.writeArrayFieldStart(field);
        for (Word word : words) {
            json.writeString(word.word());
        }
        json.writeEndArray();
    }
}
