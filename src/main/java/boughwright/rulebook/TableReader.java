package boughwright.rulebook;

import boughwright.text.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads the decision tables of a DMN file as they are written, with the lines of their rows.
 *
 * <p>Accepts the part of DMN that the rulebook uses: type definitions, input data, and decisions that are decision tables. Everything
 * else is a fault, because a function or an import can reach code outside the rulebook; drawings and other programs' extensions are
 * passed over, and reach the engine from a folder of the shop's own alone: what staff bring is written anew from its cells.
 */
final class TableReader {

    /** A file's tables; {@code namespace} and {@code model} name it to the engine. */
    record TableFile(String file, String text, String namespace, String model, String description, List<WrittenTable> tables) {
    }

    /** Longer than any rulebook's file by far, and soon read. */
    static final int LONGEST = 2_000_000;
    /** DMN 1.2 to 1.6; what we use of it is the same in all. */
    private static final Set<String> NAMESPACES = Set.of("http://www.omg.org/spec/DMN/20180521/MODEL/", "https://www.omg.org/spec/DMN/20191111/MODEL/",
            "https://www.omg.org/spec/DMN/20211108/MODEL/", "https://www.omg.org/spec/DMN/20230324/MODEL/", "https://www.omg.org/spec/DMN/20240513/MODEL/");
    private static final Pattern FEEL = Pattern.compile("(?i)feel|https?://www\\.omg\\.org/spec/DMN/\\d{8}/FEEL/");

    private static final Set<String> KNOWN = Set.of("definitions", "description", "itemDefinition", "itemComponent", "typeRef", "allowedValues",
            "typeConstraint", "text", "inputData", "variable", "decision", "question", "allowedAnswers", "informationRequirement", "requiredInput",
            "decisionTable", "input", "inputExpression", "inputValues", "output", "outputValues", "annotation", "rule", "inputEntry", "outputEntry",
            "annotationEntry");
    private static final Set<String> PASSED_OVER = Set.of("DMNDI", "extensionElements");
    private static final Pattern QUOTED = Pattern.compile("\\s*\"([^\"\\\\]*)\"\\s*(?:,|$)");

    private final String file;
    private final List<RulebookFault> faults;
    private final Map<String, XmlElement> types = new HashMap<>();
    private final Map<String, String> typeOfInput = new HashMap<>();

    private TableReader(String file, List<RulebookFault> faults) {
        this.file = file;
        this.faults = faults;
    }

    /** Reads a file and adds what is wrong with it to {@code faults}; empty when nothing of it can be read. */
    static Optional<TableFile> read(String file, String text, List<RulebookFault> faults) {
        if (text.length() > LONGEST) {
            faults.add(RulebookFault.ofFile(file, 0, Text.of("rulebook.dmn.long", LONGEST / 1_000_000)));
            return Optional.empty();
        }
        try {
            var root = XmlElement.read(text);
            if (!root.name().equals("definitions")) {
                faults.add(RulebookFault.ofFile(file, root.line(), Text.of("rulebook.dmn.root", root.name())));
                return Optional.empty();
            }
            if (!NAMESPACES.contains(root.namespace())) {
                faults.add(RulebookFault.ofFile(file, root.line(), Text.of("rulebook.dmn.namespace", root.namespace())));
                return Optional.empty();
            }
            var wordy = wordy(root);
            if (wordy.isPresent()) {
                faults.add(RulebookFault.ofFile(file, wordy.get().line(), Text.of("rulebook.dmn.wordy", wordy.get().name(), most(wordy.get()))));
                return Optional.empty();
            }
            return Optional.of(new TableReader(file, faults).file(root, text));
        } catch (XmlElement.Unreadable unreadable) {
            faults.add(RulebookFault.ofFile(file, unreadable.line, unreadable.getMessage()));
            return Optional.empty();
        }
    }

    /** The first element outside of rows that says more than it may: allowed values are searched, and names are told in every fault. */
    private static Optional<XmlElement> wordy(XmlElement element) {
        if (element.text().length() > most(element) || element.attributes().values().stream().anyMatch(a -> a.length() > CellCheck.LONGEST)) {
            return Optional.of(element);
        }
        return element.children().stream().filter(child -> !child.name().equals("rule") && !PASSED_OVER.contains(child.name()))
                .flatMap(child -> wordy(child).stream()).findFirst();
    }

    private static int most(XmlElement element) {
        return element.name().equals("description") ? 10 * CellCheck.LONGEST : CellCheck.LONGEST;
    }

    private TableFile file(XmlElement root, String text) {
        refuseUnknown(root);
        root.all("itemDefinition").forEach(type -> types.put(type.attribute("name"), type));
        root.all("inputData").flatMap(data -> data.all("variable"))
                .forEach(variable -> typeOfInput.put(variable.attribute("name"), variable.attribute("typeRef")));
        var tables = new ArrayList<WrittenTable>();
        root.all("decision").forEach(decision -> decision.first("decisionTable").ifPresentOrElse(
                table -> tables.add(table(decision, table)),
                () -> fault(decision.line(), decision.attribute("name"), Text.of("rulebook.dmn.decision"))));
        if (tables.isEmpty()) {
            faults.add(RulebookFault.ofFile(file, 0, Text.of("rulebook.dmn.empty")));
        }
        return new TableFile(file, text, root.attribute("namespace"), root.attribute("name"), root.textAt("description"), List.copyOf(tables));
    }

