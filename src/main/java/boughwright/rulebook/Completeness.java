package boughwright.rulebook;

import boughwright.brief.Abundance;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.brief.Word;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.AccentChoice;
import boughwright.needs.House;
import boughwright.needs.RibbonMeasures;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What an edition must hold before anyone is consulted from it: every table that sizing asks, every fact that each tree needs. */
final class Completeness {

    private static final List<Length> HEIGHTS = List.of(Tree.LEAST_HEIGHT, Length.ofFeet(4.9), Length.ofFeet(5), Length.ofFeet(9), Tree.GREATEST_HEIGHT);

    private Completeness() {
    }

    static List<RulebookFault> faults(DmnTables tables, StyleRules rules, House house) {
        List<RulebookFault> faults = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            table(tables, quantity, "Base", Set.of("Base"), faults);
            table(tables, quantity, "Fullness factor", Set.of("Fullness factor"), faults);
            table(tables, quantity, "Seen-from factor", Set.of("Seen-from factor"), faults);
            table(tables, quantity, "Abundance factor", Set.of("Abundance factor"), faults);
            table(tables, quantity, "Policy", Set.of("rounding", "least", "girth"), faults);
        }
        if (faults.isEmpty()) {
            questions(tables, faults);
        }
        for (Length height : HEIGHTS) {
            Tree tree = new Tree(height, Tree.usualDiameter(height, Fullness.MEDIUM), Fullness.MEDIUM, SeenFrom.WALL, false, false);
            if (rules.run(List.of(house, tree), RibbonMeasures.class).size() != 1) {
                faults.add(RulebookFault.ofFile("edition.json", 0, Text.of("rulebook.rule.none", height.show(Units.FEET))));
            }
            if (rules.run(List.of(house, tree), AccentChoice.class).isEmpty()) {
                faults.add(RulebookFault.ofFile("edition.json", 0, Text.of("rulebook.accents.none", height.show(Units.FEET))));
            }
        }
        return faults;
    }

    /** Asks all that sizing will ever ask, at the least, the greatest and some heights between. */
    private static void questions(DmnTables tables, List<RulebookFault> faults) {
        for (Quantity quantity : Quantity.values()) {
            List<Map<String, String>> kinds = switch (quantity) {
                case FILLER_BALLS -> Sizer.DIAMETERS.stream().map(d -> Map.of("diameter", d)).toList();
                case FEATURE_ORNAMENTS -> Sizer.SIZES.stream().map(s -> Map.of("size", s)).toList();
                default -> List.of(Map.of());
            };
            for (Length height : HEIGHTS) {
                kinds.forEach(kind -> {
                    Map<String, Object> inputs = new HashMap<>(kind);
                    inputs.putAll(Map.of("fullness", Fullness.MEDIUM.word(), "seen from", SeenFrom.WALL.word(), "abundance", Abundance.GENEROUS.word()));
                    inputs.put("height", BigDecimal.valueOf(height.feet()));
                    ask(tables, quantity, "Base", inputs, faults);
                });
            }
            Word.words(Fullness.class).forEach(w -> ask(tables, quantity, "Fullness factor", Map.of("fullness", w), faults));
            Word.words(SeenFrom.class).forEach(w -> ask(tables, quantity, "Seen-from factor", Map.of("seen from", w), faults));
            Word.words(Abundance.class).forEach(w -> ask(tables, quantity, "Abundance factor", Map.of("abundance", w), faults));
        }
    }

    private static void ask(DmnTables tables, Quantity quantity, String table, Map<String, ?> inputs, List<RulebookFault> faults) {
        try {
            tables.ask(quantity.file(), table, inputs);
        } catch (IllegalArgumentException e) {
            faults.add(new RulebookFault(quantity.file(), tables.table(quantity.file(), table).line(), table, List.of(),
                    Text.of("rulebook.unanswered", inputs.toString())));
        }
    }

    private static void table(DmnTables tables, Quantity quantity, String name, Set<String> outputs, List<RulebookFault> faults) {
        List<WrittenTable> inFile = tables.tables().stream().filter(t -> t.file().equals(quantity.file())).toList();
        if (inFile.isEmpty()) {
            if (name.equals("Base")) {
                faults.add(RulebookFault.ofFile(quantity.file(), 0, Text.of("rulebook.file.missing")));
            }
            return;
        }
        boolean found = inFile.stream().filter(t -> t.name().equals(name))
                .anyMatch(t -> t.outputs().stream().map(WrittenTable.Output::name).collect(Collectors.toSet()).containsAll(outputs));
        if (!found) {
            faults.add(RulebookFault.ofFile(quantity.file(), 0, Text.of("rulebook.table.missing", name, String.join(", ", outputs.stream().sorted().toList()))));
        }
    }
}
