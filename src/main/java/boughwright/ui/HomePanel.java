package boughwright.ui;

import boughwright.counter.Entry;
import boughwright.counter.Links;
import boughwright.counter.PlanMail;
import boughwright.drawing.QrCode;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Locale;
import java.util.Optional;

/** What goes home with the customer: the printed plan, the private link, the shopping list by e-mail. */
final class HomePanel extends Section {

    HomePanel(CounterView view, CounterDesk desk, Entry entry, Proposal proposal) {
        addClassName("panel");
        getElement().setAttribute("aria-label", Text.of("counter.home"));
        add(new H2(Text.of("counter.home")));
        String pdf = "api/proposals/" + entry.code() + "/plan.pdf?" + Addresses.told(proposal.brief().units()) + "&paper=";
        add(CasePage.actions(print(pdf + "letter", "counter.print.letter"), print(pdf + "a4", "counter.print.a4")));
        Optional<Links.Link> link = desk.links().known(entry.code());
        if (link.isPresent()) {
            String address = desk.addresses().of(link.get().token());
            Div qr = Controls.drawn(new QrCode(address).svg(Text.of("athome.qr", entry.spoken())));
            qr.addClassName("qr");
            Anchor open = new Anchor("at-home/" + link.get().token(), Text.of("counter.link.open"));
            open.setTarget(AnchorTarget.BLANK);
            open.getElement().setAttribute("router-ignore", true);
            Div words = new Div(new Paragraph(Text.of("counter.link.until", ShopTime.moment(link.get().endsAt()))), open,
                    Controls.button(Text.of("counter.link.revoke"), "quiet", () -> view.act(() -> {
                        desk.links().revoke(entry.code());
                        view.tell(Text.of("counter.link.revoked"), true);
                    })));
            Div box = new Div(qr, words);
            box.addClassName("link-box");
            add(box);
        } else {
            add(new Paragraph(Text.of("counter.link.none")), CasePage.actions(Controls.button(Text.of("counter.link.make"), "quiet", () -> view.act(() -> desk.links().of(entry.code())))));
        }
        if (desk.mail().available()) {
            add(mail(view, desk, entry, proposal));
        }
    }

    private static Div mail(CounterView view, CounterDesk desk, Entry entry, Proposal proposal) {
        Input to = new Input(ValueChangeMode.ON_CHANGE);
        to.setType("email");
        to.getElement().setAttribute("autocomplete", "off");
        return CasePage.actions(Controls.labelled("case-mail", Text.of("counter.mail"), to), Controls.button(Text.of("counter.mail.send"), "quiet", () -> view.act(() -> {
            PlanMail.Sent sent = desk.mail().send(to.getValue(), proposal, entry.spoken(), desk.addresses().of(desk.links().of(entry.code()).token()));
            view.tell(Text.of("counter.mail." + sent.name().toLowerCase(Locale.ROOT).replace('_', '-')), sent == PlanMail.Sent.SENT);
        })));
    }

    private static Anchor print(String address, String key) {
        Anchor print = new Anchor(address, Text.of(key));
        print.setTarget(AnchorTarget.BLANK);
        print.getElement().setAttribute("router-ignore", true);
        print.addClassNames("button", "quiet");
        return print;
    }
}
