package boughwright.ui;

import boughwright.publishing.ShopLanguage;
import boughwright.text.Language;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinRequestInterceptor;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.WrappedSession;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.util.Optional;

/**
 * Which language a browser session speaks: the one that was chosen on its screens; before that the browser's own among those spoken
 * here; else the shop's. Whatever a screen does for a request, it does in that language.
 */
@SpringComponent
public class Spoken implements VaadinServiceInitListener {

    private static final String CHOSEN = "boughwright.language";
    private static final String REQUEST = Spoken.class.getName();

    private final ShopLanguage shop;

    Spoken(ShopLanguage shop) {
        this.shop = shop;
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.addVaadinRequestInterceptor(new VaadinRequestInterceptor() {
            @Override
            public void requestStart(VaadinRequest request, VaadinResponse response) {
                request.setAttribute(REQUEST, Text.speak(of(request)));
            }

            @Override
            public void handleException(VaadinRequest request, VaadinResponse response, VaadinSession session, Exception broken) {
                // Ends as every request does.
            }

            @Override
            public void requestEnd(VaadinRequest request, VaadinResponse response, VaadinSession session) {
                if (request.getAttribute(REQUEST) instanceof Text.Speaking speaking) {
                    speaking.close();
                }
            }
        });
        event.getSource().addUIInitListener(init -> tell(init.getUI()));
    }

    private Language of(VaadinRequest request) {
        WrappedSession session = request.getWrappedSession(false);
        Object chosen = session == null ? null : session.getAttribute(CHOSEN);
        return Optional.ofNullable(chosen).map(Object::toString).flatMap(Language::read)
                .or(() -> Language.liked(request.getHeader("Accept-Language"))).orElse(shop.language());
    }

    /** From now on this session speaks {@code language}; every screen that it has open is drawn anew. */
    static void choose(Language language) {
        VaadinSession session = VaadinSession.getCurrent();
        if (session.getSession() != null) {
            session.getSession().setAttribute(CHOSEN, language.tag());
        }
        // For the rest of this request; its end goes back to what the thread spoke before.
        Text.speak(language);
        UI here = UI.getCurrent();
        redraw(here);
        // Another tab of the same browser shows it with its next request.
        session.getUIs().stream().filter(ui -> ui != here).forEach(ui -> ui.access(Text.carried(() -> redraw(ui))::run));
    }

    private static void redraw(UI ui) {
        tell(ui);
        ui.getInternals().getActiveRouterTargetsChain().stream().filter(Screen.class::isInstance).map(Screen.class::cast)
                .forEach(Screen::languageChanged);
    }

    /** A consultation was opened on this tablet: its language is spoken, unless another was chosen here. Before anything is written. */
    static void takeUp(Language language) {
        VaadinSession session = VaadinSession.getCurrent();
        if (session.getSession() != null && session.getSession().getAttribute(CHOSEN) == null) {
            session.getSession().setAttribute(CHOSEN, language.tag());
            Text.speak(language);
            if (UI.getCurrent() != null) {
                tell(UI.getCurrent());
            }
        }
    }

    /** Forgets what was chosen, as for the next customer. */
    static void forget() {
        VaadinSession session = VaadinSession.getCurrent();
        if (session != null && session.getSession() != null) {
            session.getSession().removeAttribute(CHOSEN);
        }
    }

    private static void tell(UI ui) {
        ui.setLocale(Language.now().locale());
        ui.getPage().executeJs("""
                document.documentElement.lang = $0;
                const sign = window.Vaadin && window.Vaadin.connectionIndicator;
                if (sign) {
                  sign.onlineText = $1;
                  sign.offlineText = $2;
                  sign.reconnectingText = $3;
                }""", Language.now().tag(), Text.of("connection.there"), Text.of("connection.gone"), Text.of("connection.again"));
    }
}
