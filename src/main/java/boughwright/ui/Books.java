package boughwright.ui;

import boughwright.consultation.Consultation;
import boughwright.consultation.Consultations;
import boughwright.consultation.Interviews;
import boughwright.consultation.ResumeMarks;
import boughwright.counter.Holds;
import boughwright.counter.ShopTerms;
import boughwright.publishing.ShopDoor;
import boughwright.text.Language;
import com.vaadin.flow.spring.annotation.SpringComponent;

/**
 * What the customer's screens are led from: the open shop, and where their consultations are kept.
 *
 * @param tries at typing codes
 */
@SpringComponent
record Books(ShopDoor shop, Consultations consultations, Interviews interviews, ResumeMarks marks, CodeTries tries, Holds holds, ShopTerms terms) {

    /** The consultations that are open on this tablet. */
    OpenCodes open() {
        OpenCodes open = OpenCodes.here(marks);
        open.justTakenUp().flatMap(interviews::open).ifPresent(c -> Spoken.takeUp(Language.of(c.language())));
        return open;
    }

    /** Opens a consultation whose code was typed. */
    void open(Consultation consultation) {
        open().open(consultation.code(), marks);
        Spoken.takeUp(Language.of(consultation.language()));
    }

    /** Whether this session may see a consultation: it was begun here or its code was typed here, or somebody of the shop is signed in. */
    boolean mayOpen(String code) {
        return open().has(code) || Staff.present().isPresent();
    }
}
