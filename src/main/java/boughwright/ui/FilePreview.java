package boughwright.ui;

import boughwright.intake.IntakeFile;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.util.List;

/** The first rows of a file as they stand there. */
final class FilePreview extends NativeDetails {

    FilePreview(IntakeFile file) {
        super(new Span(Text.of("shelf.file.preview", file.preview().size())));
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        file.headings().forEach(h -> head.add(new NativeTableHeaderCell(h)));
        table.add(head);
        for (List<String> cells : file.preview()) {
            NativeTableRow row = new NativeTableRow();
            cells.forEach(c -> row.add(new NativeTableCell(c.length() <= 60 ? c : c.substring(0, 59) + "…")));
            table.add(row);
        }
        Div box = new Div(table);
        box.addClassNames("plain-table", "file-preview");
        box.getElement().setAttribute("tabindex", "0").setAttribute("role", "region").setAttribute("aria-label", Text.of("shelf.file.preview", file.preview().size()));
        setContent(box);
    }
}
