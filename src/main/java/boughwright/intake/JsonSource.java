package boughwright.intake;

import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Entries of a JSON, as rows: a list of objects, or the list {@code products} of one object.
 *
 * <p>Fields within fields are headings with a point, {@code offers.price}. What schema.org makes an object of becomes one cell: a
 * {@code QuantitativeValue} its value with its unit, a {@code Brand} its name. Lists of texts are one cell, parted by semicolons; of a
 * list of objects the first counts. Field names that begin with @ are passed over.
 *
 * @param headings every field of every entry, in the order in which they first occur
 */
record JsonSource(Path stored, Charset charset, Limits limits, List<String> headings) implements RowSource {

    private static final Set<String> NAMED = Set.of("brand", "manufacturer");
    /** What UN/CEFACT Recommendation 20 calls one, a piece and each, and a pack of the same standard's Recommendation 21. */
    private static final Set<String> PIECES = Set.of("C62", "H87", "EA", "PK");

    /** Looks through the whole file for its headings. */
    static JsonSource of(Path stored, Charset charset, Limits limits) throws IOException, RefusedFile {
        Set<String> names = new LinkedHashSet<>();
        int[] entries = new int[1];
        new JsonSource(stored, charset, limits, List.of()).entries((number, fields, bytes) -> {
            entries[0] = number;
            names.addAll(fields.orElse(Map.of()).keySet());
            if (names.size() > limits.columns()) {
                throw new RefusedFile(Refusal.COLUMNS, String.valueOf(limits.columns()));
            }
            return true;
        });
        if (entries[0] == 0) {
            throw new RefusedFile(Refusal.EMPTY);
        }
        if (names.isEmpty()) {
            throw new RefusedFile(Refusal.NO_LIST);
        }
        return new JsonSource(stored, charset, limits, List.copyOf(names));
    }

    /** Takes one entry at a time; its fields are empty when it is no object. */
    private interface Entries {
        boolean entry(int number, Optional<Map<String, String>> fields, long bytes) throws RefusedFile;
    }

