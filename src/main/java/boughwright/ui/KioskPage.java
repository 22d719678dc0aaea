package boughwright.ui;

import boughwright.consultation.ResumeMarks;
import boughwright.text.Text;
import com.vaadin.flow.component.ReconnectDialogConfiguration;
import com.vaadin.flow.server.CustomizedSystemMessages;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.SystemMessages;
import com.vaadin.flow.server.SystemMessagesInfo;
import com.vaadin.flow.server.UIInitEvent;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.VaadinServletResponse;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.WrappedSession;
import com.vaadin.flow.spring.annotation.SpringComponent;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;

/**
 * How the kiosk's pages behave that anyone may touch: what is said when a connection or a session is lost, and that a tablet which has wiped itself
 * gets a new session. The other half is {@code lib/kiosk.js}.
 */
@SpringComponent
class KioskPage implements VaadinServiceInitListener {

    /** Set by the page's script when it wipes itself, perhaps long before the kiosk can be told. */
    static final String WIPED = "boughwright-wiped";
    /** Where what belongs to a page that is shown is fetched from. */
    private static final String OF_A_PAGE = "/VAADIN/";

    /** Until the connection is back, however long that takes. */
    private static final int ATTEMPTS = 1_000_000;
    private static final int ATTEMPT_MILLIS = 1000;

    private final ResumeMarks marks;
    private final Idle idle;

    KioskPage(ResumeMarks marks, @Value("${boughwright.idle}") int idle, @Value("${boughwright.idle-warning}") int warning) {
        this.marks = marks;
        this.idle = new Idle(idle, warning);
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().getContext().setAttribute(Idle.class, idle);
        event.getSource().setSystemMessagesProvider(KioskPage::messages);
        event.getSource().addUIInitListener(KioskPage::patient);
        event.addRequestHandler(this::startAfresh);
        event.addIndexHtmlRequestListener(page -> page.getVaadinResponse().setHeader("Cache-Control", "no-store"));
    }

    /** A session that is gone is no news for a customer: the page is loaded anew and goes on where it was. */
    private static SystemMessages messages(SystemMessagesInfo asked) {
        CustomizedSystemMessages messages = new CustomizedSystemMessages();
        messages.setSessionExpiredNotificationEnabled(false);
        messages.setInternalErrorCaption(Text.of("kiosk.error"));
        messages.setInternalErrorMessage(Text.of("kiosk.error.words"));
        messages.setCookiesDisabledCaption(Text.of("kiosk.cookies"));
        messages.setCookiesDisabledMessage(Text.of("kiosk.cookies.words"));
        return messages;
    }

    private static void patient(UIInitEvent event) {
        ReconnectDialogConfiguration lost = event.getUI().getReconnectDialogConfiguration();
        lost.setDialogText(Text.of("kiosk.lost"));
        lost.setDialogTextGaveUp(Text.of("kiosk.lost"));
        lost.setReconnectAttempts(ATTEMPTS);
        lost.setReconnectInterval(ATTEMPT_MILLIS);
    }

    /** A tablet that says that it was wiped gets nothing of the session that it had. */
    private boolean startAfresh(VaadinSession session, VaadinRequest request, VaadinResponse response) throws IOException {
        if (request.getParameter("v-r") != null || !wiped(request)) {
            return false;
        }
        if (request.getPathInfo() != null && request.getPathInfo().startsWith(OF_A_PAGE)) {
            // A drawing for the page that is being left.
            response.sendError(HttpServletResponse.SC_GONE, "");
            return true;
        }
        OpenCodes.forget(marks);
        Cookie done = new Cookie(WIPED, "");
        done.setPath("/");
        done.setMaxAge(0);
        response.addCookie(done);
        session.lock();
        try {
            // Another request may have brought the same word a moment before.
            Optional.ofNullable(session.getSession()).ifPresent(WrappedSession::invalidate);
        } finally {
            session.unlock();
        }
        ((VaadinServletResponse) response).sendRedirect(request.getContextPath() + "/");
        return true;
    }

    private static boolean wiped(VaadinRequest request) {
        return request.getCookies() != null && Arrays.stream(request.getCookies()).anyMatch(c -> c.getName().equals(WIPED));
    }
}
