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
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** One quantity: its tables to edit, and beside them how many that makes for each height, now and under the edition that is live. */
final class SheetPage extends HousePage {

    private final HouseEdits edits;
    private final String topic;
    private final Div complaints = new Div();
    private final Div chart = new Div();
    private final List<GridTable> tables = new ArrayList<>();
    private String dimension;

    /** @param pointed row of the table by height that somebody asks about, from 1; 0 for none */
    SheetPage(HouseEdits edits, String topic, int pointed) {
        super("sheet-page");
        this.edits = edits;
        this.topic = topic;
        Sheet sheet = edits.drafting().rules().sheet(topic).orElseThrow();
        this.dimension = Curve.dimensions(sheet).get(0);
        Div editing = new Div(new H1(sheet.title()), soft(sheet.about()), complaints);
        editing.addClassName("editing");
        complaints.addClassName("complaints");
        complaints.getElement().setAttribute("aria-live", "polite");
        for (Grid grid : sheet.grids()) {
            GridTable table = new GridTable(sheet, grid, edits.drafting().units(), grid.name().equals(Grid.BASE) ? pointed : 0, new GridTable.Edit() {
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
            editing.add(new H2(Headings.grid(grid.name())), table);
        }
        chart.addClassName("beside-grid");
        add(editing, chart);
        drawChart();
    }

    private static Paragraph soft(String text) {
        Paragraph paragraph = new Paragraph(text);
        paragraph.addClassName("soft");
        return paragraph;
    }

    private UnaryOperator<HouseRules> in(String grid, UnaryOperator<Grid> change) {
        return rules -> rules.changeGrid(topic, grid, change);
    }

    @Override
    void complained(List<Complaint> all) {
        tables.forEach(t -> t.mark(all));
        complaints.removeAll();
        for (int i = 0; i < all.size(); i++) {
            complaints.add(new ComplaintBox(all.get(i), i + 1, false));
        }
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
