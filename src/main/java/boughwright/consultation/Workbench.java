package boughwright.consultation;

import boughwright.catalogue.Catalogue;
import boughwright.kit.Patience;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.rulebook.Rulebook;
import boughwright.text.Language;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Where kits are worked out for those who wait. Proposals take their turns in the order in which they were asked for, as many at once as there are
 * processors: on a busy Saturday all would else be worked on at once, each be late, and nobody's next question be answered meanwhile. The
 * other ways beside a proposal, which nobody has asked for yet, have one turn among them.
 *
 * <p>What was worked out lately is recalled: an interview's end, the page that shows its plan and the printed plan ask for the same within seconds, and
 * the same brief, wishes, seed, house rules and goods give the same proposal. Safe for several threads; of two who ask for the same at once both work it out.
 */
final class Workbench {

    private static final int MOST = 32;
    /** How often one who waits looks whether he is still wanted. */
    private static final long GLANCE_MILLIS = 100;
    private static final Duration EVER = Duration.ofDays(1);

    /** Rulebooks and catalogues are compared as objects: what was opened or counted anew is another. */
    private record Asked(Rulebook rulebook, Catalogue catalogue, String brief, Adjustments hand, long seed, Language language) {
    }

    private final Duration longest;
    private final Semaphore proposals;
    private final Semaphore beside = new Semaphore(1, true);
    private final Map<Asked, Outcome> made = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Outcome> eldest) {
            return size() > MOST;
        }
    };

    /**
     * @param atOnce proposals, from 1
     * @param longest that the other ways wait for their turn
     */
    Workbench(int atOnce, Duration longest) {
        this.proposals = new Semaphore(atOnce, true);
        this.longest = longest;
    }

    /** @throws CancellationException when {@code patience} is cancelled on the way */
    Outcome proposal(Designer designer, String brief, Adjustments hand, long seed, Patience patience) {
        Asked asked = new Asked(designer.rulebook(), designer.catalogue(), brief, hand, seed, Language.now());
        synchronized (made) {
            Outcome before = made.get(asked);
            if (before != null) {
                return before;
            }
        }
        Outcome outcome = inTurn(proposals, EVER, patience, () -> designer.propose(brief, hand, seed, patience)).orElseThrow();
        synchronized (made) {
            made.put(asked, outcome);
        }
        return outcome;
    }

    /**
     * What nobody has asked for yet, one at a time.
     *
     * @return empty when the shop is so full that no turn came up in time
     * @throws CancellationException when {@code patience} is cancelled on the way
     */
    <T> Optional<T> beside(Patience patience, Supplier<T> work) {
        return inTurn(beside, longest, patience, work);
    }

    private static <T> Optional<T> inTurn(Semaphore turns, Duration longest, Patience patience, Supplier<T> work) {
        try {
            long until = System.nanoTime() + longest.toNanos();
            while (!turns.tryAcquire(GLANCE_MILLIS, TimeUnit.MILLISECONDS)) {
                if (patience.cancelled()) {
                    throw new CancellationException("nobody waits for it any longer");
                }
                if (System.nanoTime() > until) {
                    return Optional.empty();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the kiosk is being closed");
        }
        try {
            return Optional.of(work.get());
        } finally {
            turns.release();
        }
    }
}
