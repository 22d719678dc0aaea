package boughwright.people;

import java.time.Duration;

/** What came of a try to sign in. */
public sealed interface Entry {

    record In(SignedIn signedIn) implements Entry {
    }

    /** The starting word was right; PIN or password must be chosen before anything else, with {@link People#choose}. */
    record Starts(Starter starter) implements Entry {
    }

    /** Name or secret is not right; which of them is not told. */
    record Wrong() implements Entry {
    }

    /** Too many wrong tries. @param pause how long no try counts */
    record Wait(Duration pause) implements Entry {
    }
}
