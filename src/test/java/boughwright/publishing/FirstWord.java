package boughwright.publishing;

/** The word that the log shows at first start, for tests that choose the manager's password. */
public final class FirstWord {

    private FirstWord() {
    }

    public static String of(HousePassword account) {
        return account.firstWord();
    }
}
