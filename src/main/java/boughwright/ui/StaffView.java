package boughwright.ui;

import boughwright.people.Role;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.Set;

/** Where staff begin: the places where this person may go. */
@Route(StaffView.ROUTE)
class StaffView extends StaffScreen implements HasDynamicTitle, BeforeEnterObserver {

    static final String ROUTE = "staff";

    StaffView(StaffDoor door) {
        super("staff-start", Set.of(Role.values()), door);
    }

    @Override
    public String getPageTitle() {
        return Text.of("staff.page-title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        open();
    }

    @Override
    void opened(String name) {
        Div places = new Div();
        places.addClassNames("cards", "staff-places");
        for (StaffPlace place : StaffPlace.values()) {
            if (person().role().isOneOf(place.roles())) {
                Anchor card = new Anchor(place.route());
                card.addClassName("card");
                card.add(Controls.words(Text.of(place.key()), "card-title"), Controls.words(Text.of(place.key() + ".words"), "card-words"));
                places.add(card);
            }
        }
        Main main = new Main(new H1(Text.of("staff.hello", name)), places);
        if (door().demo()) {
            Paragraph demo = new Paragraph(Text.of("staff.demo.words"));
            demo.addClassName("demo-words");
            main.add(demo);
        }
        add(header(), main);
    }
}
