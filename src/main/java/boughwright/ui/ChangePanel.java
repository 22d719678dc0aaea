package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Palette;
import boughwright.measure.Money;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.Currency;
import java.util.function.Consumer;

/** What can be changed of the whole once the proposal stands: abundance, budget, palette, tastes, and what matters most. */
final class ChangePanel extends Div {

    private final Proposing proposing;
    private final Consumer<Runnable> change;
    private final Paragraph fault = new Paragraph();

    ChangePanel(Proposing proposing, Brief brief, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.change = change;
        addClassName("change");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        add(new H2(Text.of("change.abundance")), abundance(brief), new H2(Text.of("change.budget")), budget(brief), fault,
                new H2(Text.of("change.palette")), palettes(brief), new Tastes(proposing, change), new WishOrder(proposing, change));
    }

    private Div abundance(Brief brief) {
        Div row = new Div();
        row.addClassName("choice-row");
        for (Abundance abundance : Abundance.values()) {
            row.add(Controls.pill(Text.of("abundance." + abundance.word()), abundance == brief.abundance(), () -> {
                change.accept(() -> proposing.abundance(abundance));
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
        String plain = Amounts.plain(text);
        Currency currency = proposing.designer().rulebook().choices().currency();
        if (plain.isBlank() || Money.read(plain, currency).filter(m -> m.amount().signum() > 0).isPresent()) {
            change.accept(() -> proposing.budget(plain));
        } else {
            fault.setText(Text.of("budget.plain"));
        }
    }

    private Div palettes(Brief brief) {
        Div cards = new Div();
        cards.addClassNames("cards", "three");
        for (Palette palette : proposing.designer().rulebook().choices().palettes()) {
            cards.add(Controls.card(Icons.palette(palette), palette.shownTitle(), "", palette.id().equals(brief.palette().id()), () -> {
                change.accept(() -> proposing.palette(palette.id()));
            }));
        }
        return cards;
    }
}
