package boughwright.ui;

import boughwright.people.People;
import boughwright.people.PeopleEvents;
import boughwright.people.Place;
import boughwright.people.Tablets;
import boughwright.publishing.ShopDoor;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.util.Optional;

/** What the door of the screens for staff asks and tells. */
@SpringComponent
final class StaffDoor {

    private final People people;
    private final Tablets tablets;
    private final PeopleEvents events;
    private final ShopDoor shop;

    StaffDoor(People people, Tablets tablets, PeopleEvents events, ShopDoor shop) {
        this.people = people;
        this.tablets = tablets;
        this.events = events;
        this.shop = shop;
    }

    People people() {
        return people;
    }

    Tablets tablets() {
        return tablets;
    }

    PeopleEvents events() {
        return events;
    }

    /** Whether this is the invented shop. */
    boolean demo() {
        return shop.demo();
    }

    /** Where the present request comes from; nowhere known while none is answered. */
    Place place() {
        VaadinRequest request = VaadinRequest.getCurrent();
        if (request == null) {
            return new Place(Optional.empty(), "");
        }
        return new Place(TabletCookie.of(request).flatMap(tablets::of), request.getRemoteAddr());
    }
}
