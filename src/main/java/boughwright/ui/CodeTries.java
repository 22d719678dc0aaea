package boughwright.ui;

import boughwright.people.Tablets;
import boughwright.people.Throttle;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.time.Duration;
import java.util.Optional;

/** Lets codes be typed wrongly a few times and no more: with some eighty thousand of them nobody shall find one by trying. */
@SpringComponent
class CodeTries {

    private final Throttle throttle;
    private final Tablets tablets;

    CodeTries(Throttle throttle, Tablets tablets) {
        this.throttle = throttle;
        this.tablets = tablets;
    }

    /** Begins a try, which counts as a wrong one until {@link #right}. @return how long to wait, if none is allowed now */
    Optional<Duration> begin() {
        return throttle.begin(Throttle.Kind.CODE, here());
    }

    /** The code that was typed is one. Who knows one may go on guessing no longer than others. */
    void right() {
        throttle.spare(Throttle.Kind.CODE, here());
    }

    private String here() {
        VaadinRequest request = VaadinRequest.getCurrent();
        return TabletCookie.of(request).flatMap(tablets::of).map(t -> "tablet " + t.id()).orElseGet(request::getRemoteAddr);
    }
}
