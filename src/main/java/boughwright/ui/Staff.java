package boughwright.ui;

import boughwright.people.Person;
import boughwright.people.SignedIn;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinService;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.WrappedSession;
import java.util.List;
import java.util.Optional;

/** Who of the staff is signed in with this browser, in all its tabs. */
final class Staff {

    private Staff() {
    }

    /** Who is signed in; nobody once something has ended it. */
    static Optional<Person> present() {
        return signedIn().flatMap(SignedIn::person);
    }

    static Optional<SignedIn> signedIn() {
        return signedIn(VaadinSession.getCurrent());
    }

    static Optional<SignedIn> signedIn(VaadinSession session) {
        WrappedSession wrapped = session == null ? null : session.getSession();
        return wrapped == null ? Optional.empty() : Optional.ofNullable((SignedIn) wrapped.getAttribute(SignedIn.ATTRIBUTE));
    }

    static void signIn(SignedIn signedIn) {
        // A session that was handed to somebody before the sign-in must not be signed in with it.
        VaadinService.reinitializeSession(VaadinRequest.getCurrent());
        VaadinSession.getCurrent().getSession().setAttribute(SignedIn.ATTRIBUTE, signedIn);
    }

    /** Ends it in every tab of this browser, with everything that was open in them; this tab shows its address anew. */
    static void signOut(UI here) {
        signedIn().ifPresent(SignedIn::end);
        here.getPage().reload();
        VaadinSession.getCurrent().getSession().invalidate();
    }

    /** Every tab of this browser shows the door where it showed a screen for staff. */
    static void shutScreens(VaadinSession session) {
        session.getSession().removeAttribute(SignedIn.ATTRIBUTE);
        for (UI ui : session.getUIs()) {
            for (HasElement shown : List.copyOf(ui.getInternals().getActiveRouterTargetsChain())) {
                if (shown instanceof StaffScreen screen) {
                    screen.open();
                }
            }
        }
    }
}
