package boughwright.ui;

import boughwright.athome.AtHomePage;
import boughwright.plan.HowTo;
import boughwright.plan.Plan;
import boughwright.plan.Step;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;

/** The plan in words, step by step. */
final class StepsList extends Div {

    /** @param code of the consultation, under which a phone finds the same steps */
    StepsList(Plan plan, String code) {
        addClassName("steps");
        add(onPhone(code));
        Paragraph ladder = new Paragraph(plan.ladder());
        ladder.addClassName("soft");
        add(ladder);
        OrderedList list = new OrderedList();
        plan.steps().forEach(step -> list.add(item(step)));
        add(list);
    }

    private static Div onPhone(String code) {
        Image qr = new Image("api/proposals/" + code + "/at-home.svg", Text.of("steps.phone.alt"));
        Anchor open = new Anchor("api/proposals/" + code + "/at-home", Text.of("steps.phone.open"));
        open.setTarget(AnchorTarget.BLANK);
        open.getElement().setAttribute("router-ignore", true);
        Div words = new Div(new H2(Text.of("steps.phone")), new Paragraph(Text.of("steps.phone.text")), open);
        Div box = new Div(qr, words);
        box.addClassName("on-phone");
        return box;
    }

    /** What is done by hand has a drawing that shows it. */
    private static NativeDetails howTo(HowTo how) {
        return new NativeDetails(Text.of("howto." + how.word() + ".title"), new Div(Controls.drawn(AtHomePage.drawing(how)), new Paragraph(AtHomePage.words(how))));
    }

    private static ListItem item(Step step) {
        ListItem item = new ListItem();
        H2 title = new H2(step.title());
        Div head = new Div(title, Controls.words(Text.of("steps.minutes", step.minutes()), "soft"));
        head.addClassName("layer-head");
        item.add(head, new Paragraph(step.text()));
        if (!step.pieces().isEmpty()) {
            UnorderedList pieces = new UnorderedList();
            pieces.addClassName("pieces");
            step.pieces().forEach(p -> pieces.add(new ListItem(Text.of("steps.piece", p.quantity(), p.name()))));
            item.add(pieces);
        }
        step.howTo().forEach(h -> item.add(howTo(h)));
        if (!step.places().isEmpty()) {
            UnorderedList places = new UnorderedList();
            places.addClassName("places");
            step.places().forEach(p -> places.add(new ListItem(p)));
            item.add(new NativeDetails(Text.of("steps.places", step.places().size()), places));
        }
        return item;
    }
}
