package boughwright.guard;

import java.time.Duration;
import java.util.Optional;

/** A token bucket: it holds so many tokens and fills at an even pace. Safe for several threads. */
final class Bucket {

    private final double most;
    private final double perNano;
    private double tokens;
    private long filledAt;

    /** @param perMinute tokens that come in a minute; as many as it holds */
    Bucket(int perMinute, long nanos) {
        this.most = perMinute;
        this.perNano = perMinute / (double) Duration.ofMinutes(1).toNanos();
        this.tokens = perMinute;
        this.filledAt = nanos;
    }

    /** Takes a token. @return how long until there is one, if there is none now */
    synchronized Optional<Duration> take(long nanos) {
        tokens = Math.min(most, tokens + Math.max(0, nanos - filledAt) * perNano);
        filledAt = nanos;
        if (tokens >= 1) {
            tokens--;
            return Optional.empty();
        }
        return Optional.of(Duration.ofNanos((long) Math.ceil((1 - tokens) / perNano)));
    }

    /** Whether it is as good as a new one. */
    synchronized boolean full(long nanos) {
        return tokens + Math.max(0, nanos - filledAt) * perNano >= most;
    }
}
