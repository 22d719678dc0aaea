package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.NativeButton;

/** The bar above a customer's page: where one is, and the way out that leaves nothing behind. */
final class CustomerBar {

    private CustomerBar() {
    }

    static Header of(Component... middle) {
        Header header = new Header(brand());
        header.add(middle);
        // The page's script asks and wipes, so that it works without a connection too.
        NativeButton finish = new NativeButton(Text.of("kiosk.finish"));
        finish.addClassNames("pill", "finish-here");
        finish.getElement().setAttribute("data-finish", true);
        header.add(finish);
        header.addClassName("bar");
        return header;
    }

    /** Where there is nothing of a customer yet. */
    static Header plain() {
        Header header = new Header(brand(), new LanguageChoice());
        header.addClassNames("bar", "plain");
        return header;
    }

    private static Anchor brand() {
        Anchor brand = new Anchor("", Text.of("brand"));
        brand.addClassName("brand");
        return brand;
    }
}
