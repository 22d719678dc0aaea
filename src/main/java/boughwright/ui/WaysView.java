package boughwright.ui;

import boughwright.proposal.Offers;
import boughwright.proposal.Offers.Offer;
import boughwright.proposal.Phrases;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.util.List;
import java.util.Locale;

/** The ways to meet one brief side by side: drawing, total, what it is in a sentence, what differs. */
@AnonymousAllowed
@Route("ways")
class WaysView extends PlanScreen {

    private final H1 head = new H1();
    private final Div cards = new Div();
    private final Div looking = new Div();
    private final Main main = new Main();
    private Offers offers;

    WaysView(Books books) {
        super("ways", books);
        cards.addClassName("beside");
        looking.addClassName("looking");
        looking.getElement().setAttribute("role", "status");
    }

    /** What was asked for is there already; the others join it. */
    @Override
    void show() {
        asked().ifPresent(this::showAsked);
    }

    private void showAsked(Proposal asked) {
        removeAll();
        main.removeAll();
        cards.removeAll();
        columns(3);
        looking.setText(Text.of("ways.looking"));
        Paragraph words = new Paragraph(Text.of("ways.words"));
        words.addClassName("soft");
        cards.add(card(proposing().designer().asOffered(asked).offers().get(0)), looking);
        head.setText(Text.of("ways.head"));
        main.add(head, words, cards);
        add(header(), main);
        beside(patience -> offers = books().consultations().offers(proposing().designer(), asked, patience), this::showOthers);
    }

    private void columns(int trees) {
        cards.removeClassNames("beside-1", "beside-2", "beside-3");
        cards.addClassName("beside-" + trees);
    }

    private void showOthers() {
        cards.remove(looking);
        columns(offers.offers().size());
        offers.offers().stream().skip(1).forEach(o -> cards.add(card(o)));
        String[] heads = {"ways.head.one", "ways.head.two", "ways.head"};
        head.setText(Text.of(heads[offers.offers().size() - 1]));
        offers.palette().ifPresent(hint -> main.add(new Div(new Paragraph(Text.of("ways.palette", hint.palette().shownTitle(), Amounts.plainPoints(hint.points()),
                hint.total().show())), Controls.button(Text.of("ways.palette.take", hint.palette().shownTitle()), "quiet", () -> change(() -> proposing()
                .palette(hint.palette().id()))))));
    }

    private Section card(Offer offer) {
        String kind = offer.kind().name().toLowerCase(Locale.ROOT);
        Proposal proposal = offer.proposal();
        Drawing picture = Drawing.of(proposal, kind);
        UnorderedList differences = new UnorderedList();
        List<String> all = offer.differences();
        all.forEach(d -> differences.add(new ListItem(d)));
        Div words = new Div(new H2(Text.of("ways." + kind)), Controls.words(proposal.kit().total().show(), "total"), new Paragraph(offer.sentence()));
        if (!all.isEmpty()) {
            words.add(differences);
        }
        Paragraph time = new Paragraph(Text.of("proposal.words.short", proposal.kit().lines().stream().map(l -> l.sku()).distinct().count(),
                Phrases.duration(proposal.plan().minutes())));
        time.addClassName("soft");
        words.add(time);
        words.addClassName("words");
        Section card = new Section(picture, words, Controls.button(Text.of("ways.take"), offer.kind() == Offers.Kind.ASKED ? "strong" : "quiet", () -> take(offer)));
        card.addClassName("way");
        card.getElement().setAttribute("aria-label", Text.of("ways." + kind));
        return card;
    }

    private void take(Offer offer) {
        if (offer.kind() != Offers.Kind.ASKED) {
            proposing().take(offer);
        }
        go(ProposalView.class);
    }
}
