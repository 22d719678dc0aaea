package boughwright.ui;

import com.vaadin.flow.server.VaadinService;

/**
 * When a tablet that nobody touches starts afresh.
 *
 * @param seconds without a touch until it asks whether somebody is there
 * @param warning seconds from then until everything of the customer leaves
 */
record Idle(int seconds, int warning) {

    private static final Idle USUAL = new Idle(60, 20);
    /** A warning must leave time to read and to touch. */
    private static final int LEAST_WARNING = 5;

    Idle {
        if (seconds < 1 || warning < LEAST_WARNING) {
            throw new IllegalArgumentException("a tablet is idle after at least 1 s and warns for at least " + LEAST_WARNING + " s, not " + seconds + " and " + warning);
        }
    }

    /** As the kiosk was started with. */
    static Idle here() {
        VaadinService service = VaadinService.getCurrent();
        return service == null ? USUAL : service.getContext().getAttribute(Idle.class, () -> USUAL);
    }
}
