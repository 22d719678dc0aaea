package boughwright.people;

/** The count of wrong tries and the enrolled tablets of a shop in a database in memory, for tests of other packages. */
public final class Guesses {

    private final PeopleFixture shop = PeopleFixture.withManager();

    public Throttle throttle() {
        return shop.throttle;
    }

    public Tablets tablets() {
        return shop.tablets;
    }

    /** The mark of a tablet that is enrolled. */
    public String enrolled() {
        return shop.tablets.enrol("Tablet by the door", shop.ada());
    }
}
