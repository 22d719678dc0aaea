package boughwright.ui;

import boughwright.consultation.ResumeMarks;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinService;
import com.vaadin.flow.server.VaadinSession;
import jakarta.servlet.http.Cookie;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The consultations that are open on this tablet: those begun on it or whose code was typed on it since it was last wiped. Kept with the
 * session; should the session be lost, the browser's resume mark brings them back once.
 */
final class OpenCodes {

    /** The cookie with the resume mark; no script can read it, and it ends with the browser at the latest. */
    static final String COOKIE = "boughwright-resume";

    private final Set<String> codes = new LinkedHashSet<>();
    private String mark = "";
    private String present = "";
    private boolean takenUp;

    private OpenCodes() {
    }

    /** Those of the session that is being served. */
    static OpenCodes here(ResumeMarks marks) {
        VaadinSession session = VaadinSession.getCurrent();
        OpenCodes open = session.getAttribute(OpenCodes.class);
        if (open == null) {
            open = new OpenCodes();
            open.takeUp(marks);
            session.setAttribute(OpenCodes.class, open);
        }
        return open;
    }

    /** Whether nothing is open in the session that is being served. */
    static boolean noneHere() {
        OpenCodes open = VaadinSession.getCurrent().getAttribute(OpenCodes.class);
        return open == null || open.none();
    }

    private void takeUp(ResumeMarks marks) {
        cookie().ifPresent(kept -> {
            codes.addAll(marks.codes(kept));
            if (!codes.isEmpty()) {
                mark = kept;
                marks.touch(kept);
                codes.forEach(c -> present = c);
                takenUp = true;
            }
        });
    }

    private static Optional<String> cookie() {
        VaadinRequest request = VaadinRequest.getCurrent();
        Cookie[] sent = request == null ? null : request.getCookies();
        return sent == null ? Optional.empty() : Arrays.stream(sent).filter(c -> c.getName().equals(COOKIE)).map(Cookie::getValue).findFirst();
    }

    /** Opens a consultation, which is the present one from now on. */
    void open(String code, ResumeMarks marks) {
        codes.add(code);
        present = code;
        if (mark.isEmpty()) {
            mark = ResumeMarks.fresh();
            give(mark, -1);
        }
        marks.open(mark, code);
    }

    /** The present one, once, when a session that was lost has just been taken up again. */
    Optional<String> justTakenUp() {
        boolean just = takenUp;
        takenUp = false;
        return present().filter(c -> just);
    }

    boolean has(String code) {
        return codes.contains(code);
    }

    boolean none() {
        return codes.isEmpty();
    }

    /** The one that was begun or opened last; empty after {@link #beginAnother}. */
    Optional<String> present() {
        return Optional.of(present).filter(c -> !c.isEmpty());
    }

    /** The next answer begins another consultation. */
    void beginAnother() {
        present = "";
    }

    /** Says that somebody is still at it. */
    void touch(ResumeMarks marks) {
        if (!mark.isEmpty()) {
            marks.touch(mark);
        }
    }

    /** Ends the mark that a browser has sent, whether or not a session knows of it. */
    static void forget(ResumeMarks marks) {
        cookie().ifPresent(marks::forget);
        give("", 0);
    }

    /** @param seconds until the browser throws it away; negative for when it is closed */
    private static void give(String value, int seconds) {
        VaadinResponse response = VaadinService.getCurrentResponse();
        VaadinRequest request = VaadinRequest.getCurrent();
        if (response == null || request == null) {
            return;
        }
        Cookie cookie = new Cookie(COOKIE, value);
        cookie.setHttpOnly(true);
        cookie.setSecure(request.isSecure());
        cookie.setPath("/");
        cookie.setMaxAge(seconds);
        cookie.setAttribute("SameSite", "Lax");
        response.addCookie(cookie);
    }
}
