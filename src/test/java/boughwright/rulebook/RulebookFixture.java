package boughwright.rulebook;

import boughwright.brief.Brief;
import boughwright.brief.BriefFixture;
import boughwright.needs.Adjustments;
import boughwright.needs.House;
import boughwright.needs.Needs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The rulebook as shipped, opened once for all tests, and briefs for its shop. */
public final class RulebookFixture {

    private static final Path FOLDER = Path.of("rules");

    private RulebookFixture() {
    }

    private static final class Opened {
        static final Rulebook RULEBOOK = open();

        private static Rulebook open() {
            try {
                Rulebook.Opening opening = Rulebook.open(path -> Files.readString(FOLDER.resolve(path)));
                if (opening instanceof Rulebook.Opening.Faulty faulty) {
                    throw new AssertionError("the shipped rulebook has faults: " + faulty.faults());
                }
                return ((Rulebook.Opening.Open) opening).rulebook();
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    private static final class Compiled {
        static final StyleRules RULES = ((DrlCompilation.Sound) new DrlCompiler().compile(files(".drl"))).rules();
    }

    public static Rulebook shipped() {
        return Opened.RULEBOOK;
    }

    /** The numbers and words of the shipped edition, which most rules read. */
    public static House house() {
        return shipped().edition().house();
    }

    /** The shipped style and safety rules by themselves, to be run over facts of one's own. */
    static StyleRules rules() {
        return Compiled.RULES;
    }

    /** Every file of the rulebook by its path. */
    public static SortedMap<String, String> texts() {
        SortedMap<String, String> texts = new TreeMap<>();
        List.of(".json", ".dmn", ".drl").forEach(ending -> texts.putAll(files(ending)));
        return texts;
    }

    /** Every file of the rulebook with this ending, listed in the edition or not: its text by its path. */
    static SortedMap<String, String> files(String ending) {
        try (var files = Files.walk(FOLDER)) {
            SortedMap<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(path -> path.toString().endsWith(ending)).toList()) {
                texts.put(FOLDER.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
            return texts;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * A brief for the shop of the shipped rulebook.
     *
     * @param tree further fields of the tree as {@code name=value}, all texts but for true and false
     */
    public static Brief brief(String height, String... tree) {
        return briefWith(height, List.of(tree), "");
    }

    /** @param rest further JSON fields of the whole brief, such as {@code "abundance": "lavish"}, or empty */
    public static Brief briefWith(String height, List<String> tree, String rest) {
        StringBuilder json = new StringBuilder("{\"tree\": {\"height\": \"" + height + "\"");
        for (String field : tree) {
            String name = field.substring(0, field.indexOf('='));
            String value = field.substring(name.length() + 1);
            json.append(", \"").append(name).append("\": ").append(value.matches("true|false") ? value : "\"" + value + "\"");
        }
        return BriefFixture.brief(shipped().choices(), json + "}" + (rest.isEmpty() ? "" : ", " + rest) + "}");
    }

    public static Needs needs(Brief brief) {
        return shipped().needs(brief, Adjustments.NONE);
    }

    static int quantity(Brief brief, String need) {
        return needs(brief).need(need).orElseThrow().quantity();
    }
}
