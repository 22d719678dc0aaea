package boughwright.ui;

import boughwright.consultation.Consultation;
import boughwright.consultation.Reopened;
import boughwright.kit.KitLine;
import boughwright.proposal.Outcome;
import boughwright.proposal.Phrases;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Two consultations side by side: their trees, their totals, and piece by piece what differs. */
final class BesidePage extends Div {

    BesidePage(CounterDesk desk, String one, String other) {
        addClassName("case-beside");
        Anchor back = new Anchor(CounterView.of(one), Text.of("counter.back.case"));
        back.addClassName("back-link");
        add(back, new H1(Text.of("counter.beside.head", Consultation.spoken(one), Consultation.spoken(other))));
        Optional<Proposal> first = proposal(desk, one);
        Optional<Proposal> second = proposal(desk, other);
        Div cards = new Div(card(one, first, "one"), card(other, second, "other"));
        cards.addClassNames("beside", "beside-2");
        add(cards);
        if (first.isPresent() && second.isPresent()) {
            add(differences(one, first.get(), other, second.get()));
        }
    }

    private static Optional<Proposal> proposal(CounterDesk desk, String code) {
        return desk.consultations().reopen(code).map(Reopened::outcome).filter(Outcome.Made.class::isInstance).map(o -> ((Outcome.Made) o).proposal());
    }

    private static Section card(String code, Optional<Proposal> proposal, String name) {
        Section card = new Section();
        card.addClassName("way");
        card.getElement().setAttribute("aria-label", Consultation.spoken(code));
        proposal.ifPresent(p -> card.add(Drawing.of(p, name)));
        Div words = new Div(new H2(Consultation.spoken(code)));
        words.addClassName("words");
        if (proposal.isEmpty()) {
            words.add(new Paragraph(Text.of("counter.beside.none")));
        } else {
            words.add(Controls.words(proposal.get().kit().total().show(), "total"), new Paragraph(Phrases.title(proposal.get().brief())),
                    new Paragraph(Text.of("proposal.words.short", proposal.get().kit().lines().stream().map(KitLine::sku).distinct().count(),
                            Phrases.duration(proposal.get().plan().minutes()))));
        }
        Anchor open = new Anchor(CounterView.of(code), Text.of("counter.beside.open"));
        open.addClassNames("button", "quiet");
        card.add(words, open);
        return card;
    }

    private static Section differences(String one, Proposal first, String other, Proposal second) {
        PlainTable table = new PlainTable(Text.of("counter.beside.use"), Consultation.spoken(one), Consultation.spoken(other));
        Map<String, KitLine> a = lines(first);
        Map<String, KitLine> b = lines(second);
        Set<String> needs = new LinkedHashSet<>(a.keySet());
        needs.addAll(b.keySet());
        for (String need : needs) {
            KitLine left = a.get(need);
            KitLine right = b.get(need);
            if (left == null || right == null || !left.sku().equals(right.sku()) || left.quantity() != right.quantity()) {
                table.row(Text.sentence(Text.of("role." + (left == null ? right : left).role().word())), cell(left), cell(right));
            }
        }
        Section section = new Section(new H2(Text.of("counter.beside.differences")), table);
        section.getElement().setAttribute("aria-label", Text.of("counter.beside.differences"));
        return section;
    }

    private static String cell(KitLine line) {
        return line == null ? "–" : Text.of("counter.beside.line", String.valueOf(line.quantity()), line.name());
    }

    private static Map<String, KitLine> lines(Proposal proposal) {
        List<KitLine> lines = proposal.kit().lines();
        return lines.stream().collect(Collectors.toMap(KitLine::needId, Function.identity(), (x, y) -> x, java.util.LinkedHashMap::new));
    }
}
