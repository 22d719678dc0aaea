package boughwright.kit;

/** The time was over before any kit was found, and before it was clear that there is none. */
public final class NoKitInTime extends RuntimeException {

    public NoKitInTime() {
        super("no kit was found in the time given");
    }
}
