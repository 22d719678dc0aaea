package boughwright.palette;

/**
 * Two colours beside one another.
 *
 * @param difference CIEDE2000
 */
public record Pair(Tone one, Tone other, double difference) {

    /** How much of what is seen the smaller of the two takes: so much of the pair can be seen side by side. */
    double weight() {
        return Math.min(one.share(), other.share());
    }
}