    private void refuseUnknown(XmlElement element) {
        if (faults.size() >= RulebookFault.ENOUGH) {
            return;
        }
        for (var language : List.of("expressionLanguage", "typeLanguage")) {
            var named = element.attribute(language);
            if (!named.isEmpty() && !FEEL.matcher(named).matches()) {
                faults.add(RulebookFault.ofFile(file, element.line(), Text.of("rulebook.dmn.language", named)));
            }
        }
        for (var child : element.children()) {
            if (PASSED_OVER.contains(child.name())) {
                continue;
            }
            if (!KNOWN.contains(child.name()) || !child.namespace().equals(element.namespace())) {
                faults.add(RulebookFault.ofFile(file, child.line(), Text.of("rulebook.dmn.element", child.name())));
            } else {
                refuseUnknown(child);
            }
        }
    }

    private WrittenTable table(XmlElement decision, XmlElement table) {
        var name = decision.attribute("name");
        var policy = table.attribute("hitPolicy");
        if (!policy.isEmpty() && !policy.equals("UNIQUE")) {
            fault(table.line(), name, Text.of("rulebook.dmn.policy", policy));
        }
        var inputs = table.all("input").map(input -> input(name, input)).toList();
        var outputs = outputs(decision, table.all("output").toList());
        var notes = table.all("annotation").map(note -> note.attribute("name")).toList();
        var rows = new ArrayList<WrittenTable.Row>();
        table.all("rule").forEach(rule -> rows.add(new WrittenTable.Row(rows.size() + 1, rule.line(),
                cells(rule, "inputEntry"), cells(rule, "outputEntry"), cells(rule, "annotationEntry"))));
        return new WrittenTable(file, decision.line(), name, inputs, outputs, notes, List.copyOf(rows));
    }

    private static List<String> cells(XmlElement rule, String kind) {
        return rule.all(kind).map(entry -> entry.textAt("text")).toList();
    }

    private WrittenTable.Input input(String table, XmlElement input) {
        var name = input.textAt("inputExpression", "text");
        var expression = input.first("inputExpression");
        var written = expression.map(e -> e.attribute("typeRef")).orElse("");
        var type = written.isEmpty() ? typeOfInput.getOrDefault(name, "") : written;
        var kind = kind(type);
        var allowed = input.textAt("inputValues", "text");
        if (allowed.isEmpty() && types.containsKey(type)) {
            allowed = types.get(type).textAt("allowedValues", "text");
        }
        Optional<NumberInterval> range = kind == WrittenTable.Kind.NUMBER ? NumberInterval.read(allowed) : Optional.empty();
        List<String> choices = kind == WrittenTable.Kind.TEXT ? texts(allowed).orElse(List.of()) : List.of();
        if (!typeOfInput.containsKey(name)) {
            fault(input.line(), table, Text.of("rulebook.dmn.column", name));
        } else if (kind == WrittenTable.Kind.NUMBER && range.isEmpty()) {
            fault(input.line(), table, Text.of("rulebook.dmn.numbers", name));
        } else if (kind == WrittenTable.Kind.TEXT && choices.isEmpty()) {
            fault(input.line(), table, Text.of("rulebook.dmn.words", name));
        }
        return new WrittenTable.Input(name, kind, range, choices);
    }

    private List<WrittenTable.Output> outputs(XmlElement decision, List<XmlElement> columns) {
        var variable = decision.first("variable").map(v -> v.attribute("typeRef")).orElse("");
        if (columns.size() == 1) {
            return List.of(new WrittenTable.Output(decision.attribute("name"), kind(variable)));
        }
        return columns.stream().map(column -> new WrittenTable.Output(column.attribute("name"), kind(column.attribute("typeRef")))).toList();
    }

    private WrittenTable.Kind kind(String type) {
        var base = types.containsKey(type) ? types.get(type).textAt("typeRef") : type;
        return switch (base) {
            case "number" -> WrittenTable.Kind.NUMBER;
            case "boolean" -> WrittenTable.Kind.YES_OR_NO;
            default -> WrittenTable.Kind.TEXT;
        };
    }

    /** A list of quoted texts such as {@code "corner", "wall"}; empty when the cell is something else. */
    static Optional<List<String>> texts(String cell) {
        var found = QUOTED.matcher(cell);
        var texts = new ArrayList<String>();
        int end = 0;
        while (end < cell.length() && found.find(end) && found.start() == end) {
            texts.add(found.group(1));
            end = found.end();
        }
        return end == cell.length() && !texts.isEmpty() && !cell.strip().endsWith(",") ? Optional.of(List.copyOf(texts)) : Optional.empty();
    }

    private void fault(int line, String table, String message) {
        faults.add(new RulebookFault(file, line, table, List.of(), message));
    }
}
