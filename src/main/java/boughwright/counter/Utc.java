package boughwright.counter;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;

/** Moments as they are kept. */
final class Utc {

    private Utc() {
    }

    /** This moment in UTC, as exactly as databases keep it. */
    static LocalDateTime now(Clock clock) {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC).truncatedTo(ChronoUnit.MICROS);
    }
}
