package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.house.Complaint;
import boughwright.house.Grid;
import boughwright.house.GridRow;
import boughwright.house.Headings;
import boughwright.house.Heights;
import boughwright.house.LengthText;
import boughwright.house.Result;
import boughwright.house.Sheet;
import boughwright.measure.Units;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * One table to edit: a row for each row, the sentence for the customer below its cells. A change of a cell leaves all fields as they are,
 * so that one can go on typing; only added, moved and deleted rows draw the table anew.
 */
final class GridTable extends Div {

    private final Sheet sheet;
    private final Grid grid;
    private final Units units;
    private final Edit edit;
    private final Map<String, Component> cells = new HashMap<>();
    private final List<Integer> told;

    /** What the table asks of the page. */
    interface Edit {

        void cell(UnaryOperator<Grid> change);

        void rows(UnaryOperator<Grid> change);
    }

    /**
     * @param apart names of columns to be shown although no row says anything there
     * @param pointed at from elsewhere, from 1; 0 for none
     */
    GridTable(Sheet sheet, Grid grid, Units units, Set<String> apart, int pointed, Edit edit) {
        this.sheet = sheet;
        this.grid = grid;
        this.units = units;
        this.edit = edit;
        this.told = IntStream.range(0, grid.columns().size())
                .filter(c -> !growable() || apart.contains(grid.columns().get(c).name()) || tellsApart(grid, c)).boxed().toList();
        addClassNames("grid-table", told.size() > 1 ? "wide" : "narrow");
        Div table = new Div();
        table.getElement().setAttribute("role", "table");
        table.getElement().setAttribute("aria-label", Headings.grid(grid.name()));
        getStyle().set("--columns", columns());
        table.add(head());
        for (int i = 0; i < grid.rows().size(); i++) {
            Div row = row(i, grid.rows().get(i));
            if (i + 1 == pointed) {
                row.addClassName("pointed");
                row.getElement().executeJs("this.scrollIntoView({block: 'center'})");
            }
            table.add(row);
        }
        NativeButton more = Controls.link(Text.of("house.row.add"), () -> edit.rows(g -> g.add(g.rows().size() - 1)));
        add(table, more);
    }

    private String columns() {
        StringBuilder columns = new StringBuilder("1.6rem ");
        if (grid.byHeight()) {
            columns.append("minmax(9.3rem, 1.3fr) minmax(9.3rem, 1.3fr) ");
        }
        told.forEach(c -> columns.append("minmax(5rem, 1fr) "));
        grid.results().forEach(r -> columns.append(r.kind() == Result.Kind.NUMBER ? "minmax(4.6rem, .8fr) " : "minmax(6rem, 1fr) "));
        if (growable()) {
            columns.append("minmax(4.9rem, .6fr) ");
        }
        return columns.append("2.8rem").toString();
    }

    /** Whether some row speaks of some words of a column only. */
    static boolean tellsApart(Grid grid, int column) {
        return grid.rows().stream().anyMatch(r -> !r.choices().get(column).isEmpty());
    }

    private boolean growable() {
        return grid.name().equals(Grid.BASE);
    }

    private Div head() {
        Div head = new Div(heading("#"));
        if (grid.byHeight()) {
            head.add(heading(Headings.column("from")), heading(Headings.column("to")));
        }
        told.forEach(c -> head.add(heading(Headings.column(grid.columns().get(c).name()))));
        grid.results().forEach(r -> head.add(heading(Headings.result(sheet, grid, r))));
        if (growable()) {
            head.add(heading(Text.of("house.column.growing")));
        }
        Span last = heading("");
        last.add(Controls.words(Text.of("house.column.do"), "unseen"));
        head.add(last);
        head.addClassNames("grid-row", "grid-head");
        head.getElement().setAttribute("role", "row");
        return head;
    }

    private static Span heading(String text) {
        Span heading = new Span(text);
        heading.getElement().setAttribute("role", "columnheader");
        return heading;
    }

    private Div row(int index, GridRow row) {
        Div line = new Div();
        line.addClassName("grid-row");
        line.getElement().setAttribute("role", "row");
        Span number = new Span(String.valueOf(index + 1));
        number.addClassName("row-number");
        line.add(cell(number));
        if (grid.byHeight()) {
            line.add(cell(height(index, row, true)), cell(height(index, row, false)));
        }
        for (int column : told) {
            int c = column;
            PickWords words = new PickWords(label(index, Headings.column(grid.columns().get(c).name())), grid.columns().get(c).choices(), row.choices().get(c),
                    chosen -> edit.cell(g -> g.change(index, r -> r.withChoice(column, chosen))));
            line.add(known(index, Headings.column(grid.columns().get(c).name()), words));
        }
        for (int c = 0; c < grid.results().size(); c++) {
            line.add(result(index, row, c));
        }
        if (growable()) {
            line.add(cell(toggle(Text.of("house.grows"), Text.of("house.stays"), row.growing(), label(index, Text.of("house.column.growing")),
                    now -> edit.cell(g -> g.change(index, r -> r.withGrowing(now))))));
        }
        line.add(cell(menu(index)));
        Input reason = input(row.reason(), label(index, Headings.column("reason")), text -> edit.cell(g -> g.change(index, r -> r.withReason(text))));
        reason.addClassName("row-reason");
        line.add(known(index, Headings.column("reason"), reason));
        return line;
    }

    private static Div cell(Component content) {
        Div cell = new Div(content);
        cell.addClassName("cell");
        cell.getElement().setAttribute("role", "cell");
        return cell;
    }

    private Div known(int index, String column, Component content) {
        Div cell = cell(content);
        cells.put(key(index + 1, column), cell);
        if (content instanceof Input input && input.hasClassName("row-reason")) {
            cell.addClassName("reason-cell");
        }
        return cell;
    }

