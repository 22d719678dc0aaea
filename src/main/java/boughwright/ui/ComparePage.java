package boughwright.ui;

import boughwright.house.Change;
import boughwright.house.Headings;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;

/** What differs between two editions, or between the draft and what is live, row by row. */
final class ComparePage extends HousePage {

    ComparePage(String before, String after, List<Change> changes) {
        super("compare-page");
        add(new H1(Text.of("house.compare", before, after)));
        add(changes.isEmpty() ? new Paragraph(Text.of("house.compare.same")) : table(before, after, changes));
    }

    /** @param discard throws the draft away */
    ComparePage(List<Change> changes, Runnable discard) {
        this(Text.of("house.compare.live"), Text.of("house.compare.draft"), changes);
        if (!changes.isEmpty()) {
            add(Controls.button(Text.of("house.discard"), "quiet", discard));
        }
    }

    static Div table(String before, String after, List<Change> changes) {
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        for (String heading : List.of(Text.of("house.compare.where"), before, after)) {
            NativeTableHeaderCell cell = new NativeTableHeaderCell(heading);
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.add(head);
        for (Change change : changes) {
            NativeTableRow row = new NativeTableRow();
            row.add(new NativeTableCell(Headings.where(change.title(), change.table(), change.row(), change.column())), new NativeTableCell(change.before().isEmpty() ? "–" : change.before()),
                    new NativeTableCell(change.after().isEmpty() ? "–" : change.after()));
            table.add(row);
        }
        Div box = new Div(table);
        box.addClassName("plain-table");
        return box;
    }
}
