package boughwright.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.ClientCallable;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.HasDynamicTitle;
import java.util.Optional;

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
        tellPage();
        if (this instanceof HasDynamicTitle titled) {
            getUI().ifPresent(ui -> ui.getPage().setTitle(titled.getPageTitle()));
        }
    }

    /** Whether there is nothing on it or behind it to be wiped. */
    boolean rest() {
        return false;
    }

    /** The consultation that it is about, as it is said. */
    Optional<String> about() {
        return Optional.empty();
    }

    /** Tells the page's own script what it needs when the kiosk cannot be reached; again whenever that has changed. */
    final void tellPage() {
        getElement().setAttribute("data-kiosk", PageWords.of(Staff.present().isEmpty(), rest(), about()));
    }

    /** The page asks whether its session is still there; if it is not, it is loaded anew. Asked now and then while somebody touches it. */
    @ClientCallable
    private void stillThere() {
        touched();
    }

    /** Somebody is still at this page, though it had nothing to tell. */
    void touched() {
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        tellPage();
        attach.getUI().getPage().addJsModule("context://lib/boughwright.js");
    }
}
