package boughwright.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;

/** A small table of words: a head, and rows that begin with what they are about. */
final class PlainTable extends Div {

    private final NativeTable table = new NativeTable();

    PlainTable(String... head) {
        addClassName("plain-table");
        NativeTableRow row = new NativeTableRow();
        for (String name : head) {
            NativeTableHeaderCell cell = new NativeTableHeaderCell(name);
            cell.getElement().setAttribute("scope", "col");
            row.add(cell);
        }
        table.add(row);
        add(table);
    }

    void row(String about, String... cells) {
        NativeTableRow row = new NativeTableRow();
        NativeTableHeaderCell first = new NativeTableHeaderCell(about);
        first.getElement().setAttribute("scope", "row");
        row.add(first);
        for (String cell : cells) {
            row.add(new NativeTableCell(cell));
        }
        table.add(row);
    }
}
