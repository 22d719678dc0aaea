package boughwright.ui;

import boughwright.storage.Trouble;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What an address shows whose screen could not be opened, as while the database is away. Trying again opens the same address. */
class TroubleView extends Screen implements HasErrorParameter<Exception> {

    private static final Logger LOG = LoggerFactory.getLogger(TroubleView.class);

    TroubleView() {
        super("nowhere");
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<Exception> parameter) {
        Trouble trouble = Trouble.of(parameter.getException());
        if (trouble == Trouble.NONE) {
            LOG.error("The screen {} could not be opened", event.getLocation().getPath(), parameter.getException());
        } else {
            LOG.warn("A screen cannot use the database: {}", parameter.getException().toString());
        }
        Anchor again = new Anchor(event.getLocation().getPathWithQueryParameters(), Text.of("running.again"));
        again.setRouterIgnore(true);
        Main main = new Main(new H1(Text.of("running.title")), new Paragraph(TroubleNotice.words(trouble)), again);
        main.addClassName("lost");
        add(main);
        return trouble == Trouble.NONE ? HttpServletResponse.SC_INTERNAL_SERVER_ERROR : HttpServletResponse.SC_SERVICE_UNAVAILABLE;
    }
}
