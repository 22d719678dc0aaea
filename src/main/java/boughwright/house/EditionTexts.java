package boughwright.house;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import boughwright.rulebook.DmnCompiler;
import boughwright.rulebook.Edition;
import boughwright.rulebook.RulebookFault;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * House rules as the files of an edition, and back: {@code edition.json} with names, numbers, words, looks and palettes, and one DMN file
 * for each sheet, its name in {@code sizing}. The same rules give the same texts, byte for byte.
 */
public final class EditionTexts {

    public static final String EDITION = "edition.json";
    private static final ObjectMapper JSON = new ObjectMapper();

    private EditionTexts() {
    }

    /** What came of reading an edition's files. */
    public sealed interface Reading {

        record Read(HouseRules rules) implements Reading {
        }

        record Faulty(List<RulebookFault> faults) implements Reading {
        }
    }

    /**
     * Reads the house rules out of the files of an edition. Files that staff do not set, such as rule files, are passed over.
     *
     * @param edition what {@code edition.json} among the texts says
     */
    public static Reading read(Edition edition, Map<String, String> texts) {
        List<RulebookFault> faults = new ArrayList<>();
        List<Sheet> sheets = new ArrayList<>();
        for (String path : edition.sizing()) {
            DmnCompiler.read(path, texts.get(path), faults).filter(f -> faults.isEmpty()).flatMap(f -> SheetReader.read(f, faults)).ifPresent(sheets::add);
        }
        if (!faults.isEmpty()) {
            return new Reading.Faulty(faults);
        }
        SortedMap<HouseNumber, String> numbers = new TreeMap<>();
        edition.house().numbers().forEach((number, value) -> numbers.put(number, NumberText.of(number, value, Units.FEET)));
        SortedMap<HouseWords, List<String>> words = new TreeMap<>();
        edition.house().words().forEach((list, held) -> words.put(list, List.copyOf(held)));
        return new Reading.Read(new HouseRules(sheets, numbers, words, edition.choices().looks(), edition.choices().palettes()));
    }

    /**
     * The texts of an edition that can be opened.
     *
     * @param rules without faults
     * @param from the edition whose shop, currency and rule files stay as they are
     * @throws IllegalArgumentException when a cell cannot be written; {@link HouseCheck} finds it first
     */
    public static SortedMap<String, String> of(HouseRules rules, String id, String title, Edition from) {
        SortedMap<String, String> texts = new TreeMap<>();
        rules.sheets().forEach(sheet -> texts.put(sheet.file(), SheetWriter.dmn(sheet)));
        ObjectNode root = JSON.createObjectNode();
        root.put("id", id);
        root.put("title", title);
        root.put("shop", from.shop());
        root.put("currency", from.choices().currency().getCurrencyCode());
        rules.sheets().forEach(sheet -> root.withArray("sizing").add(sheet.file()));
        ArrayNode files = root.putArray("rules");
        from.rules().forEach(files::add);
        ArrayNode looks = root.putArray("looks");
        for (Look look : rules.looks()) {
            ObjectNode node = looks.addObject().put("id", look.id()).put("title", look.title()).put("blurb", look.blurb()).put("palette", look.palette());
            look.textures().forEach(node.putArray("textures")::add);
            look.finishes().forEach(node.putArray("finishes")::add);
        }
        ArrayNode palettes = root.putArray("palettes");
        for (Palette palette : rules.palettes()) {
            palettes.addObject().put("id", palette.id()).put("title", palette.title()).put("main", palette.main().hex()).put("second", palette.second().hex())
                    .put("spark", palette.spark().hex()).put("ground", palette.ground().hex());
        }
        ObjectNode numbers = root.putObject("numbers");
        rules.numbers().forEach((number, text) -> numbers.put(number.word(), NumberText.read(number, text)
                .orElseThrow(() -> new IllegalArgumentException(number.word() + " is no number: " + text))));
        ObjectNode words = root.putObject("words");
        rules.words().forEach((list, held) -> held.forEach(words.withArray(list.word())::add));
        texts.put(EDITION, root.toPrettyString() + "\n");
        return texts;
    }

    /** A draft as one JSON text, mistakes and all; {@link #draft(String)} gives it back unchanged. */
    public static String json(HouseRules rules) {
        try {
            return JSON.writeValueAsString(rules);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("house rules could not be written", impossible);
        }
    }

    /** @throws IllegalArgumentException when the text is none that {@link #json} has written */
    public static HouseRules draft(String json) {
        try {
            return JSON.readValue(json, HouseRules.class);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("no draft of house rules", e);
        }
    }
}
