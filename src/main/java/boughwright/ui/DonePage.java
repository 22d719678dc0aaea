package boughwright.ui;

import boughwright.shelf.Shelf;
import boughwright.shelf.ShelfEvent;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.Locale;

/** What was done to the shelf, the newest first, and the way back. */
final class DonePage extends ShelfPage {

    private static final int MOST = 100;
    private static final int MOST_ROWS = 200;

    DonePage(ShelfDesk desk, Shelf shelf) {
        super("done-page");
        add(new H1(Text.of("shelf.page.done")), soft(Text.of("shelf.done.about")));
        int undoable = shelf.undoable().map(ShelfEvent::id).orElse(0);
        List<ShelfEvent> events = shelf.events(MOST);
        for (ShelfEvent event : events) {
            add(event(desk, shelf, event, event.id() == undoable));
        }
        if (events.isEmpty()) {
            add(soft(Text.of("shelf.done.nothing")));
        }
    }

    private static Div event(ShelfDesk desk, Shelf shelf, ShelfEvent event, boolean undoable) {
        String who = event.author().isEmpty() ? Text.of("shelf.done.kiosk") : event.author();
        Paragraph head = new Paragraph(Text.of("shelf.done." + event.kind().name().toLowerCase(Locale.ROOT), event.words()));
        head.addClassName("event-head");
        Div box = new Div(head, soft(Text.of("shelf.done.when", shelf.moment(event), who)),
                soft(Text.of("shelf.done.counts", event.added(), event.changed(), event.gone()) + (event.undone() ? " " + Text.of("shelf.done.undone") : "")));
        box.addClassNames("section", "shelf-event");
        Div rows = new Div();
        Div links = new Div();
        links.addClassName("line-links");
        if (event.kind() != ShelfEvent.Kind.TILL && event.kind() != ShelfEvent.Kind.COUNTER && event.kind() != ShelfEvent.Kind.FOLDER) {
            NativeButton[] show = new NativeButton[1];
            show[0] = Controls.link(Text.of("shelf.done.show"), () -> {
                rows.removeAll();
                rows.add(new ShelfChanges(shelf.changes(event.id()), MOST_ROWS));
                show[0].setVisible(false);
            });
            links.add(show[0]);
        }
        if (undoable) {
            links.add(Controls.link(Text.of("shelf.undo"), () -> {
                if (!desk.gone()) {
                    Shelf.Outcome outcome = shelf.undo(event.id(), desk.author());
                    desk.again();
                    if (outcome instanceof Shelf.Outcome.Refused refused) {
                        desk.tell(Text.of("shelf.undo.refused", refused.faults().get(0).mend()), false);
                    } else {
                        desk.tell(Text.of("shelf.undone"), true);
                    }
                }
            }));
        }
        box.add(links, rows);
        return box;
    }
}
