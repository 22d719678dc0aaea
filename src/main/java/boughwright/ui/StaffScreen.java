package boughwright.ui;

import boughwright.people.Person;
import boughwright.people.Role;
import boughwright.people.SignedIn;
import boughwright.text.Text;
import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.ClientCallable;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A screen for some roles alone: a door stands before it, and it locks by itself when nobody touches it for long. */
abstract class StaffScreen extends Screen {

    private final Set<Role> roles;
    private final StaffDoor door;

    /** @param roles that may open it; a manager may open every screen */
    StaffScreen(String name, Set<Role> roles, StaffDoor door) {
        super("house");
        addClassName(name);
        this.roles = roles;
        this.door = door;
    }

    /** A door at which nobody has signed in stays; behind it may still be what a customer has left. */
    @Override
    final boolean rest() {
        return OpenCodes.noneHere();
    }

    /** Shows the screen, or its door. */
    final void open() {
        removeAll();
        Optional<Person> person = Staff.present();
        Staff.signedIn().ifPresent(SignedIn::touched);
        if (person.isEmpty()) {
            closed();
            shut(new SignIn(door, this::open));
        } else if (!person.get().role().isOneOf(roles)) {
            closed();
            shut(notFor(person.get()));
        } else {
            opened(person.get().name());
            watch();
        }
        tellPage();
    }

    private void shut(Component inPlace) {
        Main main = new Main(inPlace);
        main.addClassName("door");
        Header header = new Header(brand(), new LanguageChoice());
        header.addClassName("bar");
        if (door.demo()) {
            header.add(demo());
        }
        add(header, main);
    }

    /** The door, or the page, in the words of another language. */
    @Override
    void languageChanged() {
        super.languageChanged();
        open();
    }

    private Div notFor(Person person) {
        String others = roles.stream().sorted().map(r -> Text.of("people.role." + r.word())).collect(Collectors.joining(", "));
        Div words = new Div(new H1(Text.of("staff.not-for")), new Paragraph(Text.of("staff.not-for.words", person.name(), Text.of("people.role." + person.role().word()))));
        if (!others.isEmpty()) {
            words.add(new Paragraph(Text.of("staff.not-for.roles", others)));
        }
        Anchor start = new Anchor(StaffView.ROUTE, Text.of("staff.start"));
        start.addClassNames("button", "strong");
        words.add(start, Controls.button(Text.of("staff.other"), "quiet", this::leave));
        words.addClassName("sign-in");
        return words;
    }

    /** Adds everything to the screen, which is empty. @param name of who is signed in */
    abstract void opened(String name);

    /** Nobody is signed in any more. */
    void closed() {
    }

    /** Whether whoever is there may not use this screen any more; its door stands there then. Asked before everything that changes something. */
    public boolean gone() {
        if (Staff.present().filter(p -> p.role().isOneOf(roles)).isEmpty()) {
            open();
            return true;
        }
        Staff.signedIn().ifPresent(SignedIn::touched);
        return false;
    }

    /** Who is signed in. Only while the screen is open. */
    final Person person() {
        return Staff.present().orElseThrow();
    }

    final StaffDoor door() {
        return door;
    }

    Header header(Component... middle) {
        Header header = new Header(brand());
        if (door.demo()) {
            header.add(demo());
        }
        header.add(middle);
        Anchor start = new Anchor(StaffView.ROUTE, Text.of("staff.start"));
        Anchor me = new Anchor(ProfileView.ROUTE, Text.of("staff.me", person().name(), Text.of("people.role." + person().role().word())));
        me.addClassName("me");
        boolean tablet = door.place().tablet().isPresent();
        Div who = new Div(start, me, Controls.button(Text.of(tablet ? "staff.lock" : "staff.out"), "quiet", this::leave));
        who.addClassName("who");
        header.add(new LanguageChoice(), who);
        header.addClassName("bar");
        return header;
    }

    private static Component demo() {
        return Controls.words(Text.of("staff.demo"), "demo");
    }

    private static Anchor brand() {
        Anchor brand = new Anchor("", Text.of("brand"));
        brand.addClassName("brand");
        return brand;
    }

    /** Signs out in every tab of this browser; whoever comes next finds the door of the same screen. */
    private void leave() {
        getUI().ifPresent(Staff::signOut);
    }

    /** Nobody has touched this tab for long; another one may have been touched. */
    @ClientCallable
    private void idle() {
        if (Staff.signedIn().isPresent() && Staff.present().isEmpty()) {
            leave();
        }
    }

    /** This tab was touched. */
    @ClientCallable
    private void here() {
        Staff.signedIn().ifPresent(SignedIn::touched);
    }

    private void watch() {
        Staff.signedIn().ifPresent(signedIn -> getElement().executeJs("""
                clearTimeout(this.lockTimer);
                this.lockAfter = $0;
                const wait = () => {
                    clearTimeout(this.lockTimer);
                    // A little later than the kiosk's own count, which begins with the last that it heard.
                    this.lockTimer = setTimeout(() => { wait(); this.$server.idle(); }, this.lockAfter + 500);
                };
                if (!this.lockWatched) {
                    this.lockWatched = true;
                    let told = Date.now();
                    const touched = () => {
                        wait();
                        if (Date.now() - told > Math.min(15000, this.lockAfter / 4)) {
                            told = Date.now();
                            this.$server.here();
                        }
                    };
                    for (const sign of ['pointerdown', 'keydown']) this.addEventListener(sign, touched);
                }
                wait();""", (int) signedIn.lock().toMillis()));
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        super.onAttach(attach);
        watch();
    }
}
