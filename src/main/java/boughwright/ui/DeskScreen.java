package boughwright.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.router.HasDynamicTitle;
import boughwright.text.Text;

/** A screen for staff that is one page: drawn anew after each thing that was done on it, with a line that tells what came of it. */
abstract class DeskScreen extends StaffScreen implements HasDynamicTitle {

    private final StaffPlace place;
    private final Main main = new Main();
    private final StaffNotice notice = new StaffNotice();

    DeskScreen(String name, StaffPlace place, StaffDoor door) {
        super(name, place.roles(), door);
        this.place = place;
    }

    /** Adds everything to the page, which is empty. */
    abstract void draw(Main page);

    /** What stands in the bar beside the place's name. */
    Component[] beside() {
        return new Component[0];
    }

    @Override
    public final String getPageTitle() {
        return Text.of(place.route() + ".page-title");
    }

    @Override
    final void opened(String name) {
        Div where = new Div(Controls.words(Text.of(place.key()), "summary"));
        where.add(beside());
        where.addClassName("desk-where");
        add(header(where), main);
        again();
    }

    @Override
    void closed() {
        main.removeAll();
        notice.removeAll();
    }

    @Override
    void languageChanged() {
        notice.removeAll();
        open();
        super.languageChanged();
    }

    /** Draws the page as it is now; what was told stays. */
    final void again() {
        main.removeAll();
        draw(main);
    }

    /** Does something unless whoever is there may not any more, then draws everything anew. */
    final void act(Runnable change) {
        if (!gone()) {
            notice.removeAll();
            change.run();
            again();
        }
    }

    /** Where {@link #tell} speaks; each page puts it where its reader looks. */
    final StaffNotice notice() {
        return notice;
    }

    final void tell(String words, boolean well) {
        notice.tell(words, well);
    }
}
