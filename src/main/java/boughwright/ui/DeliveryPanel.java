package boughwright.ui;

import boughwright.catalogue.CatalogueFault;
import boughwright.intake.Delivery;
import boughwright.intake.IntakeFault;
import boughwright.intake.IntakeFile;
import boughwright.intake.Kind;
import boughwright.shelf.PriceMove;
import boughwright.shelf.RowChange;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** What a checked file holds and what it would do to the shelf; nothing has been done yet. */
final class DeliveryPanel extends Div {

    private static final int MOST_FAULTS = 100;
    private static final int MOST_CHANGES = 200;

    /**
     * @param keeping is told when products that a whole file does not name shall stay, or not
     * @param bring is told to do it: with the good rows alone when {@code true}
     */
    DeliveryPanel(IntakeFile file, Delivery.Read read, Shelf shelf, boolean keepOthers, Consumer<Boolean> keeping, Consumer<Boolean> bring) {
        addClassName("delivery");
        Shelf.Planned planned = shelf.plan(read, keepOthers);
        List<IntakeFault> faults = new ArrayList<>(read.faults());
        planned.faults().forEach(f -> faults.add(fault(file, f)));
        int all = read.allFaults() + planned.faults().size();
        int good = read.rows().size() - planned.faults().size();
        add(facts(read, all, good));
        if (all > 0) {
            add(faults(file, faults, all));
        }
        read.notes().forEach(n -> add(ShelfPage.soft(n.sentence())));
        add(changes(planned, read.kind(), keepOthers, keeping));
        Div row = new Div();
        row.addClassName("choice-row");
        if (all == 0) {
            row.add(Controls.button(Text.of("shelf.delivery.bring", planned.changes().size()), "strong", () -> bring.accept(false)));
        } else if (good > 0) {
            row.add(ShelfPage.soft(Text.of("shelf.delivery.mend-first")),
                    Controls.button(Text.of("shelf.delivery.bring-good", good), "quiet", () -> bring.accept(true)));
        }
        if (!planned.changes().isEmpty()) {
            add(row);
        }
    }

    private static IntakeFault fault(IntakeFile file, CatalogueFault fault) {
        return new IntakeFault(fault.line(), file.place(fault.line()), fault.column(), "", fault.value(), fault.mend());
    }

    private static Div facts(Delivery.Read read, int faults, int good) {
        Div facts = new Div(fact("shelf.delivery.rows", read.allRows()), fact("shelf.delivery.good", good), fact("shelf.delivery.faults", faults));
        facts.addClassName("facts");
        return facts;
    }

    private static Div fact(String key, int number) {
        Div fact = new Div(new Span(Text.of(key)), Controls.words(Text.of("number.whole", number), "fact-value"));
        fact.addClassName("fact");
        return fact;
    }

    private static Div faults(IntakeFile file, List<IntakeFault> faults, int all) {
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        for (String key : List.of("shelf.fault.place", "shelf.fault.column", "shelf.fault.value", "shelf.fault.mend")) {
            head.add(new NativeTableHeaderCell(Text.of(key)));
        }
        table.add(head);
        faults.stream().limit(MOST_FAULTS).forEach(f -> {
            NativeTableRow row = new NativeTableRow();
            String column = !f.heading().isEmpty() ? f.heading() : f.column().isEmpty() ? "" : Text.of("catalogue.heading." + f.column());
            row.add(new NativeTableCell(f.place()), new NativeTableCell(column), new NativeTableCell(f.value()), new NativeTableCell(f.mend()));
            table.add(row);
        });
        Div scroll = new Div(table);
        scroll.addClassName("plain-table");
        scroll.getElement().setAttribute("tabindex", "0").setAttribute("role", "region").setAttribute("aria-label", Text.of("shelf.delivery.faults"));
        Div box = new Div(new H2(Text.of("shelf.delivery.to-mend", all)), CatalogueDownloads.marked(file, faults), scroll);
        if (all > MOST_FAULTS) {
            box.add(ShelfPage.soft(Text.of("shelf.changes.more", all - MOST_FAULTS)));
        }
        return box;
    }

    private static Div changes(Shelf.Planned planned, Kind kind, boolean keepOthers, Consumer<Boolean> keeping) {
        List<RowChange> changes = planned.changes();
        Div box = new Div(new H2(Text.of("shelf.delivery.would")));
        if (kind == Kind.WHOLE) {
            Div choice = new Div(Controls.pill(Text.of("shelf.delivery.others-go"), !keepOthers, () -> keeping.accept(false)),
                    Controls.pill(Text.of("shelf.delivery.others-stay"), keepOthers, () -> keeping.accept(true)));
            choice.addClassName("choice-row");
            box.add(choice);
        }
        List<PriceMove> moves = PriceMove.in(changes);
        box.add(new Paragraph(Text.of("shelf.delivery.counts", count(changes, RowChange::comes), count(changes, c -> !c.comes() && !c.goes()),
                count(changes, RowChange::goes), planned.unchanged())));
        if (!moves.isEmpty()) {
            Div warning = new Div(new Paragraph(Text.of("shelf.delivery.moves", moves.size(), PriceMove.TOLD_FROM)));
            warning.addClassNames("complaint", "is-doubt");
            box.add(warning, moves(moves));
        }
        part(box, "shelf.delivery.new", changes.stream().filter(RowChange::comes).toList());
        part(box, "shelf.delivery.changed", changes.stream().filter(c -> !c.comes() && !c.goes()).toList());
        part(box, "shelf.delivery.gone", changes.stream().filter(RowChange::goes).toList());
        return box;
    }

    private static int count(List<RowChange> changes, Predicate<RowChange> which) {
        return (int) changes.stream().filter(which).count();
    }

    private static Div moves(List<PriceMove> moves) {
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        for (String key : List.of("catalogue.heading.sku", "catalogue.heading.name", "shelf.move.before", "shelf.move.after", "shelf.move.by")) {
            head.add(new NativeTableHeaderCell(Text.of(key)));
        }
        table.add(head);
        moves.stream().limit(MOST_FAULTS).forEach(m -> {
            NativeTableRow row = new NativeTableRow();
            row.add(new NativeTableCell(m.sku()), new NativeTableCell(m.name()), new NativeTableCell(m.before()), new NativeTableCell(m.after()),
                    new NativeTableCell(Text.of(m.percent() > 0 ? "shelf.move.up" : "shelf.move.down", Math.abs(m.percent()))));
            table.add(row);
        });
        Div box = new Div(table);
        box.addClassName("plain-table");
        box.getElement().setAttribute("tabindex", "0").setAttribute("role", "region").setAttribute("aria-label", Text.of("shelf.move.by"));
        return box;
    }

    private static void part(Div box, String key, List<RowChange> changes) {
        if (!changes.isEmpty()) {
            NativeDetails details = new NativeDetails(new Span(Text.of(key, changes.size())));
            details.setContent(new ShelfChanges(changes, MOST_CHANGES));
            details.addClassName("standing-group");
            box.add(details);
        }
    }
}
