package boughwright.ui;

import boughwright.needs.Caution;
import boughwright.plan.Plan;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;

/** What to take care of, each with its source. */
final class CautionsList extends Div {

    CautionsList(Plan plan) {
        addClassName("cautions");
        add(new H2(Text.of("cautions.title")));
        Paragraph defer = new Paragraph(Text.of("cautions.defer"));
        defer.addClassName("soft");
        add(defer);
        UnorderedList list = new UnorderedList();
        for (Caution caution : plan.cautions()) {
            list.add(new ListItem(new Paragraph(caution.text()), Controls.words(Text.of("cautions.source", caution.source()), "soft")));
        }
        add(list);
    }
}
