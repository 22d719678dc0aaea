package boughwright.counter;

import boughwright.consultation.Consultation;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Packs that are kept for a customer.
 *
 * @param code of the consultation
 * @param number of the holds made in it, from 1
 * @param madeAt UTC, as are all its times
 * @param endsAt when the packs go back by themselves, unless it has been settled before
 * @param settledAt when it was collected, released or fell
 * @param lines in the order in which one walks past the shelves
 */
public record Hold(String code, int number, LocalDateTime madeAt, String author, LocalDateTime endsAt, State state, Optional<LocalDateTime> settledAt, List<Line> lines) {

    /**
     * HELD: nobody has been to the shelves for it, or not to all. READY: everything that is there lies in the bag. PARTLY: some of it has
     * been collected, the rest is still held. The others are its ends: all collected, given back by somebody, or fallen when its time was up.
     */
    public enum State {
        HELD, READY, PARTLY, COLLECTED, RELEASED, LAPSED;

        /** Whether its packs are still promised. */
        public boolean open() {
            return this == HELD || this == READY || this == PARTLY;
        }
    }

    /**
     * @param packs promised at first
     * @param picked how many lie in the bag; empty until somebody has been at the shelf. Fewer than {@code packs}: no more were found
     * @param collected how many the customer has taken
     * @param putBack whether what was picked and not collected is known to lie on its shelf again
     */
    public record Line(String sku, String name, String shelf, int packs, Optional<Integer> picked, int collected, boolean putBack) {

        /** Packs that were promised and could not be found. */
        public int missing() {
            return picked.map(p -> Math.max(0, packs - p)).orElse(0);
        }

        /** Packs that can still be collected. */
        public int left() {
            return packs - missing() - collected;
        }
    }

    public Hold {
        lines = List.copyOf(lines);
    }

    public String spoken() {
        return Consultation.spoken(code);
    }

    public boolean someMissing() {
        return lines.stream().anyMatch(l -> l.missing() > 0);
    }

    /** Whether some of it lies in a bag that nobody will collect any more. */
    public boolean toPutBack() {
        return !state.open() && lines.stream().anyMatch(l -> !l.putBack() && l.picked().orElse(0) > l.collected());
    }
}
