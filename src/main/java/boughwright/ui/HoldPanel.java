package boughwright.ui;

import boughwright.counter.Entry;
import boughwright.counter.Hold;
import boughwright.counter.Holding;
import boughwright.counter.Holds;
import boughwright.counter.Pack;
import boughwright.counter.Terms;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is held for a customer: held, held longer, given back, handed over as a whole or in parts. */
final class HoldPanel extends Section {

    private final CounterView view;
    private final CounterDesk desk;
    private final Entry entry;
    private final Proposal proposal;
    private final TapKey tap = new TapKey();

    HoldPanel(CounterView view, CounterDesk desk, Entry entry, Proposal proposal) {
        this.view = view;
        this.desk = desk;
        this.entry = entry;
        this.proposal = proposal;
        addClassName("panel");
        getElement().setAttribute("aria-label", Text.of("counter.hold"));
        add(new H2(Text.of("counter.hold")));
        Optional<Hold> newest = desk.holds().newest(entry.code());
        newest.ifPresent(this::said);
        if (newest.filter(h -> h.state().open()).isPresent()) {
            open(newest.get());
        } else {
            add(CasePage.actions(Controls.button(Text.of("counter.hold.make", hours()), "strong", this::hold), Controls.button(Text.of("counter.hold.now"), "quiet", this::takeNow)));
        }
    }

    private int hours() {
        return desk.terms().now().number(Terms.Number.HOLD_HOURS);
    }

    private void said(Hold hold) {
        String state = hold.state().name().toLowerCase(java.util.Locale.ROOT);
        Paragraph words = new Paragraph(hold.state().open() ? Text.of("counter.hold.is." + state, ShopTime.moment(hold.endsAt()), ShopTime.span(desk.holds().left(hold)))
                : Text.of("counter.hold.is." + state, hold.settledAt().map(ShopTime::moment).orElse("")));
        words.addClassName(hold.state() == Hold.State.LAPSED ? "fault" : "well");
        add(words);
        if (hold.someMissing()) {
            add(new Paragraph(Text.of("counter.hold.missing")));
            hold.lines().stream().filter(l -> l.missing() > 0).forEach(l -> add(new Paragraph(Text.of("counter.hold.missing.line", l.missing(), l.packs(), l.name()))));
            add(new Paragraph(Text.of("counter.hold.missing.do")));
        }
        if (hold.state().open() && !same(hold)) {
            Paragraph other = new Paragraph(Text.of("counter.hold.other"));
            other.addClassName("fault");
            add(other);
        }
    }

    /** Whether what is held is what the plan buys now. */
    private boolean same(Hold hold) {
        Map<String, Integer> wanted = Pack.of(proposal).stream().collect(Collectors.toMap(Pack::sku, Pack::packs));
        Map<String, Integer> held = hold.lines().stream().collect(Collectors.toMap(Hold.Line::sku, l -> l.packs() - l.missing()));
        held.values().removeIf(n -> n == 0);
        return wanted.equals(held);
    }

    private void open(Hold hold) {
        Div parts = new Div();
        parts.addClassName("parts");
        parts.setVisible(false);
        Map<String, Integer> taken = new LinkedHashMap<>();
        for (Hold.Line line : hold.lines()) {
            if (line.left() > 0) {
                taken.put(line.sku(), line.left());
                Stepper stepper = new Stepper(line.left(), line.name(), n -> taken.put(line.sku(), n));
                Div row = new Div(Controls.words(Text.of("counter.part", line.name(), line.left()), "part-name"), stepper);
                row.addClassName("part");
                parts.add(row);
            }
        }
        parts.add(Controls.button(Text.of("counter.collect.parts"), "strong", () -> collect(taken)));
        Map<String, Integer> all = new LinkedHashMap<>(taken);
        Div actions = CasePage.actions(Controls.button(Text.of("counter.collect"), "strong", () -> collect(all)),
                Controls.button(Text.of("counter.collect.some"), "quiet", () -> parts.setVisible(!parts.isVisible())),
                Controls.button(Text.of("counter.hold.longer"), "quiet", () -> view.holdLonger(entry.code())),
                Controls.button(Text.of("counter.release"), "quiet", () -> view.act(() -> {
                    boolean released = desk.holds().release(entry.code()).isPresent();
                    view.tell(Text.of(released ? "counter.released" : "counter.hold.none"), released);
                })));
        if (!same(hold)) {
            actions.add(Controls.button(Text.of("counter.hold.renew"), "quiet", this::hold));
        }
        Anchor pick = new Anchor(PickingView.of(entry.code()), Text.of("counter.pick"));
        pick.addClassNames("button", "quiet");
        actions.add(pick);
        add(actions, parts);
    }

    private void hold() {
        view.act(() -> tell(desk.holds().hold(entry.code(), Pack.of(proposal), Duration.ofHours(hours()), view.person().name(), tap.key())));
    }

    private void tell(Holding holding) {
        if (holding instanceof Holding.Held held) {
            view.tell(Text.of("counter.hold.until", ShopTime.moment(held.hold().endsAt())), true);
        } else if (holding instanceof Holding.Scarce scarce) {
            view.tell(scarce(scarce, proposal), false);
        } else {
            view.tell(Text.of("counter.hold.nothing"), false);
        }
    }

    /** What somebody else was faster with, and what to do. */
    static String scarce(Holding.Scarce scarce, Proposal proposal) {
        List<String> names = scarce.left().entrySet().stream().map(e -> Text.of("counter.scarce.line",
                proposal.catalogue().product(e.getKey()).map(p -> p.name()).orElse(e.getKey()), e.getValue())).toList();
        return Text.of("counter.scarce", String.join("; ", names));
    }

    /** Taken home at once: held and handed over in one touch. */
    private void takeNow() {
        view.act(() -> {
            Holding holding = desk.holds().hold(entry.code(), Pack.of(proposal), Duration.ofHours(hours()), view.person().name(), tap.key());
            if (holding instanceof Holding.Held held) {
                Map<String, Integer> all = held.hold().lines().stream().collect(Collectors.toMap(Hold.Line::sku, Hold.Line::packs));
                desk.holds().collect(entry.code(), all, tap.key());
                view.tell(Text.of("counter.collected"), true);
            } else {
                tell(holding);
            }
        });
    }

    private void collect(Map<String, Integer> taken) {
        view.act(() -> {
            boolean done = desk.holds().collect(entry.code(), taken, tap.key()) instanceof Holds.Collecting.Collected;
            view.tell(Text.of(done ? "counter.collected" : "counter.hold.none"), done);
        });
    }
}
