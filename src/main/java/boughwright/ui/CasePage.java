package boughwright.ui;

import boughwright.consultation.Reopened;
import boughwright.counter.Entry;
import boughwright.counter.Note;
import boughwright.counter.Notes;
import boughwright.proposal.Outcome;
import boughwright.proposal.Phrases;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Optional;

/** One consultation at the counter: its tree, its quote, what is held, the way home, notes. */
final class CasePage extends Div {

    private final CounterView view;
    private final CounterDesk desk;

    CasePage(CounterView view, CounterDesk desk, String code) {
        this.view = view;
        this.desk = desk;
        addClassName("case");
        Optional<Entry> entry = desk.counter().entry(code);
        if (entry.isEmpty()) {
            Anchor back = new Anchor(CounterView.ROUTE, Text.of("counter.back"));
            add(new H1(Text.of("api.no-code.title")), new Paragraph(Text.of("api.no-code", code)), back);
            return;
        }
        show(entry.get());
    }

    private void show(Entry entry) {
        Optional<Reopened> reopened = desk.consultations().reopen(entry.code());
        Optional<Proposal> proposal = reopened.map(Reopened::outcome).filter(Outcome.Made.class::isInstance).map(o -> ((Outcome.Made) o).proposal());
        Div side = new Div(head(entry, proposal), view.notice());
        side.addClassName("case-side");
        if (proposal.isEmpty()) {
            side.add(new Paragraph(Text.of(reopened.isEmpty() ? "counter.asking" : "counter.clash")));
        } else {
            side.add(new QuotePanel(view, desk, reopened.get().saved(), proposal.get()), new HoldPanel(view, desk, entry, proposal.get()),
                    new HomePanel(view, desk, entry, proposal.get()));
        }
        side.add(notes(entry), more(entry));
        proposal.ifPresent(p -> {
            Section stage = new Section(Drawing.of(p, "case"));
            stage.addClassNames("stage", "case-stage");
            stage.getElement().setAttribute("aria-label", Text.of("proposal.drawing-label"));
            add(stage);
        });
        add(side);
    }

    private Div head(Entry entry, Optional<Proposal> proposal) {
        Anchor back = new Anchor(CounterView.ROUTE, Text.of("counter.back"));
        back.addClassName("back-link");
        H1 code = new H1(entry.spoken());
        Div names = new Div(code, Controls.words(entry.nickname(), "name"), Controls.words(CounterList.state(entry.state()), "state"));
        names.addClassName("case-names");
        Div head = new Div(back, names);
        proposal.ifPresent(p -> head.add(new Paragraph(Text.of("counter.case.words", Phrases.title(p.brief()), p.kit().total().show()))));
        Anchor plan = new Anchor((proposal.isPresent() || entry.revision() > 0 ? "plan/" : "interview/") + entry.code(),
                Text.of(entry.revision() > 0 ? "counter.open.plan" : "counter.open.interview"));
        plan.addClassNames("button", "quiet");
        Div actions = new Div(plan, Controls.button(Text.of("counter.copy"), "quiet", () -> view.act(() -> desk.counter().copy(entry.code()).ifPresent(copy -> {
            view.go(CounterView.of(copy));
            view.tell(Text.of("counter.copied", entry.spoken()), true);
        }))));
        actions.addClassName("case-actions");
        head.add(actions);
        return head;
    }

    /** A part of the page under a heading of its own. */
    static Section panel(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.addClassName("panel");
        section.getElement().setAttribute("aria-label", title);
        section.add(content);
        return section;
    }

    static Div actions(Component... buttons) {
        Div row = new Div(buttons);
        row.addClassName("case-actions");
        return row;
    }

    private Section notes(Entry entry) {
        Section panel = panel(Text.of("counter.notes"));
        Input words = new Input(ValueChangeMode.ON_CHANGE);
        words.getElement().setAttribute("maxlength", String.valueOf(Notes.LONGEST));
        words.getElement().setAttribute("autocomplete", "off");
        Div field = Controls.labelled("case-note", Text.of("counter.note"), words);
        panel.add(actions(field, Controls.button(Text.of("counter.note.add"), "quiet", () -> {
            String note = words.getValue().strip();
            if (!note.isEmpty()) {
                view.act(() -> desk.notes().add(entry.code(), note.substring(0, Math.min(Notes.LONGEST, note.length())), view.person().name()));
            }
        })));
        UnorderedList list = new UnorderedList();
        list.addClassName("notes-list");
        for (Note note : desk.notes().of(entry.code())) {
            ListItem item = new ListItem(new Paragraph(note.words()), Controls.words(Text.of("counter.note.by", note.author(), ShopTime.moment(note.madeAt())), "soft"),
                    Controls.link(Text.of("counter.note.remove"), () -> view.act(() -> desk.notes().remove(entry.code(), note.number()))));
            list.add(item);
        }
        panel.add(list);
        return panel;
    }

    private Section more(Entry entry) {
        Input other = new Input(ValueChangeMode.ON_CHANGE);
        other.getElement().setAttribute("autocomplete", "off");
        Div beside = actions(Controls.labelled("case-beside", Text.of("counter.beside"), other), Controls.button(Text.of("counter.beside.show"), "quiet", () -> {
            Optional<Entry> second = desk.counter().entry(other.getValue());
            if (second.isEmpty()) {
                view.act(() -> view.tell(Text.of("api.no-code", other.getValue()), false));
            } else {
                view.go(CounterView.beside(entry.code(), second.get().code()));
            }
        }));
        Input name = new Input(ValueChangeMode.ON_CHANGE);
        name.setValue(entry.nickname());
        name.getElement().setAttribute("autocomplete", "off");
        name.getElement().setAttribute("maxlength", "40");
        Div naming = actions(Controls.labelled("case-name", Text.of("counter.nickname"), name),
                Controls.button(Text.of("counter.nickname.keep"), "quiet", () -> view.act(() -> desk.interviews().nickname(entry.code(), name.getValue()))));
        return panel(Text.of("counter.more"), naming, beside, new KeepingTools(view, desk, entry));
    }
}
