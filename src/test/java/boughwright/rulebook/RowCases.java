package boughwright.rulebook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * For each row of the shipped tables a tree that it answers for and the nearest that another row answers for: as
 * src/test/resources/rules/&lt;topic&gt;/rows.txt tell them.
 */
final class RowCases {

    private static final String FILE = "rows.txt";
    private static final String HEADING = "== ";
    private static final String NOTHING = "nothing: this row answers for every tree";
    private static final Pattern FORM = Pattern.compile(
            "row (?<row>\\d{1,4}) \\| answers: (?<answers>[^|]+) \\| gives: (?<gives>[^|]+) \\| not for: (?<notFor>[^|]+)");
    private static final Pattern FEET = Pattern.compile("(\\d+(?:\\.\\d+)?) ft");

    /** What the tables are written for; a case need only tell what it is about. */
    private static final Map<String, Object> USUAL = Map.of("fullness", "medium", "seen from", "wall", "abundance", "generous");

    /**
     * @param gives the row's outputs as a person writes them, by name; a table's only output has the table's name
     * @param notFor empty when no other row answers for anything
     */
    record Case(WrittenTable table, int row, Map<String, Object> answers, Map<String, String> gives, Optional<Map<String, Object>> notFor) {

        @Override
        public String toString() {
            return place(table, row);
        }
    }

    private RowCases() {
    }

    static String place(WrittenTable table, int row) {
        return CaseLine.topicOf(table.file()) + ", " + table.name() + ", row " + row;
    }

    static List<Case> all() {
        return read(CaseLine.of(FILE));
    }

    static List<Case> read(List<CaseLine> lines) {
        List<Case> cases = new ArrayList<>();
        String file = "";
        Optional<WrittenTable> table = Optional.empty();
        for (CaseLine line : lines) {
            if (!line.file().equals(file)) {
                file = line.file();
                table = Optional.empty();
            }
            if (line.text().startsWith(HEADING)) {
                table = Optional.of(table(line));
            } else {
                cases.add(read(table.orElseThrow(() -> line.fault("no \"== table\" stands above this row")), line));
            }
        }
        return cases;
    }

    private static WrittenTable table(CaseLine heading) {
        String name = heading.text().substring(HEADING.length());
        return RulebookFixture.shipped().tables().tables().stream()
                .filter(table -> CaseLine.topicOf(table.file()).equals(heading.topic()) && table.name().equals(name)).findFirst()
                .orElseThrow(() -> heading.fault("the rulebook has no table \"" + name + "\" of " + heading.topic()));
    }

    private static Case read(WrittenTable table, CaseLine line) {
        Matcher parts = FORM.matcher(line.text());
        if (!parts.matches()) {
            throw line.fault("a row reads \"row 1 | answers: ... | gives: ... | not for: ...\", not \"" + line.text() + "\"");
        }
        String notFor = parts.group("notFor");
        return new Case(table, Integer.parseInt(parts.group("row")), inputs(table, parts.group("answers"), line), outputs(table, parts.group("gives"), line),
                notFor.equals(NOTHING) ? Optional.empty() : Optional.of(inputs(table, notFor, line)));
    }

    private static Map<String, Object> inputs(WrittenTable table, String text, CaseLine line) {
        Map<String, Object> inputs = new HashMap<>(USUAL);
        named(text, table.inputs().stream().map(WrittenTable.Input::name).toList(), line).forEach((name, value) -> {
            WrittenTable.Input input = table.inputs().stream().filter(column -> column.name().equals(name)).findFirst().orElseThrow();
            Object meant = meant(input, value);
            if (!input.allows(meant)) {
                throw line.fault(table.name() + " allows a " + name + " " + input.allowed() + ", not \"" + value + "\"");
            }
            inputs.put(name, meant);
        });
        table.inputs().stream().map(WrittenTable.Input::name).filter(name -> !inputs.containsKey(name)).findFirst().ifPresent(name -> {
            throw line.fault("\"" + text + "\" tells no " + name);
        });
        return inputs;
    }

    private static Object meant(WrittenTable.Input input, String value) {
        return switch (input.kind()) {
            case NUMBER -> {
                Matcher feet = FEET.matcher(value);
                yield feet.matches() ? new BigDecimal(feet.group(1)) : value;
            }
            case TEXT -> value;
            case YES_OR_NO -> value.equals("true") ? Boolean.TRUE : value.equals("false") ? Boolean.FALSE : value;
        };
    }

    private static Map<String, String> outputs(WrittenTable table, String text, CaseLine line) {
        List<String> names = table.outputs().stream().map(WrittenTable.Output::name).toList();
        return names.size() == 1 ? Map.of(names.get(0), text) : named(text, names, line);
    }

    /** Reads {@code height 7.5 ft, diameter 60 mm}: values by one of these names, which may be of several words. */
    private static Map<String, String> named(String text, List<String> names, CaseLine line) {
        Map<String, String> values = new TreeMap<>();
        for (String part : text.split(", ")) {
            String name = names.stream().filter(known -> part.startsWith(known + " ")).findFirst()
                    .orElseThrow(() -> line.fault("\"" + part + "\" begins with none of " + names));
            if (values.put(name, part.substring(name.length() + 1)) != null) {
                throw line.fault("a second " + name + " in \"" + text + "\"");
            }
        }
        return values;
    }
}
