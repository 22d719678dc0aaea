package boughwright;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until its hands are moved. */
public final class HandClock extends Clock {

    private Instant now;

    /** @param start as ISO 8601 writes it, in UTC */
    public HandClock(String start) {
        set(start);
    }

    public void set(String moment) {
        now = Instant.parse(moment);
    }

    /** @param by may be negative */
    public void forward(Duration by) {
        now = now.plus(by);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Instant instant() {
        return now;
    }
}
