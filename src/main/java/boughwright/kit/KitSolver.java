package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.measure.Money;
import boughwright.needs.Need;
import boughwright.needs.Reason;
import boughwright.needs.Unit;
import boughwright.text.Text;
import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Finds the kit with the best design score under stock, packs, budget and the house's demands, with a proven bound.
 *
 * <p>Deterministic: the same request gives the same kit. Stateless and safe for several threads; the native solver is loaded
 * once, when the first instance is made.
 */
public final class KitSolver {

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

    /**
     * The best kit while all wishes hold; else the conflict among them.
     *
     * @param wishes the customer's, most important first
     * @param holding the request under which just these wishes hold
     */
    public KitOutcome solve(List<Wish> wishes, Function<Set<Wish>, KitRequest> holding) {
        KitRequest request = holding.apply(new LinkedHashSet<>(wishes));
        Optional<Kit> kit = best(request);
        return kit.<KitOutcome>map(KitOutcome.Found::new)
                .orElseGet(() -> new KitOutcome.NoKitFits(conflict(wishes, holding)));
    }

    /** The best kit for a request, or empty when none fits. */
    public Optional<Kit> best(KitRequest request) {
        return solve(request, KitProgramme.Aim.BEST).map(s -> kit(request, s));
    }

    /** What the cheapest kit costs, whatever its score; empty when none fits. */
    public Optional<Money> least(KitRequest request) {
        return solve(request, KitProgramme.Aim.CHEAPEST).map(s -> total(request, s.chosen().values().stream().toList()));
    }

    /** Every product that may fill a slot, the one that would bring the most points by itself first. */
    public List<Product> ranked(KitRequest request, String slotId) {
        List<Slot> slots = Slot.of(request.needs().bought());
        DesignScore score = new DesignScore(request, slots);
        return slots.stream().filter(s -> s.id().equals(slotId)).findFirst().stream()
                .flatMap(s -> new Shortlist(request).candidates(s).stream())
                .sorted(Comparator.comparingDouble((Candidate c) -> -score.points(c)).thenComparing(c -> c.product().sku()))
                .map(Candidate::product).toList();
    }

    private Optional<KitProgramme.Solution> solve(KitRequest request, KitProgramme.Aim aim) {
        List<Slot> slots = Slot.of(request.needs().bought());
        Shortlist shortlist = new Shortlist(request);
        Map<Slot, List<Candidate>> candidates = new LinkedHashMap<>();
        for (Slot slot : slots) {
            List<Candidate> fit = shortlist.candidates(slot);
            if (fit.isEmpty()) {
                return Optional.empty();
            }
            candidates.put(slot, fit);
        }
        return new KitProgramme(request, candidates, new DesignScore(request, slots)).solve(aim);
    }

    private Conflict conflict(List<Wish> wishes, Function<Set<Wish>, KitRequest> holding) {
        if (least(holding.apply(Set.of())).isEmpty()) {
            return new Conflict(List.of(), shortages(holding.apply(Set.of())), List.of());
        }
        Set<Wish> clashing = clash(new LinkedHashSet<>(wishes), holding);
        List<Conflict.WayOut> waysOut = clashing.stream().map(wish -> wayOut(wish, wishes, holding)).toList();
        return new Conflict(clashing.stream().map(w -> new Conflict.Wished(w.id(), w.text())).toList(), List.of(), waysOut);
    }

    /**
     * Of wishes that clash, some that clash by themselves and of which none can be spared. The least important are spared first, so
     * the conflict is about what matters.
     */
    private Set<Wish> clash(Set<Wish> wishes, Function<Set<Wish>, KitRequest> holding) {
        Set<Wish> clashing = wishes;
        List<Wish> inOrder = List.copyOf(wishes);
        for (int i = inOrder.size() - 1; i >= 0; i--) {
            Set<Wish> fewer = new LinkedHashSet<>(clashing);
            fewer.remove(inOrder.get(i));
            if (least(holding.apply(fewer)).isEmpty()) {
                clashing = fewer;
            }
        }
        return clashing;
    }

