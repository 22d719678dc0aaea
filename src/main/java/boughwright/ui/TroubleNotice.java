package boughwright.ui;

import boughwright.storage.Trouble;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.spring.annotation.SpringComponent;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Says on the screen that something did not work, in plain words, and what to do; the screen stays as it is. */
@SpringComponent
class TroubleNotice implements VaadinServiceInitListener {

    private static final String CLIENT_LEFT = "ClientAbortException";
    private static final Logger LOG = LoggerFactory.getLogger(TroubleNotice.class);

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addSessionInitListener(init -> init.getSession().setErrorHandler(TroubleNotice::tell));
    }

    private static void tell(ErrorEvent error) {
        if (left(error.getThrowable())) {
            LOG.debug("A browser left before it was answered: {}", error.getThrowable().toString());
            return;
        }
        Trouble trouble = Trouble.of(error.getThrowable());
        if (trouble == Trouble.NONE) {
            LOG.error("Something on a screen did not work", error.getThrowable());
        } else {
            LOG.warn("A screen cannot use the database: {}", error.getThrowable().toString());
        }
        UI ui = UI.getCurrent();
        if (ui != null) {
            ui.getChildren().filter(Notice.class::isInstance).toList().forEach(ui::remove);
            ui.add(new Notice(words(trouble)));
        }
    }

    /** Nobody is there any longer to be told: a cable was pulled, or a page closed, while an answer was on its way. */
    private static boolean left(Throwable thrown) {
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            // By its name: screens know nothing of the server that they are served by.
            if (each.getClass().getSimpleName().equals(CLIENT_LEFT)) {
                return true;
            }
        }
        return false;
    }

    /** What a customer reads of it. */
    static String words(Trouble trouble) {
        return Text.of(switch (trouble) {
            case AWAY -> "running.away";
            case FULL -> "running.full";
            case NONE -> "running.broken";
        });
    }

    private static final class Notice extends Div {

        Notice(String words) {
            addClassName("trouble");
            getElement().setAttribute("role", "alert");
            add(new Paragraph(words), Controls.button(Text.of("running.close"), "quiet", this::removeFromParent));
        }
    }
}
