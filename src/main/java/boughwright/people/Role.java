package boughwright.people;

import java.util.Locale;
import java.util.Set;

/** What somebody does in the shop. A manager may do everything. */
public enum Role {

    /** Sees to customers at the counter. */
    ASSOCIATE,
    /** Picks kits and counts stock. */
    STOCK_ROOM,
    /** Keeps house rules and products. */
    MERCHANDISER,
    /** Keeps the people too. */
    MANAGER;

    /** As messages and rights over HTTP call it: {@code stock-room}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether this role is one of those, or may do everything. */
    public boolean isOneOf(Set<Role> roles) {
        return this == MANAGER || roles.contains(this);
    }
}
