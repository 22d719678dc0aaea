package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.kit.KitProgramme.Result;
import boughwright.measure.Money;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Reason;
import boughwright.needs.Unit;
import boughwright.text.Text;
import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the kit with the best design score under stock, packs, budget, the house's demands and the customer's wishes, with a
 * proven bound.
 *
 * <p>Deterministic as long as no programme reaches its time limit: the same request gives the same kit. Stateless and safe for
 * several threads; the native solver is loaded once, when the first instance is made.
 */
public final class KitSolver {

    /** The relative gap at which the search for the best stops by itself. */
    static final double GAP = 0;

    /** What the programme's own count and the audit's may differ by; the solver rounds at the ninth digit. */
    private static final double COUNT = 1e-4;

    public KitSolver() {
        Native.load();
    }

    /** Holds the native library; loading it takes about a second, so it happens once and on first use. */
    private static final class Native {
        static {
            Loader.loadNativeLibraries();
        }

        static void load() {
            // Running the initialiser above is the whole of it.
        }
    }

    /** The best kit while all wishes hold; else the conflict among them and the ways out. */
    public KitOutcome solve(Wishes wishes, Patience patience) {
        Set<Wish> all = new LinkedHashSet<>(wishes.inOrder());
        Optional<Kit> kit = best(wishes.holding(all), patience);
        if (kit.isPresent()) {
            return new KitOutcome.Found(kit.get());
        }
        List<Wish> clashing = new QuickXplain<Wish>(held -> possible(wishes.holding(new LinkedHashSet<>(held)), patience)).explain(wishes.inOrder());
        if (clashing.isEmpty()) {
            return new KitOutcome.NoKitFits(new Conflict(List.of(), shortages(wishes.holding(Set.of())), List.of()));
        }
        List<Conflict.Wished> wished = clashing.stream().map(w -> new Conflict.Wished(w.id(), w.text())).toList();
        return new KitOutcome.NoKitFits(new Conflict(wished, List.of(), new WaysOut(this, wishes, patience).of(clashing)));
    }

    /**
     * The best kit for a request, or empty when none fits.
     *
     * @throws NoKitInTime when the time was over before any kit was found
     */
    public Optional<Kit> best(KitRequest request, Patience patience) {
        return best(request, patience, true);
    }

    /**
     * As {@link #best(KitRequest, Patience)}, for somebody who has no use for a kit of fewer points; that there is none is found sooner than
     * the best of those that fall short.
     */
    public Optional<Kit> bestFrom(double points, KitRequest request, Patience patience) {
        return best(request, points, patience, true).filter(kit -> kit.score() >= points);
    }

    /** @param pruned whether dominated candidates are left out first; the score is the same either way */
    Optional<Kit> best(KitRequest request, Patience patience, boolean pruned) {
        return best(request, Double.NEGATIVE_INFINITY, patience, pruned);
    }

    private Optional<Kit> best(KitRequest request, double points, Patience patience, boolean pruned) {
        DesignScore score = new DesignScore(request, Slot.of(request.needs().bought()));
        Optional<Map<String, List<Candidate>>> candidates = candidates(request);
        if (pruned) {
            candidates.ifPresent(c -> prune(request, Optional.of(score), c));
        }
        if (candidates.isEmpty()) {
            return Optional.empty();
        }
        try (KitProgramme programme = new KitProgramme(request, candidates.get())) {
            Result result = programme.best(score, points, GAP, patience);
            if (result instanceof Result.Chosen chosen) {
                return Optional.of(kit(request, chosen.solution().chosen(), chosen.solution().objective(), chosen.solution().bound()));
            }
            if (result instanceof Result.None) {
                return Optional.empty();
            }
        }
        // Not one kit in the time given: the cheapest is found sooner, and its gap says how far it may be from the best.
        return cheapest(request, patience).map(chosen -> kit(request, chosen, Double.NaN, score.most(candidates.get())));
    }

    /** What the cheapest kit costs, whatever its score; empty when none fits. */
    public Optional<Money> least(KitRequest request, Patience patience) {
        return cheapest(request, patience).map(chosen -> total(request, chosen));
    }

    Optional<List<Candidate>> cheapest(KitRequest request, Patience patience) {
        return run(request, programme -> programme.cheapest(patience));
    }

    /** Whether any kit fits; true also when the time did not suffice to tell. */
    boolean possible(KitRequest request, Patience patience) {
        try {
            return run(request, programme -> programme.any(patience)).isPresent();
        } catch (NoKitInTime unknown) {
            return true;
        }
    }

    private interface Search {
        Result in(KitProgramme programme);
    }

    private Optional<List<Candidate>> run(KitRequest request, Search search) {
        Optional<Map<String, List<Candidate>>> candidates = candidates(request);
        candidates.ifPresent(c -> prune(request, Optional.empty(), c));
        if (candidates.isEmpty()) {
            return Optional.empty();
        }
        try (KitProgramme programme = new KitProgramme(request, candidates.get())) {
            Result result = search.in(programme);
            if (result instanceof Result.OutOfTime) {
                throw new NoKitInTime();
            }
            return result instanceof Result.Chosen chosen ? Optional.of(chosen.solution().chosen()) : Optional.empty();
        }
    }

    /** By slot id, in the order of the slots; empty when nothing on the shelf will do for one of them. */
    private static Optional<Map<String, List<Candidate>>> candidates(KitRequest request) {
        Shortlist shortlist = new Shortlist(request);
        Map<String, List<Candidate>> candidates = new LinkedHashMap<>();
        for (Slot slot : Slot.of(request.needs().bought())) {
            List<Candidate> fit = shortlist.candidates(slot);
            if (fit.isEmpty()) {
                return Optional.empty();
            }
            candidates.put(slot.id(), fit);
        }
        return Optional.of(candidates);
    }

