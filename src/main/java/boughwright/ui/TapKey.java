package boughwright.ui;

import java.util.UUID;

/**
 * The key of one wish that a finger may tap twice: the same until the screen has shown what came of it, so that a second tap, or the same
 * message sent again over a bad line, is the same wish.
 */
final class TapKey {

    private String key = UUID.randomUUID().toString();

    String key() {
        return key;
    }

    /** What came of it is shown: the next tap is another wish. */
    void shown() {
        key = UUID.randomUUID().toString();
    }
}
