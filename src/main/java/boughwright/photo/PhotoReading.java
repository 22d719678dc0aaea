package boughwright.photo;

/** What came of reading a picture. */
public sealed interface PhotoReading {

    record Read(PhotoColours colours) implements PhotoReading {
    }

    record Refused(Refusal why) implements PhotoReading {
    }
}
