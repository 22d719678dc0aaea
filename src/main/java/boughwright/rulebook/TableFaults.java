package boughwright.rulebook;

import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNMessageType;
import org.kie.dmn.feel.runtime.Range.RangeBoundary;
import org.kie.dmn.model.api.DMNModelInstrumentedBase;
import org.kie.dmn.model.api.Decision;
import org.kie.dmn.validation.dtanalysis.DMNDTAnalysisMessage;
import org.kie.dmn.validation.dtanalysis.model.Hyperrectangle;
import org.kie.dmn.validation.dtanalysis.model.Interval;
import org.kie.dmn.validation.dtanalysis.model.Overlap;

/** Turns what the decision engine's validation says about one file into faults that name the table, its rows and what to do. */
final class TableFaults {

    /** Advice on how a table could be written shorter, or what an overlap's fault already says: nothing to mend. */
    private static final Set<DMNMessageType> ADVICE = Set.of(
            DMNMessageType.DECISION_TABLE_ANALYSIS_EMPTY, DMNMessageType.DECISION_TABLE_2NDNFVIOLATION,
            DMNMessageType.DECISION_TABLE_CONTRACTION_RULE, DMNMessageType.DECISION_TABLE_SUBSUMPTION_RULE,
            DMNMessageType.DECISION_TABLE_HITPOLICY_RECOMMENDER, DMNMessageType.DECISION_TABLE_1STNFVIOLATION,
            DMNMessageType.DMNDI_MISSING_DIAGRAM, DMNMessageType.DMNDI_UNKNOWN_REF);

    private final TableReader.TableFile file;
    private final List<RulebookFault> faults;
    private final Set<String> analysed = new TreeSet<>();

    TableFaults(TableReader.TableFile file, List<RulebookFault> faults) {
        this.file = file;
        this.faults = faults;
    }

    void add(DMNMessage message) {
        if (ADVICE.contains(message.getMessageType())) {
            return;
        }
        var table = tableOf(message);
        switch (message.getMessageType()) {
            case DECISION_TABLE_GAP, DECISION_TABLE_OVERLAP_HITPOLICY_UNIQUE -> addAnalysis((DMNDTAnalysisMessage) message, table);
            case DECISION_TABLE_ANALYSIS_ERROR -> addAt(message, table, "rulebook.analysis");
            default -> addAt(message, table, "rulebook.engine");
        }
    }

    /** A table's messages all carry the whole analysis, one message for each gap: it is told once. */
    private void addAnalysis(DMNDTAnalysisMessage message, WrittenTable table) {
        if (table == null || message.getAnalysis().getDdtaTable() == null) {
            addAt(message, table, "rulebook.engine");
            return;
        }
        if (analysed.add(table.name())) {
            var edges = new Edges(table);
            message.getAnalysis().getGaps().forEach(gap -> edges.gap(gap));
            message.getAnalysis().getOverlaps().forEach(overlap -> edges.overlap(overlap));
        }
    }

    private void addAt(DMNMessage message, WrittenTable table, String key) {
        var text = message.getText().replaceFirst("^DMN: ", "").replaceFirst(" \\([^()]*\\)\\s*$", "");
        var reference = message.getSourceReference();
        int line = reference instanceof DMNModelInstrumentedBase element && element.getLocation() != null ? element.getLocation().getLineNumber() : 0;
        List<Integer> rows = table == null ? List.of() : table.rows().stream().filter(row -> row.line() == line).map(WrittenTable.Row::number).toList();
        faults.add(new RulebookFault(file.file(), Math.max(0, line), table == null ? "" : table.name(), rows, Text.of(key, text)));
    }

    private WrittenTable tableOf(DMNMessage message) {
        var at = message.getSourceReference() instanceof DMNModelInstrumentedBase element ? element : null;
        while (at != null && !(at instanceof Decision)) {
            at = at.getParent();
        }
        if (!(at instanceof Decision decision)) {
            return null;
        }
        return file.tables().stream().filter(table -> table.name().equals(decision.getName())).findFirst().orElse(null);
    }

    /** Words for the boxes of input values that no row, or more than one row, answers. */
    private final class Edges {

        private final WrittenTable table;

        Edges(WrittenTable table) {
            this.table = table;
        }

        void gap(Hyperrectangle gap) {
            if (isEmpty(gap)) {
                return;
            }
            var before = new TreeSet<Integer>();
            var after = new TreeSet<Integer>();
            neighbours(gap, before, after);
            var rows = new TreeSet<>(before);
            rows.addAll(after);
            var where = words(gap);
            add(rows, rows.isEmpty() ? Text.of("rulebook.gap.alone", where) : Text.of("rulebook.gap", listed(rows), rows.size(), where), box(true, gap));
        }

