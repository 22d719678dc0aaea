package boughwright.ui;

import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.SynchronizedRequestHandler;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.shared.ApplicationConstants;
import com.vaadin.flow.spring.annotation.SpringComponent;
import org.slf4j.MDC;

/**
 * Whatever is written into the log while a screen is touched bears the code of the consultation that is open on the tablet. The filter around each
 * request, which does the same for addresses that name a code, takes it away again.
 */
@SpringComponent
class OpenCodeInLog implements VaadinServiceInitListener {

    /** The key of the consultation's code in the log; the same for all requests. */
    private static final String KEY = "consultation";

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.addRequestHandler(new SynchronizedRequestHandler() {
            @Override
            public boolean canHandleRequest(VaadinRequest request) {
                return ApplicationConstants.REQUEST_TYPE_UIDL.equals(request.getParameter(ApplicationConstants.REQUEST_TYPE_PARAMETER));
            }

            @Override
            public boolean synchronizedHandleRequest(VaadinSession session, VaadinRequest request, VaadinResponse response) {
                OpenCodes open = session.getAttribute(OpenCodes.class);
                if (open != null) {
                    open.present().ifPresent(code -> MDC.put(KEY, code));
                }
                return false;
            }
        });
    }
}
