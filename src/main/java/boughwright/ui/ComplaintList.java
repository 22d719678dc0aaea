package boughwright.ui;

import boughwright.house.Complaint;
import com.vaadin.flow.component.html.Div;
import java.util.List;

/** All that is complained of on one page, numbered; told to screen readers when it changes. */
final class ComplaintList extends Div {

    ComplaintList() {
        addClassName("complaints");
        getElement().setAttribute("aria-live", "polite");
    }

    void show(List<Complaint> all) {
        removeAll();
        for (int i = 0; i < all.size(); i++) {
            add(new ComplaintBox(all.get(i), i + 1, false));
        }
    }
}
