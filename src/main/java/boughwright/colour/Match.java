package boughwright.colour;

/**
 * Whether two colours that lie side by side pass for one, look like a mistake, or are plainly two.
 *
 * <p>The bounds in CIEDE2000 are common practice, no published source; the design score counts by the same.
 */
public enum Match {

    /** They pass for one. */
    ALIKE,
    /** So near that they seem meant to match, so far that one sees they do not. */
    NEAR_MISS,
    /** Plainly two colours. */
    APART;

    /** CIEDE2000 up to which two colours pass for one. */
    public static final double ALIKE_UP_TO = 3;
    /** CIEDE2000 from which on two colours no longer read as meant to match. */
    public static final double APART_FROM = 8;

    /** @param difference CIEDE2000 */
    public static Match of(double difference) {
        return difference <= ALIKE_UP_TO ? ALIKE : difference < APART_FROM ? NEAR_MISS : APART;
    }

    public static Match of(Srgb one, Srgb other) {
        return of(Lab.of(one).difference(Lab.of(other)));
    }
}
