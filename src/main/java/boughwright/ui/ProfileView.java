package boughwright.ui;

import boughwright.people.People;
import boughwright.people.Role;
import boughwright.people.Secrets;
import boughwright.people.SignedIn;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.Set;

/** Where everybody changes their own PIN and password. */
@Route(ProfileView.ROUTE)
class ProfileView extends StaffScreen implements HasDynamicTitle, BeforeEnterObserver {

    static final String ROUTE = "profile";

    ProfileView(StaffDoor door) {
        super("profile", Set.of(Role.values()), door);
    }

    @Override
    public String getPageTitle() {
        return Text.of("profile.page-title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        open();
    }

    /** How a secret is changed. */
    private interface Way {

        People.Choice change(SignedIn who, String present, String next);
    }

    @Override
    void opened(String name) {
        People people = door().people();
        Main main = new Main(new H1(Text.of("profile.head", name)), new Paragraph(Text.of("profile.words")),
                section("password", Text.of("profile.password.words", Secrets.SHORTEST_PASSWORD), (who, present, next) -> people.changePassword(who, present, next, door().place())),
                section("pin", Text.of("profile.pin.words", Secrets.SHORTEST_PIN, Secrets.LONGEST_PIN), (who, present, next) -> people.changePin(who, present, next, door().place())));
        add(header(), main);
    }

    private Section section(String what, String words, Way way) {
        Input present = secret("current-password");
        Input next = secret("new-password");
        Input again = secret("new-password");
        if (what.equals("pin")) {
            next.getElement().setAttribute("inputmode", "numeric");
            again.getElement().setAttribute("inputmode", "numeric");
        }
        Paragraph said = new Paragraph();
        said.getElement().setAttribute("role", "status");
        Paragraph soft = new Paragraph(words);
        soft.addClassName("soft");
        Div fields = new Div(Controls.labelled("profile-present-" + what, Text.of("profile.present"), present),
                Controls.labelled("profile-new-" + what, Text.of("profile.new-" + what), next), Controls.labelled("profile-again-" + what, Text.of("profile.again"), again));
        fields.addClassName("fields");
        Section section = new Section(new H2(Text.of("profile." + what)), soft, fields, said, Controls.button(Text.of("profile.change-" + what), "strong", () -> {
            if (gone()) {
                return;
            }
            if (!next.getValue().equals(again.getValue())) {
                say(said, Text.of(what.equals("pin") ? "staff.pins-differ" : "staff.differ"), false);
                return;
            }
            People.Choice choice = way.change(Staff.signedIn().orElseThrow(), present.getValue(), next.getValue());
            boolean done = choice instanceof People.Choice.Chosen;
            say(said, done ? Text.of("profile.changed-" + what) : SignIn.words(choice), done);
            present.setValue("");
            if (done) {
                next.setValue("");
                again.setValue("");
            }
        }));
        section.addClassName("panel");
        return section;
    }

    private static void say(Paragraph said, String words, boolean well) {
        said.setText(words);
        said.setClassName("fault", !well);
        said.setClassName("well", well);
    }

    private static Input secret(String autocomplete) {
        Input input = new Input();
        input.setType("password");
        input.getElement().setAttribute("autocomplete", autocomplete);
        return input;
    }
}
