package boughwright.ui;

import boughwright.house.Complaint;
import boughwright.house.Headings;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;

/** One thing to mend or to think about: where, what, and how. */
final class ComplaintBox extends Div {

    /** @param linked whether the page is named with a link to it */
    ComplaintBox(Complaint complaint, int number, boolean linked) {
        addClassNames("complaint", complaint.fault() ? "is-fault" : "is-doubt");
        Span count = new Span(String.valueOf(number));
        count.addClassName("complaint-number");
        String where = Headings.where("", complaint.table(), complaint.row(), complaint.column());
        Div words = new Div();
        if (linked) {
            words.add(new Anchor(HouseRulesView.ROUTE + "/" + complaint.page(), complaint.title()), new Span(where.isEmpty() ? ": " : ", " + where + ": "));
        } else if (!where.isEmpty()) {
            Span place = new Span(where + ". ");
            place.addClassName("complaint-place");
            words.add(place);
        }
        words.add(new Span(complaint.message()));
        add(count, words);
    }
}