    /** @param score empty when only money matters */
    static void prune(KitRequest request, Optional<DesignScore> score, Map<String, List<Candidate>> candidates) {
        Pruning pruning = new Pruning(request, score, candidates);
        candidates.replaceAll(pruning::left);
    }

    private static List<String> shortages(KitRequest request) {
        Shortlist shortlist = new Shortlist(request);
        List<String> shortages = new ArrayList<>();
        for (Slot slot : Slot.of(request.needs().bought())) {
            if (shortlist.candidates(slot).isEmpty()) {
                Need need = slot.first();
                shortages.add(Text.of("kit.shortage", Text.of("role." + need.role().word()), slot.quantity(), need.id(),
                        Text.of("unit." + need.unit().word(), slot.quantity())));
            }
        }
        return shortages.isEmpty() ? List.of(Text.of("kit.shortage.together")) : shortages;
    }

    static Money total(KitRequest request, List<Candidate> chosen) {
        return Money.ofCoins(chosen.stream().mapToLong(Candidate::coins).sum(), currency(request));
    }

    static Money total(KitRequest request, List<Candidate> chosen, Layer layer) {
        return Money.ofCoins(chosen.stream().mapToLong(c -> c.coinsIn(layer)).sum(), currency(request));
    }

    private static Currency currency(KitRequest request) {
        return request.catalogue().products().get(0).price().currency();
    }

    /** @param objective the programme's own count of the score, which the audit must confirm; NaN when there is none */
    private static Kit kit(KitRequest request, List<Candidate> chosen, double objective, double bound) {
        List<KitLine> lines = lines(request.needs(), chosen);
        KitAudit audit = new KitAudit(request, lines);
        List<KitAudit.Fault> faults = audit.faults();
        List<TermScore> terms = audit.terms();
        double score = terms.stream().mapToDouble(TermScore::points).sum();
        if (!faults.isEmpty() || Math.abs(objective - score) > COUNT) {
            throw new IllegalStateException("the kit does not hold what the programme promised: " + faults + ", score " + score + " for " + objective);
        }
        double best = Math.max(score, bound);
        double gap = best - score <= COUNT ? 0 : (best - score) / Math.max(1e-9, Math.abs(score));
        return new Kit(lines, total(request, chosen), request.budget(), score, terms, best, gap);
    }

    /** The lines of a choice, in the order of the needs. */
    static List<KitLine> lines(Needs needs, List<Candidate> chosen) {
        Map<String, KitLine> byNeed = new HashMap<>();
        chosen.forEach(c -> c.shares().forEach(share -> byNeed.put(share.need().id(), line(c, share))));
        return needs.bought().stream().map(n -> byNeed.get(n.id())).toList();
    }

    private static KitLine line(Candidate candidate, Candidate.Share share) {
        Need need = share.need();
        Product product = candidate.product();
        Money unit = product.price();
        return new KitLine(need.id(), need.slot(), product.sku(), product.name(), need.layer(), need.role(), share.quantity(), share.owned(),
                share.packs(), product.pack(), unit, unit.times(share.packs()), product.shelf(), reason(need, share.quantity()));
    }

    /** A roll that is longer than the need's ten yards does with fewer; then the line's number differs from its need's. */
    private static Reason reason(Need need, int quantity) {
        if (need.unit() != Unit.ROLL || quantity == need.quantity()) {
            return need.reason();
        }
        return new Reason(need.reason().rule(), need.reason().row(), Text.of("kit.longer-rolls", quantity, need.reason().text()));
    }

    /**
     * The same kit in the words of a request: names and reasons as its catalogue and its needs give them, which may speak another language.
     *
     * @param request that has the same needs and products as the one that the kit was made for
     */
    public static Kit told(KitRequest request, Kit kit) {
        List<KitLine> lines = kit.lines().stream().map(line -> {
            Product product = request.catalogue().product(line.sku()).orElseThrow();
            Need need = request.needs().need(line.needId()).orElseThrow();
            return new KitLine(line.needId(), line.slot(), line.sku(), product.name(), line.layer(), line.role(), line.quantity(), line.owned(),
                    line.packs(), line.packSize(), line.unitPrice(), line.price(), product.shelf(), reason(need, line.quantity()));
        }).toList();
        return new Kit(lines, kit.total(), kit.budget(), kit.score(), kit.terms(), kit.bound(), kit.gap());
    }

    /** Other products for a slot and what each would mean; see {@link Swaps}. */
    public List<Swap> swaps(KitRequest request, Kit kit, String slot, int most, Patience patience) {
        return new Swaps(this, request, kit, patience).of(slot, most);
    }

    /** Other products for a slot by colour, the nearest to one first, and what each would mean. */
    public List<Swap> swapsNear(KitRequest request, Kit kit, String slot, Lab colour, int most, Patience patience) {
        return new Swaps(this, request, kit, patience).near(slot, colour, most);
    }

    /** What one product would mean in a slot while everything else stays; empty when it can fill no such slot. */
    public Optional<Swap> swap(KitRequest request, Kit kit, String slot, String sku) {
        return new Swaps(this, request, kit, Patience.usual()).of(slot, sku);
    }

    /** Why the product that stood in a slot could not stay in a kit, or stays out of it. */
    public Cause cause(KitRequest request, Kit kit, String slot, String before) {
        return new Swaps(this, request, kit, Patience.usual()).cause(slot, before);
    }
}
