package boughwright.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;

/** Where a screen for staff tells what came of what they did; it is read aloud when it changes. */
final class StaffNotice extends Div {

    StaffNotice() {
        addClassName("notice");
        getElement().setAttribute("role", "status");
    }

    /** Tells this in place of what was told before. @return the line, to which more may be added */
    Div tell(String words, boolean well) {
        Div line = new Div(new Span(words));
        line.addClassNames("complaint", well ? "is-well" : "is-fault");
        removeAll();
        add(line);
        return line;
    }
}
