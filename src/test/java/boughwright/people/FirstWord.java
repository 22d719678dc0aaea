package boughwright.people;

/** The word that the log shows at first start, for tests in which the first manager comes. */
public final class FirstWord {

    private FirstWord() {
    }

    public static String of(People people) {
        return people.firstWord();
    }
}
