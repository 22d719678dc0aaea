package boughwright.ui;

import boughwright.needs.Need;
import boughwright.rulebook.Asked;
import boughwright.rulebook.Rulebook;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.Optional;
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
        Staff.present().filter(p -> p.role().isOneOf(StaffPlace.HOUSE_RULES.roles())).flatMap(p -> row(proposing, need)).ifPresent(this::add);
        if (need.changed()) {
            add(Controls.link(Text.of("kit.back-to", need.computed()), () -> {
                change.accept(() -> proposing.quantityAsComputed(need.id()));
            }));
        }
    }

    /** For staff the way to the row that says so. */
    private static Optional<Anchor> row(Proposing proposing, Need need) {
        Rulebook rulebook = proposing.designer().rulebook();
        String number = need.reason().row().replaceAll("\\D", "");
        return Asked.topics().stream().filter(t -> need.reason().rule().equals(rulebook.title(t))).findFirst().map(topic -> new Anchor(
                HouseRulesView.ROUTE + "/" + topic + "?row=" + number + "&edition=" + rulebook.edition().id(), Text.of("kit.reason.row")));
    }
}
