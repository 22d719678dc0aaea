package boughwright.intake;

/** What came of recognising a file. */
public sealed interface Opening {

    record Opened(IntakeFile file) implements Opening {
    }

    /** Not a file that can be read; {@code sentence} says why and how to mend it. */
    record Refused(Refusal why, String sentence) implements Opening {
    }
}
