package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;

/** Where a customer types the code of a consultation that was begun before. */
@AnonymousAllowed
@Route("code")
class CodeView extends Screen implements HasDynamicTitle {

    private final Books books;

    CodeView(Books books) {
        super("code-page");
        this.books = books;
        show();
    }

    private void show() {
        removeAll();
        add(CustomerBar.plain(), new Main(new CodeEntry(books, Text.of("kiosk.code.words"))));
    }

    @Override
    void languageChanged() {
        super.languageChanged();
        show();
    }

    @Override
    public String getPageTitle() {
        return Text.of("kiosk.code.page-title");
    }
}
