package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import java.util.List;

/** Where an associate sees to customers: consultations listed, one of them with its quote, hold and way home, two side by side. The address names the page. */
@Route(CounterView.ROUTE)
class CounterView extends StaffScreen implements HasUrlParameter<String>, HasDynamicTitle {

    static final String ROUTE = "counter";
    private static final String OF = "of/";
    private static final String BESIDE = "beside/";

    private final CounterDesk desk;
    private final Main main = new Main();
    private final Div notice = new Div();
    private String page = "";
    private String search = "";

    CounterView(StaffDoor door, CounterDesk desk) {
        super("counter", StaffPlace.COUNTER.roles(), door);
        this.desk = desk;
        notice.addClassName("notice");
        notice.getElement().setAttribute("role", "status");
    }

    static String of(String code) {
        return ROUTE + "/" + OF + code;
    }

    static String beside(String one, String other) {
        return ROUTE + "/" + BESIDE + one + "/" + other;
    }

    @Override
    public String getPageTitle() {
        return Text.of("counter.page-title");
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String parameter) {
        page = parameter;
        open();
    }

    @Override
    void languageChanged() {
        open();
        super.languageChanged();
    }

    @Override
    void opened(String name) {
        Anchor picking = new Anchor(PickingView.ROUTE, Text.of("staff.place.picking"));
        Span where = Controls.words(Text.of("staff.place.counter"), "summary");
        add(header(where, picking), main);
        draw();
    }

    @Override
    void closed() {
        main.removeAll();
        notice.removeAll();
    }

    /** Shows the page anew, with what was last told about it. */
    void draw() {
        main.removeAll();
        if (page.startsWith(OF)) {
            main.add(new CasePage(this, desk, page.substring(OF.length())));
        } else if (page.startsWith(BESIDE) && page.split("/").length == 3) {
            List<String> codes = List.of(page.split("/"));
            main.add(new BesidePage(desk, codes.get(1), codes.get(2)));
        } else {
            main.add(new CounterList(this, desk, search));
        }
    }

    Div notice() {
        return notice;
    }

    /** Does something unless whoever is there may not any more, then draws everything anew. */
    void act(Runnable change) {
        if (!gone()) {
            notice.removeAll();
            change.run();
            draw();
        }
    }

    void tell(String words, boolean well) {
        Div line = new Div(new Span(words));
        line.addClassNames("complaint", well ? "is-well" : "is-fault");
        notice.removeAll();
        notice.add(line);
    }

    void search(String text) {
        search = text;
    }

    void go(String address) {
        notice.removeAll();
        getUI().ifPresent(ui -> ui.navigate(address));
    }
}
