package boughwright.ui;

import boughwright.shelf.RowChange;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import java.util.stream.Collectors;

/** Products that come, change and go, a line each. */
final class ShelfChanges extends Div {

    ShelfChanges(List<RowChange> changes, int most) {
        addClassName("plain-table");
        getElement().setAttribute("tabindex", "0");
        getElement().setAttribute("role", "region");
        getElement().setAttribute("aria-label", Text.of("shelf.changes"));
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        head.add(new NativeTableHeaderCell(Text.of("catalogue.heading.sku")), new NativeTableHeaderCell(Text.of("catalogue.heading.name")),
                new NativeTableHeaderCell(Text.of("shelf.changes.what")));
        table.add(head);
        changes.stream().limit(most).forEach(c -> {
            NativeTableRow row = new NativeTableRow();
            row.add(new NativeTableCell(c.sku()), new NativeTableCell((c.goes() ? c.before() : c.after()).getOrDefault("name", "")), new NativeTableCell(words(c)));
            table.add(row);
        });
        add(table);
        if (changes.size() > most) {
            add(Controls.words(Text.of("shelf.changes.more", changes.size() - most), "soft"));
        }
    }

    private static String words(RowChange change) {
        if (change.comes()) {
            return Text.of("shelf.changes.comes");
        }
        if (change.goes()) {
            return Text.of("shelf.changes.goes");
        }
        return change.columns().stream().map(c -> Text.of("shelf.changes.cell", Text.of("catalogue.heading." + c), shown(change.before().get(c)),
                shown(change.after().get(c)))).collect(Collectors.joining("; "));
    }

    private static String shown(String text) {
        return text == null || text.isEmpty() ? Text.of("shelf.form.none") : text;
    }
}
