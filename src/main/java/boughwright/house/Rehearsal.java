package boughwright.house;

import boughwright.brief.Brief;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.house.Rehearsed.Kind;
import boughwright.house.Rehearsed.Subject;
import boughwright.kit.Kit;
import boughwright.kit.Patience;
import boughwright.measure.Money;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.proposal.Designer;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/**
 * Replays consultations under a draft and under the edition that is live, and says what would change.
 *
 * <p>Either by needs alone, which is fast, or whole, with kit and layout. A consultation whose needs, demands and weights are the same
 * either way is the same whole: nothing after the rulebook differs. The same subjects and editions give the same report. May be cancelled from any thread.
 */
public final class Rehearsal {

    private static final int MOST_REMEMBERED = 6_000;

    private final Memory memory;
    private final Designer live;
    private final Designer draft;
    private final boolean whole;
    private final Patience patience = Patience.usual();

    /** Kits under the live edition, which several drafts are rehearsed against. Safe for several threads. */
    public static final class Memory {

        private final Designer live;
        private final Map<Subject, Optional<Kit>> kits = new ConcurrentHashMap<>();

        public Memory(Designer live) {
            this.live = live;
        }

        public Designer live() {
            return live;
        }

        private Optional<Kit> kit(Subject subject, Brief brief, Patience patience) {
            Optional<Kit> known = kits.get(subject);
            if (known == null) {
                known = live.kitIfPossible(brief, subject.hand(), patience);
                if (kits.size() < MOST_REMEMBERED) {
                    kits.put(subject, known);
                }
            }
            return known;
        }
    }

    /** @param whole with kit and layout, not only by needs */
    public Rehearsal(Memory memory, Designer draft, boolean whole) {
        this.memory = memory;
        this.live = memory.live();
        this.draft = draft;
        this.whole = whole;
    }

    /** Nobody waits any longer: {@link #of} throws. */
    public void cancel() {
        patience.cancel();
    }

    /**
     * @param progress told how many are done, from any thread
     * @throws CancellationException when it was cancelled
     */
    public RehearsalReport of(List<Subject> subjects, int threads, IntConsumer progress) {
        ExecutorService workers = Executors.newFixedThreadPool(threads, run -> {
            Thread worker = new Thread(run, "rehearsal");
            worker.setDaemon(true);
            return worker;
        });
        try {
            AtomicInteger done = new AtomicInteger();
            List<Future<Rehearsed>> futures = new ArrayList<>();
            for (Subject subject : subjects) {
                Callable<Rehearsed> task = () -> {
                    Rehearsed rehearsed = rehearse(subject);
                    progress.accept(done.incrementAndGet());
                    return rehearsed;
                };
                futures.add(workers.submit(Text.carriedCall(task)));
            }
            List<Rehearsed> all = new ArrayList<>();
            for (Future<Rehearsed> future : futures) {
                all.add(future.get());
            }
            return new RehearsalReport(all, whole);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CancellationException cancelled) {
                throw cancelled;
            }
            throw new IllegalStateException("a consultation could not be rehearsed", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the rehearsal was interrupted");
        } finally {
            workers.shutdownNow();
        }
    }

    private Rehearsed rehearse(Subject subject) {
        if (patience.cancelled()) {
            throw new CancellationException("the rehearsal is no longer wanted");
        }
        Optional<Brief> was = read(live, subject);
        Optional<Brief> is = read(draft, subject);
        if (is.isEmpty()) {
            return new Rehearsed(subject, was.isEmpty() ? Kind.SAME : Kind.UNREADABLE, new TreeMap<>(), new TreeMap<>(), Optional.empty(),
                    Optional.empty(), Optional.empty());
        }
        Optional<Money> budget = is.get().budget();
        Optional<Needs> before = was.map(b -> live.rulebook().needs(b, subject.hand()));
        Needs after = draft.rulebook().needs(is.get(), subject.hand());
        SortedMap<Layer, Integer> quantities = difference(before, after);
        boolean same = was.equals(is) && before.isPresent() && alike(before.get(), after);
        if (!whole || same) {
            return new Rehearsed(subject, same ? Kind.SAME : Kind.CHANGED, quantities, new TreeMap<>(), Optional.empty(), Optional.empty(), budget);
        }
        Optional<Kit> former = was.flatMap(b -> memory.kit(subject, b, patience));
        Optional<Proposal> next = draft.ifPossible(is.get(), subject.hand(), subject.seed(), patience);
        Kind kind = former.isPresent() ? next.isPresent() ? changed(former.get(), before.get(), next.get()) ? Kind.CHANGED : Kind.SAME : Kind.NEW_CONFLICT
                : next.isPresent() ? Kind.CONFLICT_GONE : Kind.STILL_CONFLICT;
        return new Rehearsed(subject, kind, quantities, prices(former, next), former.map(Kit::total), next.map(p -> p.kit().total()), budget);
    }

