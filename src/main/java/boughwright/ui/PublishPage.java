package boughwright.ui;

import boughwright.house.Change;
import boughwright.house.Complaint;
import boughwright.publishing.Editions;
import boughwright.publishing.Publisher;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.function.IntConsumer;

/** The last look before a draft goes live: what it changes, what must be thought about, its name, note and first day. */
final class PublishPage extends HousePage {

    private final HouseEdits edits;
    private final HouseDrafting drafting;
    private final Publisher publisher;
    private final IntConsumer published;
    private final Input title = new Input(ValueChangeMode.ON_CHANGE);
    private final Input note = new Input(ValueChangeMode.ON_CHANGE);
    private final Input author = new Input(ValueChangeMode.ON_CHANGE);
    private final Input startsOn = new Input(ValueChangeMode.ON_CHANGE);
    private final Input override = new Input(ValueChangeMode.ON_CHANGE);
    private final Div refused = new Div();
    private boolean acknowledged;

    /** @param published called with the number of the edition */
    PublishPage(HouseEdits edits, Publisher publisher, Editions editions, IntConsumer published) {
        super("publish-page");
        this.edits = edits;
        this.drafting = edits.drafting();
        this.publisher = publisher;
        this.published = published;
        add(new H1(Text.of("house.publish")));
        if (drafting.faults() > 0) {
            add(new Paragraph(Text.of("house.publish.faults")));
            int number = 0;
            for (Complaint complaint : drafting.complaints()) {
                if (complaint.fault()) {
                    add(new ComplaintBox(complaint, ++number, true));
                }
            }
            return;
        }
        Publisher.Trial trial = publisher.trial(drafting.rules());
        if (!trial.faults().isEmpty()) {
            add(new Paragraph(Text.of("house.publish.faults")), list(trial.faults()));
            return;
        }
        List<Change> changes = drafting.changes();
        add(new Paragraph(Text.of("house.publish.changes", changes.size())));
        if (!changes.isEmpty()) {
            add(ComparePage.table(Text.of("house.compare.live"), Text.of("house.compare.draft"), changes));
        }
        doubts(trial);
        author.setValue(drafting.author());
        startsOn.setType("date");
        startsOn.setValue(editions.today().toString());
        startsOn.getElement().setAttribute("min", editions.today().toString());
        Div fields = new Div(Controls.labelled("publish-title", Text.of("house.publish.title"), title), Controls.labelled("publish-author", Text.of("house.publish.author"), author),
                Controls.labelled("publish-starts", Text.of("house.publish.starts"), startsOn), LooksPage.wide(Controls.labelled("publish-note", Text.of("house.publish.note"), note)));
        fields.addClassName("entry-fields");
        refused.addClassNames("complaints");
        refused.getElement().setAttribute("role", "alert");
        add(fields, refused, Controls.button(Text.of("house.publish.go"), "strong", this::publish));
    }

    private void doubts(Publisher.Trial trial) {
        if (!trial.doubts().isEmpty()) {
            Div box = new Div(new H2(Text.of("house.publish.doubts")), list(trial.doubts()));
            box.addClassNames("complaint", "is-doubt", "doubts");
            Element tick = new Element("input");
            tick.setAttribute("type", "checkbox");
            tick.setAttribute("id", "publish-acknowledged");
            tick.addEventListener("change", e -> acknowledged = e.getEventData().getBoolean("event.target.checked")).addEventData("event.target.checked");
            Element label = new Element("label");
            label.appendChild(tick, Element.createText(Text.of("house.publish.acknowledge")));
            box.getElement().appendChild(label);
            add(box);
        }
        if (!trial.broken().isEmpty()) {
            Div box = new Div(new H2(Text.of("house.publish.broken")), list(trial.broken()),
                    LooksPage.wide(Controls.labelled("publish-override", Text.of("house.publish.override"), override)));
            box.addClassNames("complaint", "is-doubt", "doubts");
            add(box);
        }
    }

    private static UnorderedList list(List<String> sentences) {
        UnorderedList list = new UnorderedList();
        sentences.stream().limit(60).forEach(s -> list.add(new ListItem(s)));
        return list;
    }

    private void publish() {
        if (edits.gone()) {
            return;
        }
        refused.removeAll();
        LocalDate day;
        try {
            day = LocalDate.parse(startsOn.getValue());
        } catch (DateTimeParseException e) {
            refused.add(new Paragraph(Text.of("house.publish.no-day")));
            return;
        }
        Publisher.Outcome outcome = publisher.publish(drafting.rules(), drafting.basedOn(),
                new Publisher.Wish(title.getValue(), note.getValue(), author.getValue(), day, acknowledged, override.getValue()));
        if (outcome instanceof Publisher.Outcome.Refused no) {
            no.reasons().forEach(r -> {
                Div reason = new Div(new Paragraph(r));
                reason.addClassNames("complaint", "is-fault");
                refused.add(reason);
            });
        } else {
            published.accept(((Publisher.Outcome.Published) outcome).edition());
        }
    }
}
