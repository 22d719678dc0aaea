package boughwright.rulebook;

import boughwright.brief.Abundance;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Word;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What consultations ask of the tables of an edition: a file, a table, a column or a word that is not here is never reached. */
public final class Asked {

    public static final String BASE = "Base";
    public static final String POLICY = "Policy";

    private static final String FULLNESS = "fullness";
    private static final String SEEN_FROM = "seen from";
    private static final String ABUNDANCE = "abundance";

    private Asked() {
    }

    /** Names of the files without folder and ending, in the order of the layers. */
    public static List<String> topics() {
        return Word.words(Quantity.class);
    }

    /** The tables of each file. */
    public static List<String> tables() {
        return List.of(BASE, "Fullness factor", "Seen-from factor", "Abundance factor", POLICY);
    }

    /** The words that a table of a file is asked with, by column in the order in which they should rise; height comes beside them. */
    public static Map<String, List<String>> words(String topic, String table) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        switch (table) {
            case BASE -> {
                if (topic.equals(Quantity.FILLER_BALLS.word())) {
                    words.put("diameter", Sizer.DIAMETERS);
                } else if (topic.equals(Quantity.FEATURE_ORNAMENTS.word())) {
                    words.put("size", Sizer.SIZES);
                }
                words.put(FULLNESS, Word.words(Fullness.class));
                words.put(SEEN_FROM, Word.words(SeenFrom.class));
                words.put(ABUNDANCE, Word.words(Abundance.class));
            }
            case "Fullness factor" -> words.put(FULLNESS, Word.words(Fullness.class));
            case "Seen-from factor" -> words.put(SEEN_FROM, Word.words(SeenFrom.class));
            case "Abundance factor" -> words.put(ABUNDANCE, Word.words(Abundance.class));
            default -> { }
        }
        return words;
    }

    /** The results that a table must give, a single one under the table's own name. */
    public static List<String> results(String table) {
        return table.equals(POLICY) ? List.of("rounding", "least", "girth") : List.of(table);
    }

    /** Whether the table of a file gives shares of the seen surface instead of pieces. */
    public static boolean bySurface(String topic) {
        return topic.equals(Quantity.FILLER_BALLS.word());
    }
}
