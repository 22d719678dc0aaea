package boughwright.intake;

import boughwright.brief.Word;
import boughwright.catalogue.CatalogueRows;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which heading of a file, or which constant, fills each canonical column. A column that is not named is not used.
 *
 * @param sources by canonical column
 */
public record Mapping(SortedMap<String, Source> sources) {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Where a column's cells come from. */
    public sealed interface Source {

        /**
         * @param heading as {@link IntakeFile#headings()} has it
         * @param unit of plain numbers in a column of lengths; when empty, what the heading says, and millimetres when it says nothing
         */
        record Heading(String heading, Optional<LengthUnit> unit) implements Source {
        }

        /** The same text in each row. */
        record Constant(String value) implements Source {
        }
    }

    /** @throws IllegalArgumentException when a column is not one of {@link CatalogueRows#COLUMNS} */
    public Mapping {
        for (String column : sources.keySet()) {
            if (!CatalogueRows.COLUMNS.contains(column)) {
                throw new IllegalArgumentException("no such column: " + column);
            }
        }
        sources = Collections.unmodifiableSortedMap(new TreeMap<>(sources));
    }

    public static Mapping empty() {
        return new Mapping(new TreeMap<>());
    }

    /** What was guessed, as far as anything was. */
    public static Mapping of(List<ColumnGuess> guesses) {
        Mapping mapping = empty();
        for (ColumnGuess guess : guesses) {
            if (guess.heading().isPresent()) {
                mapping = mapping.with(guess.column(), new Source.Heading(guess.heading().get(), guess.unit()));
            }
        }
        return mapping;
    }

    public Mapping with(String column, Source source) {
        SortedMap<String, Source> changed = new TreeMap<>(sources);
        changed.put(column, source);
        return new Mapping(changed);
    }

    public Mapping with(String column, String heading) {
        return with(column, new Source.Heading(heading, Optional.empty()));
    }

    public Mapping withConstant(String column, String value) {
        return with(column, new Source.Constant(value));
    }

    public Mapping without(String column) {
        SortedMap<String, Source> changed = new TreeMap<>(sources);
        changed.remove(column);
        return new Mapping(changed);
    }

    public Optional<Source> source(String column) {
        return Optional.ofNullable(sources.get(column));
    }

    /** The heading that fills the column; empty when nothing or a constant does. */
    public Optional<String> heading(String column) {
        return sources.get(column) instanceof Source.Heading h ? Optional.of(h.heading()) : Optional.empty();
    }

    /** The unit of plain numbers in a column of lengths: the one chosen, or else what the heading says. */
    Optional<LengthUnit> unit(String column) {
        return sources.get(column) instanceof Source.Heading h ? h.unit().or(() -> Names.unit(h.heading())) : Optional.empty();
    }

    /**
     * Columns that a file of the kind needs and this mapping leaves unused, or takes from a heading that the file has not. One of sku and
     * gtin is enough for stock and prices; when both are missing, sku is named.
     */
    public List<String> missing(Kind kind, List<String> headings) {
        List<String> missing = new ArrayList<>();
        if (kind != Kind.WHOLE && !filled("sku", headings) && !filled("gtin", headings)) {
            missing.add("sku");
        }
        kind.needed().stream().filter(column -> !filled(column, headings)).forEach(missing::add);
        return List.copyOf(missing);
    }

    private boolean filled(String column, List<String> headings) {
        return source(column).filter(s -> !(s instanceof Source.Heading h) || headings.contains(h.heading())).isPresent();
    }

    /** As text to be kept; {@link #read} makes an equal mapping of it. */
    public String toJson() {
        ObjectNode all = JSON.createObjectNode();
        sources.forEach((column, source) -> {
            ObjectNode one = all.putObject(column);
            if (source instanceof Source.Heading h) {
                one.put("heading", h.heading());
                h.unit().ifPresent(unit -> one.put("unit", unit.word()));
            } else if (source instanceof Source.Constant c) {
                one.put("constant", c.value());
            }
        });
        return all.toString();
    }

    /** Reads what {@link #toJson} wrote; empty for any other text. */
    public static Optional<Mapping> read(String json) {
        try {
            JsonNode all = JSON.readTree(json);
            SortedMap<String, Source> sources = new TreeMap<>();
            for (Map.Entry<String, JsonNode> field : all.properties()) {
                JsonNode heading = field.getValue().path("heading");
                JsonNode constant = field.getValue().path("constant");
                JsonNode unit = field.getValue().path("unit");
                if (!CatalogueRows.COLUMNS.contains(field.getKey()) || heading.isTextual() == constant.isTextual()) {
                    return Optional.empty();
                }
                sources.put(field.getKey(), constant.isTextual() ? new Source.Constant(constant.asText())
                        : new Source.Heading(heading.asText(), Word.read(LengthUnit.class, unit.asText())));
            }
            return all.isObject() ? Optional.of(new Mapping(sources)) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    /**
     * A short text that is the same for files with the same headings, in whatever order, capitals and spacing: the key under which a mapping
     * is remembered.
     *
     * @return 64 hexadecimal digits, the SHA-256 of the headings
     */
    public static String signature(List<String> headings) {
        List<String> plain = headings.stream().map(Names::plain).sorted().toList();
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(String.join("\n", plain).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
