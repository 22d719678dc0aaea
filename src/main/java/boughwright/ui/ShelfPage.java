package boughwright.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;

/** What stands in the middle of the shelf's screen. */
abstract class ShelfPage extends Div {

    ShelfPage(String... names) {
        addClassName("shelf-page");
        addClassNames(names);
    }

    /** A paragraph that explains. */
    static Paragraph soft(String text) {
        Paragraph paragraph = new Paragraph(text);
        paragraph.addClassName("soft");
        return paragraph;
    }

    /** Says everything again in the language that is spoken now, with what was typed and brought. @return false when the page is made anew instead */
    boolean retell() {
        return false;
    }

    /** Stops what is still being worked out for this page, and lets go of its files. */
    void leave() {
    }
}
