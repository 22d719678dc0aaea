package boughwright.ui;

import boughwright.needs.Need;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.function.Consumer;

/** Why a number is what it is: a sentence, the house rule and its row, and the way back from a change by hand. */
final class ReasonBox extends Div {

    ReasonBox(Proposing proposing, Need need, Consumer<Runnable> change) {
        addClassName("reason");
        Paragraph text = new Paragraph(need.reason().text());
        Paragraph source = new Paragraph(Text.of("kit.reason.source", need.reason().rule(), need.reason().row(),
                proposing.designer().rulebook().edition().title()));
        source.addClassName("reason-source");
        add(text, source);
        if (need.changed()) {
            add(Controls.link(Text.of("kit.back-to", need.computed()), () -> {
                change.accept(() -> proposing.quantityAsComputed(need.id()));
            }));
        }
    }
}
