package boughwright.ui;

import boughwright.proposal.Growth;
import boughwright.proposal.Growth.Year;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;

/** The scheme as it grows over three years: each year's drawing, what joins, what it costs, what may be gone by the next. */
@AnonymousAllowed
@Route("years")
class YearsView extends PlanScreen {

    private Growth growth;

    YearsView(Books books) {
        super("years", books);
    }

    @Override
    void show() {
        asked().ifPresent(asked -> {
            removeAll();
            add(header(), new Main(new H1(Text.of("years.head"))));
            workOut(patience -> growth = proposing().designer().growth(asked, patience), this::showYears);
        });
    }

    private void showYears() {
        removeAll();
        Div cards = new Div();
        cards.addClassNames("beside", "beside-" + Math.max(1, growth.years().size()));
        growth.years().forEach(y -> cards.add(card(y)));
        Paragraph words = new Paragraph(Text.of(growth.years().isEmpty() ? "years.none" : "years.words"));
        words.addClassName("soft");
        Div foot = new Div(Controls.words(Text.of("years.total", growth.total().show()), "total"), Controls.button(Text.of("years.back"), "quiet",
                () -> go(ProposalView.class)));
        foot.addClassName("choice-row");
        add(header(), new Main(new H1(Text.of("years.head")), words, cards, foot));
    }

    private Section card(Year year) {
        Proposal proposal = year.proposal();
        Drawing picture = Drawing.of(proposal, "year" + year.number());
        Div words = new Div(new H2(Text.of("years.year", year.number())), Controls.words(Text.of("years.spend", year.spend().show()), "total"));
        words.addClassName("words");
        UnorderedList joins = new UnorderedList();
        year.joins().forEach(j -> joins.add(new ListItem(j)));
        words.add(joins);
        if (!year.mayBeGone().isEmpty()) {
            words.add(new NativeDetails(Text.of("years.gone.head", year.mayBeGone().size()),
                    new Paragraph(Text.of("years.gone", String.join(", ", year.mayBeGone())))));
        }
        Section card = new Section(picture, words);
        if (year.number() == 1) {
            card.add(Controls.button(Text.of("years.start"), "strong", () -> {
                proposing().start(year);
                go(ProposalView.class);
            }));
        }
        card.addClassName("way");
        card.getElement().setAttribute("aria-label", Text.of("years.year", year.number()));
        return card;
    }
}