    private static SortedMap<Layer, Money> prices(Optional<Kit> former, Optional<Proposal> next) {
        SortedMap<Layer, Money> prices = new TreeMap<>();
        if (former.isPresent() && next.isPresent()) {
            next.get().kit().lines().forEach(l -> prices.merge(l.layer(), l.price(), Money::plus));
            former.get().lines().forEach(l -> prices.merge(l.layer(), Money.zero(l.price().currency()).minus(l.price()), Money::plus));
            prices.values().removeIf(m -> m.coins() == 0);
        }
        return prices;
    }

    /** The same products in the same numbers, under the same measures, hang the same: the seed is the consultation's own. */
    private static boolean changed(Kit former, Needs before, Proposal next) {
        return !goods(former).equals(goods(next.kit())) || !quantities(before).equals(quantities(next.needs())) || !before.ribbon().equals(next.needs().ribbon())
                || !before.accents().equals(next.needs().accents());
    }

    private static List<String> goods(Kit kit) {
        return kit.lines().stream().map(l -> l.needId() + " " + l.sku() + " " + l.quantity() + " " + l.packs()).toList();
    }

    private static Optional<Brief> read(Designer designer, Subject subject) {
        return new BriefReader(designer.rulebook().choices()).read(subject.brief()) instanceof BriefReading.Read read ? Optional.of(read.brief()) : Optional.empty();
    }

    /** Whether all that decides the kit is the same; what the sentences say does not. */
    private static boolean alike(Needs before, Needs after) {
        return quantities(before).equals(quantities(after)) && demands(before).equals(demands(after)) && before.ribbon().equals(after.ribbon())
                && before.accents().equals(after.accents()) && before.weights().equals(after.weights());
    }

    private static Map<String, Integer> quantities(Needs needs) {
        Map<String, Integer> quantities = new TreeMap<>();
        needs.needs().forEach(n -> quantities.put(n.id(), n.quantity()));
        return quantities;
    }

    private static List<?> demands(Needs needs) {
        return needs.rules().stream().map(r -> List.of(r.demand(), r.reason().row())).toList();
    }

    private static SortedMap<Layer, Integer> difference(Optional<Needs> before, Needs after) {
        SortedMap<Layer, Integer> difference = new TreeMap<>();
        after.needs().forEach(n -> add(difference, n, 1));
        before.ifPresent(needs -> needs.needs().forEach(n -> add(difference, n, -1)));
        difference.values().removeIf(n -> n == 0);
        return difference;
    }

    private static void add(SortedMap<Layer, Integer> sum, Need need, int sign) {
        // Groupings and clusters are made of stems that are counted by themselves; bulbs are counted as such.
        if (need.role().bought() || need.layer() == Layer.ACCENTS) {
            sum.merge(need.layer(), sign * need.quantity(), Integer::sum);
        }
    }

    /** Both proposals of one consultation, for their drawings. */
    public record Pair(Optional<Proposal> before, Optional<Proposal> after) {
    }

    /** Works one consultation out again, to show it side by side. */
    public Pair pair(Subject subject) {
        return new Pair(read(live, subject).flatMap(b -> live.ifPossible(b, subject.hand(), subject.seed(), patience)),
                read(draft, subject).flatMap(b -> draft.ifPossible(b, subject.hand(), subject.seed(), patience)));
    }
}