    private static String key(int row, String column) {
        return row + " " + column;
    }

    private static String label(int index, String column) {
        return Text.of("house.cell.label", String.valueOf(index + 1), column);
    }

    private Component height(int index, GridRow row, boolean low) {
        Heights heights = row.heights();
        String column = Headings.column(low ? "from" : "to");
        Input field = new Input(ValueChangeMode.ON_CHANGE);
        field.setValue(LengthText.shown(low ? heights.from() : heights.to(), units));
        field.setPlaceholder(Text.of("house.any"));
        field.getElement().setAttribute("aria-label", label(index, column));
        field.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                String text = LengthText.completed(e.getValue(), units);
                field.setValue(text);
                edit.cell(g -> g.change(index, r -> r.withHeights(low ? new Heights(text, r.heights().above(), r.heights().to(), r.heights().upTo())
                        : new Heights(r.heights().from(), r.heights().above(), text, r.heights().upTo()))));
            }
        });
        NativeButton end = low
                ? toggle(Text.of("house.end.above"), Text.of("house.end.from"), heights.above(), label(index, Text.of("house.end.low")),
                        now -> edit.cell(g -> g.change(index, r -> r.withHeights(new Heights(r.heights().from(), now, r.heights().to(), r.heights().upTo())))))
                : toggle(Text.of("house.end.with"), Text.of("house.end.below"), heights.upTo(), label(index, Text.of("house.end.high")),
                        now -> edit.cell(g -> g.change(index, r -> r.withHeights(new Heights(r.heights().from(), r.heights().above(), r.heights().to(), now)))));
        Div both = new Div(end, field);
        both.addClassName("height");
        cells.put(key(index + 1, column), both);
        return both;
    }

    /** A small switch between two words. */
    private static NativeButton toggle(String on, String off, boolean start, String label, java.util.function.Consumer<Boolean> changed) {
        NativeButton toggle = new NativeButton(start ? on : off);
        toggle.addClassName("toggle");
        toggle.getElement().setAttribute("aria-label", label + ": " + (start ? on : off));
        boolean[] now = {start};
        toggle.addClickListener(e -> {
            now[0] = !now[0];
            toggle.setText(now[0] ? on : off);
            toggle.getElement().setAttribute("aria-label", label + ": " + (now[0] ? on : off));
            changed.accept(now[0]);
        });
        return toggle;
    }

    private Component result(int index, GridRow row, int column) {
        Result result = grid.results().get(column);
        String heading = Headings.result(sheet, grid, result);
        String text = row.results().get(column);
        return known(index, heading, switch (result.kind()) {
            case NUMBER -> {
                Input field = input(text, label(index, heading), value -> edit.cell(g -> g.change(index, r -> r.withResult(column, value))));
                field.getElement().setAttribute("inputmode", "decimal");
                field.addClassName("number");
                yield field;
            }
            case WORD -> select(result.choices(), text, label(index, heading), value -> edit.cell(g -> g.change(index, r -> r.withResult(column, value))));
            case YES_OR_NO -> select(List.of("true", "false"), text, label(index, heading), value -> edit.cell(g -> g.change(index, r -> r.withResult(column, value))));
        });
    }

    private static Input input(String value, String label, java.util.function.Consumer<String> changed) {
        Input field = new Input(ValueChangeMode.ON_CHANGE);
        field.setValue(value);
        field.getElement().setAttribute("aria-label", label);
        field.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                changed.accept(e.getValue());
            }
        });
        return field;
    }

    static Component select(List<String> choices, String chosen, String label, java.util.function.Consumer<String> changed) {
        Div box = new Div();
        box.addClassName("select");
        Element select = new Element("select");
        select.setAttribute("aria-label", label);
        if (!choices.contains(chosen)) {
            select.appendChild(option("", chosen, true));
        }
        choices.forEach(c -> select.appendChild(option(c, Trait.word(c), c.equals(chosen))));
        select.addEventListener("change", e -> changed.accept(e.getEventData().getString("event.target.value"))).addEventData("event.target.value");
        box.getElement().appendChild(select);
        return box;
    }

    private static Element option(String value, String words, boolean selected) {
        Element option = new Element("option");
        option.setAttribute("value", value);
        if (selected) {
            option.setAttribute("selected", true);
        }
        option.setText(words);
        return option;
    }

    private Component menu(int index) {
        NativeDetails menu = new NativeDetails();
        menu.setSummary(new Span("⋯"), Controls.words(label(index, Text.of("house.column.do")), "unseen"));
        menu.getElement().setAttribute("name", "pick");
        Div list = new Div(Controls.link(Text.of("house.row.below"), () -> edit.rows(g -> g.add(index))),
                Controls.link(Text.of("house.row.copy"), () -> edit.rows(g -> g.copy(index))),
                Controls.link(Text.of("house.row.up"), () -> edit.rows(g -> g.move(index, -1))),
                Controls.link(Text.of("house.row.down"), () -> edit.rows(g -> g.move(index, 1))),
                Controls.link(Text.of("house.row.delete"), () -> edit.rows(g -> g.delete(index))));
        list.addClassNames("pick-list", "right");
        menu.setContent(list);
        Div box = new Div(menu);
        box.addClassNames("pick", "menu");
        return box;
    }

    /** Marks the cells that are complained of. */
    void mark(List<Complaint> complaints) {
        cells.values().forEach(c -> c.removeClassNames("wrong", "doubtful"));
        complaints.stream().filter(c -> c.table().equals(Headings.grid(grid.name()))).forEach(c -> {
            Component cell = cells.get(key(c.row(), c.column()));
            if (cell != null) {
                cell.addClassNames(c.fault() ? "wrong" : "doubtful");
            }
        });
    }
}
