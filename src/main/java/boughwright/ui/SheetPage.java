package boughwright.ui;

import boughwright.house.Complaint;
import boughwright.house.Curve;
import boughwright.house.Grid;
import boughwright.house.Headings;
import boughwright.house.HouseRules;
import boughwright.house.Sheet;
import boughwright.rulebook.Asked;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** One quantity: its tables to edit, and beside them how many that makes for each height, now and under the edition that is live. */
final class SheetPage extends HousePage {

    private final HouseEdits edits;
    private final String topic;
    private final ComplaintList complaints = new ComplaintList();
    private final Div chart = new Div();
    private final List<GridTable> tables = new ArrayList<>();
    private final Div editing = new Div();
    private final Set<String> apart = new TreeSet<>();
    private final int pointed;
    private boolean sentences;
    private String dimension;

    /** @param pointed row of the table by height that somebody asks about, from 1; 0 for none */
    SheetPage(HouseEdits edits, String topic, int pointed) {
        super("sheet-page");
        this.edits = edits;
        this.topic = topic;
        this.dimension = Curve.dimensions(edits.drafting().rules().sheet(topic).orElseThrow()).get(0);
        this.pointed = pointed;
        editing.addClassName("editing");
        drawTables();
        chart.addClassName("beside-grid");
        add(chart, editing);
    }

    private void drawTables() {
        Sheet sheet = edits.drafting().rules().sheet(topic).orElseThrow();
        editing.removeAll();
        tables.clear();
        editing.add(new H1(edits.drafting().words().of(sheet.title())), soft(edits.drafting().words().of(sheet.about())), complaints);
        for (Grid grid : sheet.grids()) {
            boolean base = grid.name().equals(Grid.BASE);
            GridTable table = new GridTable(sheet, grid, edits.drafting().units(), apart, base ? pointed : 0, new GridTable.Edit() {
                @Override
                public void cell(UnaryOperator<Grid> change) {
                    edits.cell(in(grid.name(), change));
                }

                @Override
                public void rows(UnaryOperator<Grid> change) {
                    edits.page(in(grid.name(), change));
                }
            });
            tables.add(table);
            editing.add(new H2(Headings.grid(grid.name())));
            if (base) {
                editing.add(switches(grid));
            }
            editing.add(table);
        }
        editing.setClassName("sentences", sentences);
        setClassName("wide-table", tables.stream().anyMatch(t -> t.hasClassName("wide")));
    }

    /** What else the rows may tell apart, and whether their sentences are shown. */
    private Div switches(Grid grid) {
        Div row = new Div();
        row.addClassNames("choice-row", "chips");
        for (int c = 0; c < grid.columns().size(); c++) {
            String name = grid.columns().get(c).name();
            if (!GridTable.tellsApart(grid, c) && !apart.contains(name)) {
                row.add(Controls.pill(Text.of("house.apart", Headings.column(name)), false, () -> {
                    apart.add(name);
                    drawTables();
                    complained(edits.drafting().complaints(topic));
                }));
            }
        }
        row.add(Controls.pill(Text.of("house.sentences"), sentences, () -> {
            sentences = !sentences;
            drawTables();
            complained(edits.drafting().complaints(topic));
        }));
        return row;
    }

    private UnaryOperator<HouseRules> in(String grid, UnaryOperator<Grid> change) {
        return rules -> rules.changeGrid(topic, grid, change);
    }

    @Override
    void complained(List<Complaint> all) {
        tables.forEach(t -> t.mark(all));
        complaints.show(all);
        drawChart();
    }

    private void drawChart() {
        chart.removeAll();
        Sheet sheet = edits.drafting().rules().sheet(topic).orElseThrow();
        Optional<Sheet> live = edits.drafting().live().sheet(topic);
        Div by = new Div();
        by.addClassNames("choice-row", "chips");
        for (String name : Curve.dimensions(sheet)) {
            by.add(Controls.pill(Headings.column(name), name.equals(dimension), () -> {
                dimension = name;
                drawChart();
            }));
        }
        Grid base = sheet.grid(Grid.BASE).orElseThrow();
        chart.add(new QuantityChart(Curve.of(sheet, dimension), live.map(l -> Curve.of(l, dimension)).orElse(List.of()),
                Headings.result(sheet, base, base.results().get(0)), Asked.bySurface(topic), edits.drafting().units()), by, soft(Text.of("house.chart.words")));
    }
}
