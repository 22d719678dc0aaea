package boughwright.ui;

import boughwright.people.SignedIn;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.SynchronizedRequestHandler;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Stands before every screen. A view opens for everybody only when it says so with {@link AnonymousAllowed}, and for staff only when it is a
 * {@link StaffScreen}, which asks for one of its roles; any other does not open. Where a sign-in has ended, screens for staff are taken
 * away before anything that was touched on them is heard: what is no longer on a screen is not obeyed.
 */
@SpringComponent
class StaffWatch implements VaadinServiceInitListener {

    private static final Logger LOG = LoggerFactory.getLogger(StaffWatch.class);

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.addRequestHandler(new SynchronizedRequestHandler() {
            @Override
            public boolean canHandleRequest(VaadinRequest request) {
                return request.getWrappedSession(false) != null && request.getWrappedSession().getAttribute(SignedIn.ATTRIBUTE) != null;
            }

            @Override
            public boolean synchronizedHandleRequest(VaadinSession session, VaadinRequest request, VaadinResponse response) {
                Optional<SignedIn> signedIn = Staff.signedIn(session);
                if (signedIn.isPresent() && signedIn.get().person().isEmpty()) {
                    Staff.shutScreens(session);
                }
                return false;
            }
        });
        event.getSource().addUIInitListener(init -> init.getUI().addBeforeEnterListener(StaffWatch::enter));
    }

    private static void enter(BeforeEnterEvent event) {
        Class<?> view = event.getNavigationTarget();
        boolean declared = view.isAnnotationPresent(AnonymousAllowed.class) || StaffScreen.class.isAssignableFrom(view);
        if (!declared && !event.isErrorEvent()) {
            LOG.error("{} says neither that everybody may open it nor which roles", view.getName());
            event.rerouteToError(NotFoundException.class);
        }
    }
}
