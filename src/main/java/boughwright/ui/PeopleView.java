package boughwright.ui;

import boughwright.people.Colleague;
import boughwright.people.People;
import boughwright.people.PeopleEvent;
import boughwright.people.Role;
import boughwright.people.Tablet;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where a manager keeps the people and the tablets. */
@Route(PeopleView.ROUTE)
class PeopleView extends StaffScreen implements HasDynamicTitle, BeforeEnterObserver {

    static final String ROUTE = "people";
    private static final int EVENTS = 30;

    private final People people;
    private final StaffNotice notice = new StaffNotice();
    private final Main main = new Main();
    private Role role = Role.ASSOCIATE;

    PeopleView(StaffDoor door) {
        super("people", StaffPlace.PEOPLE.roles(), door);
        this.people = door.people();
    }

    @Override
    public String getPageTitle() {
        return Text.of("people.page-title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        open();
    }

    @Override
    void opened(String name) {
        notice.removeAll();
        add(header(), main);
        draw();
    }

    @Override
    void closed() {
        // A starting word that was told must not come back with the next one who signs in.
        notice.removeAll();
        main.removeAll();
    }

    private void draw() {
        main.removeAll();
        main.add(new H1(Text.of("people.head")), notice, peopleList(), adding(), tablets(), locking(), history());
    }

    /** Does something unless whoever is there may not any more, then draws everything anew. */
    private void act(Runnable change) {
        if (!gone()) {
            change.run();
            draw();
        }
    }

    private void tell(String words, boolean well) {
        notice.tell(words, well);
    }

    private void told(People.Change change, String name) {
        if (change instanceof People.Change.Word word) {
            tell(Text.of("people.word", name), true);
            Span told = Controls.words(word.word(), "starting-word");
            notice.add(told, new Paragraph(Text.of("people.word.words")));
        } else if (change instanceof People.Change.Refused refused) {
            tell(Text.of(refused.why().key(), People.LONGEST_NAME), false);
        } else {
            tell(Text.of("people.done", name), true);
        }
    }

    private static Section panel(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.add(content);
        section.addClassName("panel");
        return section;
    }

    private static Map<String, String> roles() {
        Map<String, String> roles = new LinkedHashMap<>();
        Arrays.stream(Role.values()).forEach(r -> roles.put(r.name(), Text.of("people.role." + r.word())));
        return roles;
    }

    private Section peopleList() {
        Div list = new Div();
        list.addClassName("people-list");
        list.getElement().setAttribute("role", "list");
        people.all().forEach(c -> list.add(row(c)));
        return panel(Text.of("people.list"), list);
    }

    private Div row(Colleague colleague) {
        String name = colleague.person().name();
        Span title = Controls.words(name, "person-name");
        Span state = Controls.words(Text.of(state(colleague)), "soft");
        Div select = Controls.select("role-" + colleague.id(), Text.of("people.role-of", name), roles(), colleague.person().role().name(),
                chosen -> act(() -> told(people.changeRole(colleague.id(), Role.valueOf(chosen), person()), name)));
        Div row = new Div(title, state, select, labelled("people.reset", name, () -> told(people.reset(colleague.id(), person()), name)),
                colleague.active() ? labelled("people.off", name, () -> told(people.switchOff(colleague.id(), person()), name))
                        : labelled("people.on", name, () -> told(people.switchOn(colleague.id(), person()), name)));
        row.addClassName("person-row");
        row.setClassName("off", !colleague.active());
        row.getElement().setAttribute("role", "listitem");
        return row;
    }

    private Component labelled(String key, String name, Runnable change) {
        Component button = Controls.button(Text.of(key), "quiet", () -> act(change));
        button.getElement().setAttribute("aria-label", Text.of(key + ".label", name));
        return button;
    }

    private static String state(Colleague colleague) {
        if (!colleague.active()) {
            return "people.state.off";
        }
        if (!colleague.hasPin() && !colleague.hasPassword()) {
            return colleague.starting() ? "people.state.starting" : "people.state.none";
        }
        return colleague.hasPin() && colleague.hasPassword() ? "people.state.both" : colleague.hasPin() ? "people.state.pin" : "people.state.password";
    }

    private Section adding() {
        Input name = new Input();
        name.getElement().setAttribute("autocomplete", "off");
        Div fields = new Div(Controls.labelled("people-name", Text.of("people.name"), name),
                Controls.select("people-role", Text.of("people.role"), roles(), role.name(), chosen -> role = Role.valueOf(chosen)),
                Controls.button(Text.of("people.add.button"), "strong", () -> act(() -> told(people.add(name.getValue(), role, person()), name.getValue().strip()))));
        fields.addClassName("fields");
        return panel(Text.of("people.add"), new Paragraph(Text.of("people.add.words")), fields);
    }

    private Section tablets() {
        UnorderedList list = new UnorderedList();
        list.addClassName("tablet-list");
        Optional<Tablet> here = door().place().tablet();
        for (Tablet tablet : door().tablets().all()) {
            boolean mine = here.filter(t -> t.id() == tablet.id()).isPresent();
            ListItem item = new ListItem(Controls.words(tablet.name(), "person-name"), Controls.words(Text.of(mine ? "people.tablet.here" : "people.tablet.by",
                    tablet.enrolledBy(), Text.moment(door().events().moment(tablet.enrolledAt()).toLocalDateTime())), "soft"),
                    labelled("people.tablet.revoke", tablet.name(), () -> {
                        door().tablets().revoke(tablet.id(), person());
                        if (mine) {
                            TabletCookie.takeAway(VaadinRequest.getCurrent(), VaadinResponse.getCurrent());
                            again();
                        }
                        tell(Text.of("people.tablet.revoked", tablet.name()), true);
                    }));
            list.add(item);
        }
        Section section = panel(Text.of("people.tablets"), new Paragraph(Text.of("people.tablets.words")), list);
        if (here.isEmpty()) {
            Input name = new Input();
            Div fields = new Div(Controls.labelled("tablet-name", Text.of("people.tablet.name"), name),
                    Controls.button(Text.of("people.tablet.enrol"), "strong", () -> act(() -> enrol(name.getValue().strip()))));
            fields.addClassName("fields");
            section.add(fields);
        }
        return section;
    }

    /** The browser shows its mark, or shows it no more, from the next request on. */
    private void again() {
        getUI().ifPresent(ui -> ui.getPage().reload());
    }

    private void enrol(String name) {
        if (name.isEmpty() || name.length() > People.LONGEST_NAME) {
            tell(Text.of("people.tablet.no-name", People.LONGEST_NAME), false);
            return;
        }
        TabletCookie.give(VaadinRequest.getCurrent(), VaadinResponse.getCurrent(), door().tablets().enrol(name, person()));
        again();
    }

    private Section locking() {
        Map<String, String> minutes = new LinkedHashMap<>();
        List.of(1, 2, 3, 5, 10, 15, 30).forEach(m -> minutes.put(String.valueOf(m), Text.of("people.minutes", m)));
        int present = people.lockMinutes();
        minutes.putIfAbsent(String.valueOf(present), Text.of("people.minutes", present));
        return panel(Text.of("people.lock"), new Paragraph(Text.of("people.lock.words", People.elsewhereMinutes())),
                Controls.select("people-lock", Text.of("people.lock.after"), minutes, String.valueOf(present), chosen -> act(() -> {
                    people.lockAfter(Integer.parseInt(chosen), person());
                    tell(Text.of("people.lock.done"), true);
                })));
    }

    private Section history() {
        UnorderedList list = new UnorderedList();
        list.addClassName("people-events");
        for (PeopleEvent event : door().events().newest(EVENTS)) {
            list.add(new ListItem(Text.of("people.event." + event.kind().name().toLowerCase(Locale.ROOT), event.author(), event.words(),
                    Text.moment(door().events().moment(event.madeAt()).toLocalDateTime()))));
        }
        return panel(Text.of("people.events"), list);
    }
}
