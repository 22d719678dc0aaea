package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Palette;
import boughwright.proposal.Outcome;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;

/** What can be changed of the brief once the proposal stands: abundance, budget, palette. */
final class ChangePanel extends Div {

    private final Proposing proposing;
    private final Runnable changed;
    private final Paragraph fault = new Paragraph();

    ChangePanel(Proposing proposing, Brief brief, Runnable changed) {
        this.proposing = proposing;
        this.changed = changed;
        addClassName("change");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        add(new H2(Text.of("change.abundance")), abundance(brief), new H2(Text.of("change.budget")), budget(brief), fault,
                new H2(Text.of("change.palette")), palettes(brief));
    }

    private Div abundance(Brief brief) {
        Div row = new Div();
        row.addClassName("choice-row");
        for (Abundance abundance : Abundance.values()) {
            row.add(Controls.pill(Text.of("abundance." + abundance.word()), abundance == brief.abundance(), () -> {
                proposing.abundance(abundance);
                changed.run();
            }));
        }
        return row;
    }

    private Div budget(Brief brief) {
        Div row = new Div();
        row.addClassName("choice-row");
        row.add(Controls.field("change-budget", Text.of("interview.budget.other", proposing.designer().rulebook().choices().currency().getCurrencyCode()),
                Text.of("interview.budget.other.example"), brief.budget().map(b -> b.decimal()).orElse(""), this::budget));
        row.add(Controls.pill(Text.of("interview.budget.none"), brief.budget().isEmpty(), () -> budget("")));
        return row;
    }

    private void budget(String text) {
        if (proposing.budget(Amounts.plain(text)) instanceof Outcome.BadBrief) {
            fault.setText(Text.of("budget.plain"));
        } else {
            changed.run();
        }
    }

    private Div palettes(Brief brief) {
        Div cards = new Div();
        cards.addClassNames("cards", "three");
        for (Palette palette : proposing.designer().rulebook().choices().palettes()) {
            cards.add(Controls.card(Icons.palette(palette), palette.title(), "", palette.id().equals(brief.palette().id()), () -> {
                proposing.palette(palette.id());
                changed.run();
            }));
        }
        return cards;
    }
}
