package boughwright.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Div;

/** One whole page of the kiosk: a bar above, a bar below, what it is about between them. */
abstract class Screen extends Div {

    Screen(String name) {
        addClassNames("screen", name);
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        attach.getUI().getPage().addJsModule("context://lib/boughwright.js");
    }
}
