package boughwright.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.HasDynamicTitle;

/** One whole page of the kiosk: a bar above, a bar below, what it is about between them. */
abstract class Screen extends Div {

    Screen(String name) {
        addClassNames("screen", name);
    }

    /** Shows the beginning of what has taken the place of something else. */
    void scrollToTop() {
        getElement().executeJs("window.scrollTo(0, 0); this.querySelectorAll('main').forEach(m => m.scrollTo(0, 0));");
    }

    /**
     * Another language is spoken from now on: draws the screen anew, with everything that was answered, chosen or opened as it was. The title of
     * the page follows by itself once this has been called.
     */
    void languageChanged() {
        if (this instanceof HasDynamicTitle titled) {
            getUI().ifPresent(ui -> ui.getPage().setTitle(titled.getPageTitle()));
        }
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        attach.getUI().getPage().addJsModule("context://lib/boughwright.js");
    }
}
