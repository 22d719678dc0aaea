package boughwright.ui;

import boughwright.shelf.Till;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Pre;

/** How the shop's till tells stock and prices, and the key that it needs. */
final class TillPage extends ShelfPage {

    private final ShelfDesk desk;
    private final Till till;
    private final Div key = new Div();

    TillPage(ShelfDesk desk, Till till) {
        super("till-page");
        this.desk = desk;
        this.till = till;
        key.addClassName("section");
        key.getElement().setAttribute("role", "status");
        Pre example = new Pre(Text.of("shelf.till.example"));
        example.addClassName("example");
        // A keyboard can scroll what does not fit a small screen.
        example.getElement().setAttribute("tabindex", "0");
        Div how = new Div(new H2(Text.of("shelf.till.how")), soft(Text.of("shelf.till.how.words")), example);
        how.addClassName("section");
        add(new H1(Text.of("shelf.page.till")), soft(Text.of("shelf.till.about")), key, how);
        draw("");
    }

    /** @param fresh a key that has just been made, shown this once */
    private void draw(String fresh) {
        key.removeAll();
        key.add(new H2(Text.of("shelf.till.key")));
        if (!fresh.isEmpty()) {
            key.add(soft(Text.of("shelf.till.fresh")), new Code(fresh));
        } else {
            key.add(soft(till.keyMadeBy().map(by -> Text.of("shelf.till.there", by)).orElse(Text.of("shelf.till.none"))));
        }
        Div row = new Div(Controls.button(Text.of(till.keyMadeBy().isPresent() ? "shelf.till.another" : "shelf.till.make"), "quiet", () -> {
            if (!desk.gone()) {
                draw(till.newKey(desk.author()));
            }
        }));
        row.addClassName("choice-row");
        if (till.keyMadeBy().isPresent()) {
            row.add(Controls.link(Text.of("shelf.till.take-away"), () -> {
                if (!desk.gone()) {
                    till.takeAway();
                    draw("");
                }
            }));
        }
        key.add(row);
    }
}
