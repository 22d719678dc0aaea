package boughwright.ui;

import boughwright.kit.Conflict;
import boughwright.proposal.Phrases;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import java.util.function.Consumer;

/** Why no kit fits, in plain words, and each way out as a card to take. */
final class ConflictPanel extends Div {

    /** @param take called with the way out that was chosen */
    ConflictPanel(Conflict conflict, Consumer<Conflict.WayOut> take) {
        addClassName("conflict");
        add(new H1(Text.of("conflict.head")));
        add(new Paragraph(conflict.wishes().isEmpty() ? Text.of("conflict.none")
                : Text.of(conflict.wishes().size() == 1 ? "conflict.one" : "conflict.list", Phrases.list(conflict.wishes().stream().map(Conflict.Wished::text).toList()))));
        conflict.shortages().forEach(s -> add(new Paragraph(s)));
        Div ways = new Div();
        ways.addClassNames("cards", "two");
        for (Conflict.WayOut way : conflict.waysOut()) {
            ways.add(Controls.card(null, Text.of("conflict.way." + kind(way)), way.text(), false,
                    () -> take.accept(way)));
        }
        add(ways);
    }

    private static String kind(Conflict.WayOut way) {
        Conflict.Step first = way.steps().get(0);
        String kind = first.wish().replaceAll(":.*", "");
        return first.instead().isPresent() && (kind.equals("quantity") || kind.equals("product")) ? kind + ".part" : kind;
    }
}
