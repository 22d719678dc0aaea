package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import jakarta.servlet.http.HttpServletResponse;

/** What an address shows that leads nowhere. */
class LostView extends Screen implements HasErrorParameter<NotFoundException> {

    LostView() {
        super("nowhere");
        Main main = new Main(new H1(Text.of("proposal.no-page")), new Paragraph(Text.of("proposal.no-page.words")), new Anchor("", Text.of("proposal.new")));
        main.addClassName("lost");
        add(main);
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
