package boughwright.ui;

import boughwright.consultation.Consultation;
import boughwright.consultation.Saved;
import boughwright.counter.Quotes;
import boughwright.document.Paper;
import boughwright.document.QuoteDocument;
import boughwright.proposal.Proposal;
import boughwright.quote.Quote;
import boughwright.quote.Substitution;
import boughwright.text.Language;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.util.Optional;

/** The quote of a consultation: what it says, whether it still holds, another one. */
final class QuotePanel extends Section {

    private final TapKey tap = new TapKey();

    QuotePanel(CounterView view, CounterDesk desk, Saved saved, Proposal proposal) {
        addClassName("panel");
        add(new H2(Text.of("counter.quote")));
        getElement().setAttribute("aria-label", Text.of("counter.quote"));
        Optional<Quote> newest = desk.quotes().newest(saved.code());
        boolean holds = newest.filter(q -> desk.quotes().holds(q, saved)).isPresent();
        newest.ifPresent(q -> add(said(q, saved, desk.quotes())));
        NativeButton make = Controls.button(Text.of(newest.isEmpty() ? "counter.quote.make" : "counter.quote.again"), holds ? "quiet" : "strong", () -> view.act(() -> {
            Optional<Quote> made = desk.quotes().make(saved.code(), view.person().name(), tap.key());
            view.tell(made.map(q -> Text.of("counter.quote.made", q.total().show(), Text.day(q.validTo()))).orElse(Text.of("counter.clash")), made.isPresent());
        }));
        Div actions = CasePage.actions(make);
        newest.ifPresent(q -> actions.add(print(q, proposal)));
        add(actions);
    }

    private static Div said(Quote quote, Saved saved, Quotes quotes) {
        Div said = new Div(Controls.words(quote.total().show(), "total"));
        said.addClassName("said");
        if (!quote.terms().none()) {
            said.add(Controls.words(Text.of(quote.terms().within() ? "quote.tax.within.of" : "quote.tax.of", quote.goods().show(), quote.tax().show(), quote.terms().name()), "soft"));
        }
        boolean holds = quotes.holds(quote, saved);
        Paragraph state = new Paragraph(holds ? Text.of("counter.quote.holds", Text.day(quote.validTo()))
                : Text.of(quote.revision() == saved.revision() ? "counter.quote.over" : "counter.quote.older", Text.day(quote.validTo())));
        state.addClassName(holds ? "well" : "fault");
        said.add(state);
        if (!quote.substitutions().isEmpty()) {
            UnorderedList list = new UnorderedList();
            for (Substitution each : quote.substitutions()) {
                list.add(new ListItem(Text.of("quote.substitution", Text.sentence(Text.of("role." + each.role())), each.is(), each.was())));
            }
            said.add(new Paragraph(Text.of("quote.substituted")), list);
        }
        return said;
    }

    private static Anchor print(Quote quote, Proposal proposal) {
        Language language = Language.now();
        Anchor print = new Anchor(DownloadHandler.fromInputStream(event -> {
            byte[] pdf = Text.in(language, () -> QuoteDocument.pdf(quote, Consultation.spoken(quote.code()), Paper.of(proposal.brief().units())));
            return new DownloadResponse(new ByteArrayInputStream(pdf), "quote-" + quote.code() + "-" + quote.number() + ".pdf", "application/pdf", pdf.length);
        }).inline(), Text.of("counter.quote.print"));
        print.setTarget(AnchorTarget.BLANK);
        print.addClassNames("button", "quiet");
        return print;
    }
}
