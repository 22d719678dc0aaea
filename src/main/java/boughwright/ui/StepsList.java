package boughwright.ui;

import boughwright.plan.Plan;
import boughwright.plan.Step;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;

/** The plan in words, step by step. */
final class StepsList extends Div {

    StepsList(Plan plan) {
        addClassName("steps");
        Paragraph ladder = new Paragraph(plan.ladder());
        ladder.addClassName("soft");
        add(ladder);
        OrderedList list = new OrderedList();
        plan.steps().forEach(step -> list.add(item(step)));
        add(list);
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
        if (!step.places().isEmpty()) {
            UnorderedList places = new UnorderedList();
            places.addClassName("places");
            step.places().forEach(p -> places.add(new ListItem(p)));
            item.add(new NativeDetails(Text.of("steps.places", step.places().size()), places));
        }
        return item;
    }
}
