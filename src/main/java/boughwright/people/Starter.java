package boughwright.people;

/** Somebody whose starting word was right a moment ago. */
public final class Starter {

    private final int id;
    private final int stamp;
    private final String name;

    Starter(int id, int stamp, String name) {
        this.id = id;
        this.stamp = stamp;
        this.name = name;
    }

    int id() {
        return id;
    }

    int stamp() {
        return stamp;
    }

    public String name() {
        return name;
    }
}
