package boughwright.house;

import boughwright.rulebook.Growing;
import boughwright.rulebook.NumberInterval;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes a sheet as a DMN 1.5 file (OMG formal/2023-08-01): types with their allowed values, input data, one decision table for each grid
 * with hit policy UNIQUE, and a diagram, so that other DMN tools open it as a drawing. The same sheet gives the same text.
 */
final class SheetWriter {

    static final List<String> ROUNDINGS = List.of("up", "nearest", "down");

    private static final String MODEL = "https://www.omg.org/spec/DMN/20230324/MODEL/";
    private static final String HEIGHT = "height";

    private final Sheet sheet;
    private final StringBuilder out = new StringBuilder();
    /** Input columns of all grids by name; the height, which has no words, first. */
    private final Map<String, Column> inputs = new LinkedHashMap<>();

    private SheetWriter(Sheet sheet) {
        this.sheet = sheet;
        inputs.put(HEIGHT, new Column(HEIGHT, List.of()));
        sheet.grids().forEach(g -> g.columns().forEach(c -> inputs.putIfAbsent(c.name(), c)));
    }

    /**
     * @param sheet without faults in its cells
     * @throws IllegalArgumentException when a cell cannot be written; {@link SheetCheck} finds it first
     */
    static String dmn(Sheet sheet) {
        SheetWriter writer = new SheetWriter(sheet);
        writer.write();
        return writer.out.toString();
    }

    private void write() {
        line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        line("<definitions xmlns=\"" + MODEL + "\" xmlns:dmndi=\"https://www.omg.org/spec/DMN/20230324/DMNDI/\"");
        line("             xmlns:dc=\"http://www.omg.org/spec/DMN/20180521/DC/\" xmlns:di=\"http://www.omg.org/spec/DMN/20180521/DI/\"");
        line("             namespace=\"boughwright/sizing/" + attribute(sheet.topic()) + "\" name=\"" + attribute(sheet.title()) + "\">");
        line("  <description>" + escaped(sheet.about()) + "</description>");
        line("");
        inputs.values().forEach(this::type);
        sheet.grids().stream().filter(g -> g.results().size() > 1).forEach(this::structure);
        line("");
        inputs.values().forEach(c -> line("  <inputData id=\"" + id(c.name()) + "\" name=\"" + attribute(c.name()) + "\"><variable name=\""
                + attribute(c.name()) + "\" typeRef=\"" + attribute(typeName(c.name())) + "\"/></inputData>"));
        sheet.grids().forEach(this::decision);
        diagram();
        line("</definitions>");
    }

    private void type(Column column) {
        line("  <itemDefinition name=\"" + attribute(typeName(column.name())) + "\">");
        line("    <typeRef>" + (column.name().equals(HEIGHT) ? "number" : "string") + "</typeRef>");
        line("    <allowedValues><text>" + (column.name().equals(HEIGHT) ? "[3..20]" : escaped(quoted(column.choices()))) + "</text></allowedValues>");
        line("  </itemDefinition>");
    }

    private void structure(Grid grid) {
        line("  <itemDefinition name=\"" + attribute(grid.name()) + "\">");
        grid.results().forEach(r -> line("    <itemComponent name=\"" + attribute(r.name()) + "\"><typeRef>" + type(r) + "</typeRef></itemComponent>"));
        line("  </itemDefinition>");
    }

    private void decision(Grid grid) {
        boolean several = grid.results().size() > 1;
        line("");
        line("  <decision id=\"" + id(grid.name()) + "\" name=\"" + attribute(grid.name()) + "\">");
        line("    <variable name=\"" + attribute(grid.name()) + "\" typeRef=\"" + (several ? attribute(grid.name()) : type(grid.results().get(0))) + "\"/>");
        List<String> asked = asked(grid);
        asked.forEach(name -> line("    <informationRequirement id=\"" + requirement(grid, name) + "\"><requiredInput href=\"#" + id(name)
                + "\"/></informationRequirement>"));
        line("    <decisionTable hitPolicy=\"UNIQUE\">");
        asked.forEach(name -> line("      <input><inputExpression typeRef=\"" + attribute(typeName(name)) + "\"><text>" + escaped(name) + "</text></inputExpression></input>"));
        for (Result result : grid.results()) {
            String named = several ? " name=\"" + attribute(result.name()) + "\" typeRef=\"" + type(result) + "\"" : "";
            line(result.choices().isEmpty() ? "      <output" + named + "/>"
                    : "      <output" + named + "><outputValues><text>" + escaped(quoted(result.choices())) + "</text></outputValues></output>");
        }
        line("      <annotation name=\"reason\"/>");
        grid.rows().forEach(row -> row(grid, row));
        line("    </decisionTable>");
        line("  </decision>");
    }