        void overlap(Overlap overlap) {
            if (isEmpty(overlap.getOverlap())) {
                return;
            }
            var rows = new TreeSet<>(overlap.getRules());
            add(rows, Text.of("rulebook.overlap", listed(rows), rows.size(), words(overlap.getOverlap())), box(false, overlap.getOverlap()));
        }

        private void add(TreeSet<Integer> rows, String message, RulebookFault.Box box) {
            int line = rows.isEmpty() ? table.line() : table.rows().get(rows.first() - 1).line();
            faults.add(new RulebookFault(table.file(), line, table.name(), List.copyOf(rows), message, Optional.of(box)));
        }

        /** Rows whose number range ends where the gap begins, and rows whose range begins where it ends. */
        private void neighbours(Hyperrectangle gap, Set<Integer> before, Set<Integer> after) {
            for (int column = 0; column < gap.getEdges().size(); column++) {
                var input = table.inputs().get(column);
                if (input.kind() != WrittenTable.Kind.NUMBER) {
                    continue;
                }
                var edge = gap.getEdges().get(column);
                for (var row : table.rows()) {
                    var range = table.interval(row, input.name());
                    if (edge.getLowerBound().getValue() instanceof BigDecimal low && range.to().compareTo(low) == 0 && range.from().compareTo(low) < 0) {
                        before.add(row.number());
                    }
                    if (edge.getUpperBound().getValue() instanceof BigDecimal high && range.from().compareTo(high) == 0 && range.to().compareTo(high) > 0) {
                        after.add(row.number());
                    }
                }
            }
        }

        private RulebookFault.Box box(boolean gap, Hyperrectangle box) {
            var numbers = new TreeMap<String, NumberInterval>();
            var words = new TreeMap<String, List<String>>();
            for (int column = 0; column < Math.min(table.inputs().size(), box.getEdges().size()); column++) {
                var input = table.inputs().get(column);
                var edge = box.getEdges().get(column);
                if (edge.getLowerBound().getValue() instanceof BigDecimal low && edge.getUpperBound().getValue() instanceof BigDecimal high) {
                    numbers.put(input.name(), new NumberInterval(low, closedBelow(edge), high, closedAbove(edge)));
                } else {
                    words.put(input.name(), input.choices().stream().filter(edge::asRangeIncludes).toList());
                }
            }
            return new RulebookFault.Box(gap, numbers, words);
        }

        /** The engine holds 8 and 8.0 to be different and then reports a box with nothing in it. */
        private boolean isEmpty(Hyperrectangle box) {
            for (var edge : box.getEdges()) {
                if (edge.getLowerBound().getValue() instanceof BigDecimal low && edge.getUpperBound().getValue() instanceof BigDecimal high
                        && low.compareTo(high) == 0 && !(closedBelow(edge) && closedAbove(edge))) {
                    return true;
                }
            }
            return false;
        }

        private String words(Hyperrectangle box) {
            var parts = new ArrayList<String>();
            for (int column = 0; column < table.inputs().size(); column++) {
                var input = table.inputs().get(column);
                if (column < box.getEdges().size()) {
                    parts.add(input.name() + " " + words(input, box.getEdges().get(column)));
                }
            }
            return String.join(Text.of("rulebook.with"), parts);
        }

        private String words(WrittenTable.Input input, Interval edge) {
            if (edge.getLowerBound().getValue() instanceof BigDecimal low && edge.getUpperBound().getValue() instanceof BigDecimal high) {
                return new NumberInterval(low, closedBelow(edge), high, closedAbove(edge)).words();
            }
            var matching = input.choices().stream().filter(edge::asRangeIncludes).toList();
            return matching.isEmpty() ? edge.toString() : "\"" + String.join("\", \"", matching) + "\"";
        }

        private static boolean closedBelow(Interval edge) {
            return edge.getLowerBound().getBoundaryType() == RangeBoundary.CLOSED;
        }

        private static boolean closedAbove(Interval edge) {
            return edge.getUpperBound().getBoundaryType() == RangeBoundary.CLOSED;
        }

        private static String listed(TreeSet<Integer> rows) {
            if (rows.size() == 1) {
                return Text.of("rulebook.rows.one", rows.first());
            }
            var all = rows.stream().map(String::valueOf).toList();
            return Text.of("rulebook.rows.several", String.join(", ", all.subList(0, all.size() - 1)), all.get(all.size() - 1));
        }
    }
}
