package boughwright.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Div;

/** One whole page of the kiosk: a bar above, a bar below, what it is about between them. */
abstract class Screen extends Div {

    Screen(String name) {
        addClassNames("screen", name);
    }

    /** Shows the beginning of what has taken the place of something else. */
    void scrollToTop() {
        getElement().executeJs("window.scrollTo(0, 0); this.querySelectorAll('main').forEach(m => m.scrollTo(0, 0));");
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        attach.getUI().getPage().addJsModule("context://lib/boughwright.js");
    }
}
