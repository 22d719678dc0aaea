package boughwright.ui;

import boughwright.measure.Units;
import com.vaadin.flow.server.VaadinSession;
import java.io.Serializable;
import java.util.Optional;

/** The units that somebody chose on this tablet for the plan that it shows. */
record ChosenUnits(String code, Units units) implements Serializable {

    static void choose(String code, Units units) {
        VaadinSession session = VaadinSession.getCurrent();
        if (session != null) {
            session.setAttribute(ChosenUnits.class, new ChosenUnits(code, units));
        }
    }

    static Optional<Units> of(String code) {
        VaadinSession session = VaadinSession.getCurrent();
        return Optional.ofNullable(session).map(s -> s.getAttribute(ChosenUnits.class)).filter(c -> c.code().equals(code)).map(ChosenUnits::units);
    }
}