    /** Lets go of one wish, and of the least important of each further clash, until a kit can be made. */
    private Conflict.WayOut wayOut(Wish first, List<Wish> wishes, Function<Set<Wish>, KitRequest> holding) {
        Set<Wish> held = new LinkedHashSet<>(wishes);
        List<Wish> dropped = new ArrayList<>();
        Wish next = first;
        Optional<Money> total = Optional.empty();
        while (total.isEmpty()) {
            held.remove(next);
            dropped.add(next);
            total = least(holding.apply(held));
            if (total.isEmpty()) {
                List<Wish> others = List.copyOf(clash(held, holding));
                next = others.get(others.size() - 1);
            }
        }
        return new Conflict.WayOut(dropped.stream().map(Wish::id).toList(), words(dropped, total.get(), holding.apply(new LinkedHashSet<>(wishes))),
                total.get());
    }

    private static String words(List<Wish> dropped, Money total, KitRequest all) {
        if (dropped.size() == 1 && dropped.get(0).id().equals(Wish.BUDGET)) {
            return Text.of("kit.out.budget", total.minus(all.budget().orElseThrow()).show(), total.show());
        }
        String list = dropped.stream().map(Wish::text).collect(Collectors.joining(Text.of("kit.out.and")));
        return Text.of("kit.out.wish", list, total.show());
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

    private static Money total(KitRequest request, List<Candidate> chosen) {
        Currency currency = request.catalogue().products().get(0).price().currency();
        return Money.ofCoins(chosen.stream().mapToLong(Candidate::coins).sum(), currency);
    }

    private static Kit kit(KitRequest request, KitProgramme.Solution solution) {
        List<Candidate> chosen = List.copyOf(solution.chosen().values());
        Map<String, Line> open = new HashMap<>();
        List<KitLine> lines = new ArrayList<>();
        for (Need need : request.needs().bought()) {
            Candidate candidate = solution.chosen().entrySet().stream()
                    .filter(e -> e.getKey().id().equals(need.slot())).findFirst().orElseThrow().getValue();
            lines.add(open.computeIfAbsent(need.slot(), s -> new Line(candidate)).next(need));
        }
        List<TermScore> terms = solution.score().of(chosen);
        double score = terms.stream().mapToDouble(TermScore::points).sum();
        double bound = Math.max(score, solution.bound());
        return new Kit(lines, total(request, chosen), request.budget(), score, terms, bound, (bound - score) / Math.max(1e-9, Math.abs(score)));
    }

    /** Shares a candidate's pieces and packs out over the needs of its slot, in order. */
    private static final class Line {

        private final Candidate candidate;
        private int pieces;
        private int owned;
        private int packs;

        Line(Candidate candidate) {
            this.candidate = candidate;
        }

        /** A roll that is longer than the need's ten yards does with fewer; then the line's number differs from its need's. */
        private static Reason reason(Need need, int quantity) {
            if (need.unit() != Unit.ROLL || quantity == need.quantity()) {
                return need.reason();
            }
            return new Reason(need.reason().rule(), need.reason().row(), Text.of("kit.longer-rolls", quantity, need.reason().text()));
        }

        KitLine next(Need need) {
            boolean counted = candidate.slot().needs().size() > 1;
            int quantity = counted ? need.quantity() : candidate.pieces();
            int ownedHere = Math.min(quantity, candidate.ownedUsed() - owned);
            pieces += quantity;
            owned += ownedHere;
            int packsSoFar = (pieces - owned + candidate.product().pack() - 1) / candidate.product().pack();
            int packsHere = packsSoFar - packs;
            packs = packsSoFar;
            Money unit = candidate.product().price();
            return new KitLine(need.id(), need.slot(), candidate.product().sku(), candidate.product().name(), need.layer(), need.role(), quantity,
                    ownedHere, packsHere, candidate.product().pack(), unit, unit.times(packsHere), candidate.product().shelf(), reason(need, quantity));
        }
    }
}
