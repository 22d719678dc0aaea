package boughwright.ui;

import boughwright.people.Role;
import java.util.Locale;
import java.util.Set;

/** Where staff may go, and who; the start page shows these in this order. Whoever adds a screen for staff adds it here. */
enum StaffPlace {

    COUNTER(CounterView.ROUTE, Set.of(Role.ASSOCIATE)),
    PICKING(PickingView.ROUTE, Set.of(Role.STOCK_ROOM, Role.ASSOCIATE)),
    HOUSE_RULES(HouseRulesView.ROUTE, Set.of(Role.MERCHANDISER)),
    SHELF(ShelfView.ROUTE, Set.of(Role.MERCHANDISER, Role.STOCK_ROOM)),
    FIGURES(FiguresView.ROUTE, Set.of()),
    TERMS(TermsView.ROUTE, Set.of()),
    PEOPLE(PeopleView.ROUTE, Set.of()),
    PROFILE(ProfileView.ROUTE, Set.of(Role.values()));

    private final String route;
    private final Set<Role> roles;

    /** @param roles besides the manager, who may go everywhere */
    StaffPlace(String route, Set<Role> roles) {
        this.route = route;
        this.roles = roles;
    }

    String route() {
        return route;
    }

    Set<Role> roles() {
        return roles;
    }

    /** Its title in messages; what it is for stands under the same key and {@code .words}. */
    String key() {
        return "staff.place." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
