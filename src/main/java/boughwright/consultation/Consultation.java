package boughwright.consultation;

import boughwright.measure.Units;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A consultation from its first answer on; what was proposed in it is {@link Saved}.
 *
 * @param code by which it is found again, on any tablet and in later years
 * @param begunAt UTC, as {@code touchedAt}
 * @param touchedAt when something was last answered or changed
 * @param nickname what the customer likes to be called by; mostly empty
 * @param language tag of the language in which it is held
 * @param units in which lengths are said
 * @param question where it stands, in the words of the screens; empty for one that came over the interface
 * @param answers what the interview has heard so far, as the JSON of a brief that need not be whole; empty for one that came over the interface
 * @param follows code of the consultation from which this one was copied or which it takes up a year later
 */
public record Consultation(String code, LocalDateTime begunAt, LocalDateTime touchedAt, String nickname, String language, Units units, String question,
        String answers, Optional<String> follows) {

    /** The code as it is shown and said: {@code KELP 4 MOSS}. */
    public String spoken() {
        return spoken(code);
    }

    /** A code as it is kept, as it is shown and said. */
    public static String spoken(String code) {
        return Codes.spoken(code);
    }
}
