package boughwright.ui;

import boughwright.publishing.HousePassword;
import boughwright.text.Text;
import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.ClientCallable;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import java.util.Optional;

/** A screen for staff alone: a door that asks for the password before it, and it closes by itself when nobody touches it for long. */
abstract class StaffScreen extends Screen {

    private final HousePassword password;

    StaffScreen(String name, HousePassword password) {
        super("house");
        addClassName(name);
        this.password = password;
    }

    /** Shows the screen, or its door. */
    final void open() {
        removeAll();
        Optional<String> name = Staff.present();
        if (name.isPresent()) {
            opened(name.get());
            return;
        }
        closed();
        Main main = new Main(new SignIn(password, this::open));
        main.addClassName("door");
        Header header = new Header(brand());
        header.addClassName("bar");
        add(header, main);
    }

    /** Adds everything to the screen, which is empty. @param name of who is signed in */
    abstract void opened(String name);

    /** Nobody is signed in any more. */
    void closed() {
    }

    /** Whether nobody is signed in any more; the door stands there then. */
    public boolean gone() {
        if (Staff.present().isEmpty()) {
            open();
            return true;
        }
        return false;
    }

    Header header(Component... middle) {
        Header header = new Header(brand());
        header.add(middle);
        header.add(Controls.link(Text.of("staff.out"), this::leave));
        header.addClassName("bar");
        return header;
    }

    private static Anchor brand() {
        Anchor brand = new Anchor("", Text.of("brand"));
        brand.addClassName("brand");
        return brand;
    }

    private void leave() {
        Staff.signOut();
        open();
    }

    /** Nobody has touched the page for long: it closes by itself. */
    @ClientCallable
    private void idle() {
        leave();
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        super.onAttach(attach);
        getElement().executeJs("""
                let timer;
                const wait = () => { clearTimeout(timer); timer = setTimeout(() => this.$server.idle(), $0); };
                for (const sign of ['pointerdown', 'keydown']) this.addEventListener(sign, wait);
                wait();""", (int) Staff.IDLE.toMillis());
    }
}