    private void row(Grid grid, GridRow row) {
        line("      <rule>");
        if (grid.byHeight()) {
            line("        <inputEntry><text>" + heights(row.heights()) + "</text></inputEntry>");
        }
        row.choices().forEach(words -> line("        <inputEntry><text>" + (words.isEmpty() ? "-" : escaped(quoted(words))) + "</text></inputEntry>"));
        for (int i = 0; i < row.results().size(); i++) {
            line("        <outputEntry><text>" + escaped(result(grid.results().get(i), row, i)) + "</text></outputEntry>");
        }
        line("        <annotationEntry><text>" + escaped(row.reason()) + "</text></annotationEntry>");
        line("      </rule>");
    }

    private static String heights(Heights heights) {
        if (heights.any()) {
            return "-";
        }
        NumberInterval feet = heights.interval().orElseThrow(() -> new IllegalArgumentException("no heights: " + heights));
        return (feet.fromIncluded() ? "[" : "(") + NumberInterval.plain(feet.from()) + " .. " + NumberInterval.plain(feet.to()) + (feet.toIncluded() ? "]" : ")");
    }

    private static String result(Result result, GridRow row, int column) {
        String text = row.results().get(column);
        return switch (result.kind()) {
            case NUMBER -> column == 0 && row.growing()
                    ? new Growing(new BigDecimal(text), row.heights().interval().orElseThrow(() -> new IllegalArgumentException("no heights")).from()).cell()
                    : NumberInterval.plain(new BigDecimal(text));
            case WORD -> "\"" + text + "\"";
            case YES_OR_NO -> text;
        };
    }

    private static List<String> asked(Grid grid) {
        List<String> asked = new ArrayList<>();
        if (grid.byHeight()) {
            asked.add(HEIGHT);
        }
        grid.columns().forEach(c -> asked.add(c.name()));
        return asked;
    }

    /** Inputs in a row below, decisions in a row above, each where nothing crosses it but arrows. */
    private void diagram() {
        List<String> below = List.copyOf(inputs.keySet());
        line("");
        line("  <dmndi:DMNDI>");
        line("    <dmndi:DMNDiagram id=\"diagram\" name=\"" + Text.of("house.dmn.diagram") + "\">");
        for (int i = 0; i < sheet.grids().size(); i++) {
            shape(id(sheet.grids().get(i).name()), 40 + 190 * i, 40, 160, 70);
        }
        for (int i = 0; i < below.size(); i++) {
            shape(id(below.get(i)), 40 + 190 * i, 220, 150, 50);
        }
        for (int i = 0; i < sheet.grids().size(); i++) {
            for (String name : asked(sheet.grids().get(i))) {
                String requirement = requirement(sheet.grids().get(i), name);
                line("      <dmndi:DMNEdge id=\"arrow-" + requirement + "\" dmnElementRef=\"" + requirement + "\"><di:waypoint x=\""
                        + (115 + 190 * below.indexOf(name)) + "\" y=\"220\"/><di:waypoint x=\"" + (120 + 190 * i) + "\" y=\"110\"/></dmndi:DMNEdge>");
            }
        }
        line("    </dmndi:DMNDiagram>");
        line("  </dmndi:DMNDI>");
    }

    private void shape(String element, int x, int y, int width, int height) {
        line("      <dmndi:DMNShape id=\"shape-" + element + "\" dmnElementRef=\"" + element + "\"><dc:Bounds x=\"" + x + "\" y=\"" + y + "\" width=\"" + width
                + "\" height=\"" + height + "\"/></dmndi:DMNShape>");
    }

    private static String requirement(Grid grid, String input) {
        return id(grid.name()) + "-" + id(input);
    }

    private static String type(Result result) {
        return switch (result.kind()) {
            case NUMBER -> "number";
            case WORD -> "string";
            case YES_OR_NO -> "boolean";
        };
    }

    /** {@code seen from} → {@code Seen from}. */
    private static String typeName(String input) {
        return input.substring(0, 1).toUpperCase(Locale.ROOT) + input.substring(1);
    }

    private static String id(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    private static String quoted(List<String> words) {
        return words.stream().map(w -> "\"" + w + "\"").collect(Collectors.joining(", "));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String attribute(String text) {
        return escaped(text).replace("\"", "&quot;");
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
