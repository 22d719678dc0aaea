package boughwright.people;

import java.util.Optional;
import org.springframework.context.ApplicationContext;

/** People who have signed in, for tests that begin behind the door. */
public final class SignedInAs {

    private static final String PASSWORD = "four calling birds";

    private SignedInAs() {
    }

    /** Somebody of a role, who is added at the first time. */
    public static SignedIn any(ApplicationContext kiosk, Role role) {
        return any(kiosk.getBean(People.class), role);
    }

    public static SignedIn any(People people, Role role) {
        Place here = new Place(Optional.empty(), "127.0.0.1");
        String name = "Test " + role.word();
        Person test = new Person("Test", Role.MANAGER);
        // Other tests of the same kiosk may have switched them off.
        people.all().stream().filter(c -> c.person().name().equals(name) && !c.active()).forEach(c -> people.switchOn(c.id(), test));
        Entry entry = people.enter(name, PASSWORD, here);
        if (entry instanceof Entry.In in) {
            return in.signedIn();
        }
        People.Change change = people.add(name, role, test);
        Starter starter = ((Entry.Starts) people.enter(name, ((People.Change.Word) change).word(), here)).starter();
        return ((People.Choice.Chosen) people.choose(starter, "", PASSWORD, here)).signedIn();
    }
}
