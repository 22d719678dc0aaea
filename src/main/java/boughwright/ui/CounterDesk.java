package boughwright.ui;

import boughwright.consultation.Consultations;
import boughwright.consultation.Interviews;
import boughwright.counter.AtHomeAddress;
import boughwright.counter.Counter;
import boughwright.counter.Holds;
import boughwright.counter.Keeping;
import boughwright.counter.Links;
import boughwright.counter.Notes;
import boughwright.counter.PlanMail;
import boughwright.counter.Quotes;
import boughwright.counter.ShopTerms;
import boughwright.publishing.ShopDoor;
import com.vaadin.flow.spring.annotation.SpringComponent;

/** Everything that the counter's screens work with. */
@SpringComponent
record CounterDesk(ShopDoor shop, Consultations consultations, Interviews interviews, Counter counter, Quotes quotes, Holds holds, Notes notes, Links links, PlanMail mail,
        Keeping keeping, ShopTerms terms, AtHomeAddress addresses) {
}
