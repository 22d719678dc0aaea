package boughwright.ui;

import boughwright.needs.Need;
import boughwright.needs.Role;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.function.Consumer;

/** A line for what is made of other pieces (groupings, clusters, accents), or for what a hand has taken out. */
final class MadeRow extends Div {

    private final Div more = new Div();

    MadeRow(Proposing proposing, Need need, Proposal proposal, Consumer<Runnable> change) {
        addClassNames("line-box", "made");
        getElement().setAttribute("data-need", need.id());
        Span mark = Controls.words("", "swatch");
        mark.getElement().setAttribute("aria-hidden", "true");
        Div name = new Div(Controls.words(Text.of("kit.made." + (need.role().bought() ? "out" : need.role().word()), Text.of("role." + need.role().word())),
                "line-name"), Controls.words(words(need, proposal), "soft"));
        name.addClassName("line-words");
        Stepper stepper = new Stepper(need.quantity(), Text.of("role." + need.role().word()), to -> {
            change.accept(() -> proposing.quantity(need.id(), to));
        });
        Div count = new Div(stepper, Controls.words(Text.of("unit." + need.unit().word(), need.quantity()), "soft"));
        count.addClassName("line-count");
        NativeButton why = Controls.link(Text.of("kit.why", need.quantity()), () -> more.setVisible(!more.isVisible()));
        Div links = new Div(why);
        links.addClassName("line-links");
        Div price = new Div();
        price.addClassName("line-money");
        Div row = new Div(mark, name, count, price, links);
        row.addClassName("line");
        more.addClassName("line-more");
        more.add(new ReasonBox(proposing, need, change));
        more.setVisible(false);
        add(row, more);
    }

    private static String words(Need need, Proposal proposal) {
        if (need.role() == Role.GAP_ACCENT) {
            return Text.of("kit.made.gap-accent.words", proposal.layout().gaps().size());
        }
        return need.role().bought() ? Text.of("kit.made.out.words") : Text.of("kit.made.stems");
    }
}
