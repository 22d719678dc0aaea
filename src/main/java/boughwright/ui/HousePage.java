package boughwright.ui;

import boughwright.house.Complaint;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;

/** What stands in the middle of the house-rules screen: one page of the draft, or what is done with drafts as a whole. */
abstract class HousePage extends Div {

    HousePage(String... names) {
        addClassName("house-page");
        addClassNames(names);
    }

    /** A paragraph that explains. */
    static Paragraph soft(String text) {
        Paragraph paragraph = new Paragraph(text);
        paragraph.addClassName("soft");
        return paragraph;
    }

    /** Shows what is complained of on this page, without touching the fields. */
    void complained(List<Complaint> complaints) {
    }

    /** Stops what is still being worked out for this page. */
    void leave() {
    }
}