    @Override
    public void each(Sink sink) throws IOException, RefusedFile {
        if (!sink.row(SourceRow.of(0, headings.toArray(String[]::new)), 0)) {
            return;
        }
        entries((number, fields, bytes) -> {
            if (fields.isEmpty()) {
                return sink.row(SourceRow.troubled(number, new String[0], new SourceRow.Trouble(-1, "", Text.of("intake.entry.object"))), bytes);
            }
            String[] cells = new String[headings.size()];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = fields.get().getOrDefault(headings.get(i), "");
            }
            SourceRow row = SourceRow.of(number, cells);
            return row.blank() || sink.row(row, bytes);
        });
    }

    private void entries(Entries entries) throws IOException, RefusedFile {
        JsonFactory factory = JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(limits.jsonDepth()).maxStringLength(Limits.LONGEST_TEXT)
                        .maxNameLength(200).maxNumberLength(200).maxDocumentLength(limits.fileBytes()).build())
                .build();
        try (CountingStream bytes = new CountingStream(new BufferedInputStream(Files.newInputStream(stored)));
                Reader text = unmarked(new InputStreamReader(bytes, charset)); JsonParser json = factory.createParser(text)) {
            if (!list(json)) {
                throw new RefusedFile(Refusal.NO_LIST);
            }
            int number = 0;
            boolean more = true;
            while (more && json.nextToken() != JsonToken.END_ARRAY) {
                Optional<Map<String, String>> fields = json.currentToken() == JsonToken.START_OBJECT ? Optional.of(fields(json)) : Optional.empty();
                json.skipChildren();
                more = entries.entry(++number, fields, bytes.bytes());
            }
            while (more && json.nextToken() != null) {
                json.skipChildren();
            }
        } catch (StreamConstraintsException e) {
            throw e.getMessage().contains("depth") ? new RefusedFile(Refusal.JSON_DEPTH, String.valueOf(limits.jsonDepth()))
                    : new RefusedFile(Refusal.TEXT_LENGTH, String.valueOf(Limits.LONGEST_TEXT));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation() == null ? JsonLocation.NA : e.getLocation();
            throw new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.json", String.valueOf(at.getLineNr()), String.valueOf(at.getColumnNr())));
        }
    }

    private static Reader unmarked(Reader text) throws IOException {
        PushbackReader from = new PushbackReader(text);
        int first = from.read();
        if (first >= 0 && first != '\uFEFF') {
            from.unread(first);
        }
        return from;
    }

    /** Goes into the list of products; false when there is none. */
    private static boolean list(JsonParser json) throws IOException {
        JsonToken first = json.nextToken();
        if (first == JsonToken.START_ARRAY) {
            return true;
        }
        while (first == JsonToken.START_OBJECT && json.nextToken() == JsonToken.FIELD_NAME) {
            boolean products = json.currentName().equals("products");
            if (json.nextToken() == JsonToken.START_ARRAY && products) {
                return true;
            }
            json.skipChildren();
        }
        return false;
    }

    private Map<String, String> fields(JsonParser json) throws IOException, RefusedFile {
        Map<String, String> fields = new LinkedHashMap<>();
        fields(json, "", fields);
        return fields;
    }

    /** Puts the fields of the object that begins here under their headings. */
    private void fields(JsonParser json, String before, Map<String, String> fields) throws IOException, RefusedFile {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            JsonToken token = json.nextToken();
            if (name.startsWith("@")) {
                json.skipChildren();
            } else if (token == JsonToken.START_OBJECT) {
                object(json, before + name, NAMED.contains(name), fields);
            } else if (token == JsonToken.START_ARRAY) {
                list(json, before + name, fields);
            } else {
                put(fields, before + name, scalar(json));
            }
        }
    }

    private void object(JsonParser json, String name, boolean named, Map<String, String> fields) throws IOException, RefusedFile {
        Map<String, String> within = new LinkedHashMap<>();
        fields(json, "", within);
        if (within.containsKey("value")) {
            String unit = within.getOrDefault("unitCode", within.getOrDefault("unitText", ""));
            String word = PIECES.contains(unit) ? "" : LengthUnit.named(unit).map(LengthUnit::word).orElse(unit);
            put(fields, name, (within.get("value") + " " + word).strip());
        } else if (named && within.containsKey("name")) {
            put(fields, name, within.get("name"));
        } else {
            for (Map.Entry<String, String> field : within.entrySet()) {
                put(fields, name + "." + field.getKey(), field.getValue());
            }
        }
    }

    private void list(JsonParser json, String name, Map<String, String> fields) throws IOException, RefusedFile {
        List<String> texts = new ArrayList<>();
        int length = 0;
        boolean first = true;
        while (json.nextToken() != JsonToken.END_ARRAY) {
            if (json.currentToken() == JsonToken.START_OBJECT && first) {
                object(json, name, NAMED.contains(name), fields);
            } else if (json.currentToken().isStructStart()) {
                json.skipChildren();
            } else {
                texts.add(scalar(json));
                length += json.getTextLength();
                if (length > Limits.LONGEST_TEXT) {
                    throw new RefusedFile(Refusal.TEXT_LENGTH, String.valueOf(Limits.LONGEST_TEXT));
                }
            }
            first = false;
        }
        if (!texts.isEmpty()) {
            put(fields, name, String.join("; ", texts));
        }
    }

    private void put(Map<String, String> fields, String name, String value) throws RefusedFile {
        fields.putIfAbsent(name, value);
        if (fields.size() > limits.columns()) {
            throw new RefusedFile(Refusal.COLUMNS, String.valueOf(limits.columns()));
        }
    }

    /** Numbers as plain decimals, as far as they are of reasonable size; nothing for null. */
    private static String scalar(JsonParser json) throws IOException {
        if (json.currentToken() == JsonToken.VALUE_NULL) {
            return "";
        }
        if (json.currentToken().isNumeric()) {
            String text = json.getText();
            return text.matches("-?\\d+(?:\\.\\d+)?") ? text : XlsxSource.plain(text).map(BigDecimal::toPlainString).orElse(text);
        }
        return json.getText();
    }
}
