package boughwright.ui;

import com.vaadin.flow.server.VaadinService;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinSession;
import java.time.Duration;
import java.util.Optional;

/** Who of the staff is signed in on this tablet; after half an hour without a change or a page, nobody. */
final class Staff {

    static final Duration IDLE = Duration.ofMinutes(30);

    /** @param seen nanoseconds of the machine's own clock */
    private record Signed(String name, long seen) {
    }

    private Staff() {
    }

    static void signIn(String name) {
        // A session that was handed to somebody before the sign-in must not be signed in with it.
        VaadinService.reinitializeSession(VaadinRequest.getCurrent());
        VaadinSession.getCurrent().setAttribute(Signed.class, new Signed(name, System.nanoTime()));
    }

    static void signOut() {
        VaadinSession.getCurrent().setAttribute(Signed.class, null);
    }

    /** Their name, and that they are still there. */
    static Optional<String> present() {
        VaadinSession session = VaadinSession.getCurrent();
        Signed signed = session == null ? null : session.getAttribute(Signed.class);
        if (signed == null) {
            return Optional.empty();
        }
        if (System.nanoTime() - signed.seen() > IDLE.toNanos()) {
            signOut();
            return Optional.empty();
        }
        session.setAttribute(Signed.class, new Signed(signed.name(), System.nanoTime()));
        return Optional.of(signed.name());
    }
}
