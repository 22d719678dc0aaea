package boughwright.ui;

import boughwright.counter.Hold;
import boughwright.counter.Terms;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Where an associate sees to customers: consultations listed, one of them with its quote, hold and way home, two side by side. The address names the page. */
@Route(CounterView.ROUTE)
class CounterView extends DeskScreen implements HasUrlParameter<String> {

    static final String ROUTE = "counter";
    private static final String OF = "of/";
    private static final String BESIDE = "beside/";

    private final CounterDesk desk;
    private String page = "";
    private String search = "";

    CounterView(StaffDoor door, CounterDesk desk) {
        super("counter", StaffPlace.COUNTER, door);
        this.desk = desk;
    }

    static String of(String code) {
        return ROUTE + "/" + OF + code;
    }

    static String beside(String one, String other) {
        return ROUTE + "/" + BESIDE + one + "/" + other;
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String parameter) {
        page = parameter;
        open();
    }

    @Override
    Component[] beside() {
        return new Component[] {new Anchor(PickingView.ROUTE, Text.of("staff.place.picking"))};
    }

    @Override
    void draw(Main main) {
        List<String> parts = List.of(page.split("/"));
        if (page.startsWith(OF)) {
            main.add(new CasePage(this, desk, page.substring(OF.length())));
        } else if (page.startsWith(BESIDE) && parts.size() == 3) {
            main.add(new BesidePage(desk, parts.get(1), parts.get(2)));
        } else {
            main.add(new CounterList(this, desk, search));
        }
    }

    void search(String text) {
        search = text;
    }

    /** Lets what is held for a consultation last another while. */
    void holdLonger(String code) {
        act(() -> {
            Optional<Hold> longer = desk.holds().extend(code, Duration.ofHours(desk.terms().now().number(Terms.Number.HOLD_HOURS)));
            tell(longer.map(h -> Text.of("counter.hold.until", ShopTime.moment(h.endsAt()))).orElse(Text.of("counter.hold.none")), longer.isPresent());
        });
    }

    void go(String address) {
        notice().removeAll();
        getUI().ifPresent(ui -> ui.navigate(address));
    }
}
