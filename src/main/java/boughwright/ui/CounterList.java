package boughwright.ui;

import boughwright.brief.Look;
import boughwright.counter.Entry;
import boughwright.counter.Hold;
import boughwright.counter.Terms;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.measure.Units;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Consultations, the latest first; holds that fall soon above them. */
final class CounterList extends Div {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MOST = 60;

    private final CounterView view;
    private final CounterDesk desk;
    private final Div rows = new Div();

    CounterList(CounterView view, CounterDesk desk, String search) {
        this.view = view;
        this.desk = desk;
        addClassName("counter-list");
        Div find = Controls.field("counter-find", Text.of("counter.find"), Text.of("counter.find.like"), search, text -> {
            view.search(text);
            list(text);
        });
        find.addClassName("find");
        Anchor fresh = new Anchor("interview", Text.of("counter.new"));
        fresh.addClassNames("button", "strong");
        Div top = new Div(find, fresh);
        top.addClassName("counter-top");
        rows.addClassName("entries");
        rows.getElement().setAttribute("role", "list");
        add(new H1(Text.of("counter.head")), view.notice(), soon(), top, rows);
        list(search);
    }

    /** Said beforehand, so that somebody can ring the customer or hold it longer. */
    private Section soon() {
        List<Hold> falling = desk.holds().endingWithin(Duration.ofMinutes(desk.terms().now().number(Terms.Number.WARN_MINUTES)));
        Section section = new Section();
        section.setVisible(!falling.isEmpty());
        section.addClassName("soon");
        section.add(new H2(Text.of("counter.soon", falling.size())));
        for (Hold hold : falling) {
            Div line = new Div(new Anchor(CounterView.of(hold.code()), hold.spoken()), Controls.words(Text.of("counter.soon.left", ShopTime.span(desk.holds().left(hold))), "soft"),
                    Controls.button(Text.of("counter.hold.longer"), "quiet", () -> view.holdLonger(hold.code())));
            line.addClassName("soon-line");
            section.add(line);
        }
        return section;
    }

    private void list(String text) {
        rows.removeAll();
        List<Entry> entries = desk.counter().find(text, MOST);
        entries.forEach(e -> rows.add(row(e)));
        if (entries.isEmpty()) {
            rows.add(new Paragraph(Text.of(text.isBlank() ? "counter.none" : "counter.none.found", text)));
        }
    }

    private Div row(Entry entry) {
        Anchor row = new Anchor(CounterView.of(entry.code()));
        row.addClassName("entry-row");
        Div who = new Div(Controls.words(entry.spoken(), "code"), Controls.words(entry.nickname(), "name"));
        Div state = new Div(Controls.words(state(entry.state()), "state"));
        state.addClassName("state-" + entry.state().name().toLowerCase(Locale.ROOT));
        entry.holdEnds().ifPresent(ends -> state.add(Controls.words(Text.of("counter.until", ShopTime.moment(ends)), "soft")));
        row.add(who, Controls.words(wishes(entry), "wishes"), Controls.words(total(entry), "sum"), state, Controls.words(ShopTime.moment(entry.touchedAt()), "soft"));
        Div item = new Div(row);
        item.getElement().setAttribute("role", "listitem");
        return item;
    }

    private String total(Entry entry) {
        return entry.total().map(t -> new Money(t, desk.shop().designer().rulebook().choices().currency()).show()).orElse("");
    }

    static String state(Entry.State state) {
        return Text.of("counter.state." + state.name().toLowerCase(Locale.ROOT));
    }

    /** The tree and the look, as far as they were said. */
    private String wishes(Entry entry) {
        List<String> parts = new ArrayList<>();
        if (!entry.brief().isBlank()) {
            JsonNode brief = read(entry.brief());
            String height = brief.path("tree").path("height").asText();
            parts.add(Length.read(height).map(h -> h.show(Units.of(height))).orElse(height));
            parts.add(desk.shop().designer().rulebook().choices().looks().stream().filter(l -> l.id().equals(brief.path("look").asText())).map(Look::shownTitle).findFirst().orElse(""));
        }
        parts.removeIf(String::isBlank);
        return String.join(" · ", parts);
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a kept brief is JSON", e);
        }
    }
}
