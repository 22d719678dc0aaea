package boughwright.ui;

import boughwright.consultation.Consultation;
import boughwright.counter.Hold;
import boughwright.proposal.ShelfOrder;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.OptionalParameter;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;

/** Where the stock room works through what is held: which kits wait, one of them shelf by shelf, what is to be put back. */
@Route(PickingView.ROUTE)
class PickingView extends DeskScreen implements HasUrlParameter<String> {

    static final String ROUTE = "picking";

    private final CounterDesk desk;
    private String code = "";
    private String counting = "";

    PickingView(StaffDoor door, CounterDesk desk) {
        super("picking", StaffPlace.PICKING, door);
        this.desk = desk;
    }

    static String of(String code) {
        return ROUTE + "/" + code;
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter String parameter) {
        code = parameter == null ? "" : parameter;
        notice().removeAll();
        open();
    }

    @Override
    void draw(Main main) {
        if (code.isEmpty()) {
            main.add(new H1(Text.of("picking.head")), notice(), list("picking.to-pick", "picking.to-pick.none", desk.holds().toPick()),
                    list("picking.bags", "picking.bags.none", desk.holds().inBags()), putBack());
            return;
        }
        Anchor back = new Anchor(ROUTE, Text.of("picking.back"));
        back.addClassName("back-link");
        Optional<Hold> hold = desk.holds().open(code);
        main.add(back, new H1(Text.of("picking.of", Consultation.spoken(code))), notice());
        if (hold.isEmpty()) {
            main.add(new Paragraph(Text.of("counter.hold.none")));
        } else {
            one(main, hold.get());
        }
    }

    private Section list(String head, String none, List<Hold> holds) {
        Section section = new Section(new H2(Text.of(head, holds.size())));
        section.addClassName("panel");
        section.getElement().setAttribute("aria-label", Text.of(head, holds.size()));
        if (holds.isEmpty()) {
            section.add(new Paragraph(Text.of(none)));
        }
        for (Hold hold : holds) {
            long done = hold.lines().stream().filter(l -> l.picked().isPresent()).count();
            Anchor row = new Anchor(of(hold.code()));
            row.addClassName("entry-row");
            row.add(Controls.words(hold.spoken(), "code"), Controls.words(Text.of("picking.progress", done, hold.lines().size()), "wishes"),
                    Controls.words(Text.of("counter.until", ShopTime.moment(hold.endsAt())), "soft"), Controls.words(Text.of("picking.by", hold.author()), "soft"));
            section.add(row);
        }
        return section;
    }

    private void one(Main main, Hold hold) {
        long done = hold.lines().stream().filter(l -> l.picked().isPresent()).count();
        main.add(new Paragraph(Text.of(done == hold.lines().size() ? "picking.ready" : "picking.progress.long", done, hold.lines().size(), ShopTime.moment(hold.endsAt()))));
        String aisle = null;
        Section section = new Section();
        for (Hold.Line line : hold.lines()) {
            String next = ShelfOrder.aisle(line.shelf());
            if (!next.equals(aisle)) {
                section = new Section(new H2(Text.of("picking.aisle", next)));
                section.addClassName("panel");
                main.add(section);
                aisle = next;
            }
            section.add(line(line));
        }
    }

    private Div line(Hold.Line line) {
        Div row = new Div();
        row.addClassNames("pick-line", line.picked().isPresent() ? "is-done" : "is-open");
        NativeButton tick = new NativeButton(line.picked().isPresent() && line.missing() == 0 ? "✓" : "", e -> act(() -> {
            if (line.picked().isEmpty()) {
                desk.holds().pick(code, line.sku(), line.packs());
            } else {
                desk.holds().unpick(code, line.sku());
            }
        }));
        tick.addClassName("tick");
        tick.getElement().setAttribute("aria-label", Text.of("picking.tick", line.packs(), line.name()));
        Controls.pressed(tick, line.picked().isPresent());
        tick.setEnabled(line.missing() == 0 && line.collected() == 0);
        Div what = new Div(Controls.words(line.name(), "name"), Controls.words(Text.of("picking.sku", line.sku()), "soft"));
        Span state = Controls.words(line.missing() > 0 ? Text.of("picking.missing", line.missing()) : "", "fault");
        row.add(tick, Controls.words(line.shelf(), "shelf"), Controls.words(Text.of("picking.packs", line.packs()), "packs"), what, state);
        if (line.picked().isEmpty()) {
            row.add(Controls.link(Text.of("picking.short"), () -> {
                counting = counting.equals(line.sku()) ? "" : line.sku();
                again();
            }));
        }
        if (counting.equals(line.sku()) && line.picked().isEmpty()) {
            row.add(counted(line));
        }
        return row;
    }

    /** Fewer are there than were promised: how many, then? */
    private Div counted(Hold.Line line) {
        Input found = new Input(ValueChangeMode.EAGER);
        found.getElement().setAttribute("inputmode", "numeric");
        found.getElement().setAttribute("autocomplete", "off");
        Div field = Controls.labelled("pick-found", Text.of("picking.found", line.packs()), found);
        Div box = CasePage.actions(field, Controls.button(Text.of("picking.found.keep"), "strong", () -> act(() -> {
            String typed = found.getValue().strip();
            if (!typed.matches("\\d{1,4}") || Integer.parseInt(typed) > line.packs()) {
                tell(Text.of("picking.found.bad", line.packs()), false);
                return;
            }
            counting = "";
            desk.holds().pick(code, line.sku(), Integer.parseInt(typed));
            tell(Text.of("picking.found.told", line.packs() - Integer.parseInt(typed), line.name()), true);
        })));
        box.addClassName("counted");
        return box;
    }

    private Section putBack() {
        List<Hold> holds = desk.holds().toPutBack();
        Section section = new Section(new H2(Text.of("picking.put-back", holds.size())));
        section.addClassName("panel");
        section.setVisible(!holds.isEmpty());
        for (Hold hold : holds) {
            for (Hold.Line line : hold.lines()) {
                int packs = line.picked().orElse(0) - line.collected();
                if (packs > 0 && !line.putBack()) {
                    Div row = new Div(Controls.words(line.shelf(), "shelf"), Controls.words(Text.of("picking.packs", packs), "packs"), Controls.words(line.name(), "name"),
                            Controls.words(hold.spoken(), "soft"), Controls.button(Text.of("picking.put-back.done"), "quiet", () -> act(() -> desk.holds()
                            .putBack(hold.code(), hold.number(), line.sku()))));
                    row.addClassName("pick-line");
                    section.add(row);
                }
            }
        }
        return section;
    }
}
