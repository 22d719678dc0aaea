package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Works out beforehand what another product in a slot would mean for a kit that stands.
 *
 * <p>With everything else as it is, price and score change by what the audit counts. Where that would break a rule or a wish, the
 * kit is solved again with the product in its slot and as little else changed as can be.
 */
final class Swaps {

    private final KitSolver solver;
    private final KitRequest request;
    private final Kit kit;
    private final Patience patience;
    private final Map<String, Candidate> chosen = new LinkedHashMap<>();
    private final Shortlist shortlist;
    private final List<TermScore> before;

    /** @param request the one that the kit answers */
    Swaps(KitSolver solver, KitRequest request, Kit kit, Patience patience) {
        this.solver = solver;
        this.patience = patience;
        this.kit = kit;
        Map<String, String> products = new LinkedHashMap<>();
        kit.lines().forEach(l -> products.put(l.slot(), l.sku()));
        // Measured against the kit as it stands: what stood before it no longer matters.
        this.request = new KitRequest(request.brief(), request.needs(), request.catalogue(), request.budget(),
                request.hand().keeping(products), request.own());
        this.shortlist = new Shortlist(this.request);
        this.before = new KitAudit(this.request, kit.lines()).terms();
        for (Slot slot : Slot.of(request.needs().bought())) {
            request.catalogue().product(products.get(slot.id())).ifPresent(p -> chosen.put(slot.id(), candidate(slot, p)));
        }
    }

    private Candidate candidate(Slot slot, Product product) {
        return shortlist.candidate(slot, product, Set.of());
    }

    private List<Candidate> choiceWith(Candidate other) {
        Map<String, Candidate> swapped = new LinkedHashMap<>(chosen);
        swapped.put(other.slot().id(), other);
        return List.copyOf(swapped.values());
    }

    /** The best first; at most so many that can be had, and after them at most half as many that are short of stock. */
    List<Swap> of(String slotId, int most) {
        Candidate there = chosen.get(slotId);
        if (there == null) {
            return List.of();
        }
        List<Candidate> others = others(there);
        List<Candidate> enough = enough(others);
        List<Swap> swaps = new ArrayList<>(enough.stream().map(this::inPlace).sorted(BEST_FIRST).limit(most)
                .map(s -> s.possible() ? s : anew(slotId, s.product())).sorted(BEST_FIRST).toList());
        others.stream().filter(c -> c.packs() > c.product().stock() && request.catalogue().sells(c.product())).map(c -> lacking(c, enough)).sorted(BEST_FIRST)
                .limit(most / 2).forEach(swaps::add);
        return swaps;
    }

    /** Those that can be had whose colour is nearest to one (CIEDE2000), the nearest first; the SKU decides between equals. */
    List<Swap> near(String slotId, Lab colour, int most) {
        Candidate there = chosen.get(slotId);
        return there == null ? List.of() : enough(others(there)).stream()
                .sorted(Comparator.comparingDouble((Candidate c) -> c.product().lab().difference(colour)).thenComparing(c -> c.product().sku())).limit(most)
                .map(this::inPlace).map(s -> s.possible() ? s : anew(slotId, s.product())).toList();
    }

    /** All that might stand there, in stock or not. */
    private List<Candidate> others(Candidate there) {
        return request.catalogue().inRole(there.slot().role()).stream()
                .filter(p -> !p.sku().equals(there.product().sku()) && shortlist.fits(there.slot(), p)
                        && chosen.values().stream().noneMatch(c -> c.product().sku().equals(p.sku())))
                .map(p -> candidate(there.slot(), p)).toList();
    }

    private static List<Candidate> enough(List<Candidate> others) {
        return others.stream().filter(c -> c.packs() <= c.product().stock()).toList();
    }

    private static final Comparator<Swap> BEST_FIRST = Comparator.comparing((Swap s) -> !s.possible()).thenComparingDouble(s -> -s.points())
            .thenComparing(s -> s.product().sku());

    /** With everything else as it is. */
    private Swap inPlace(Candidate other) {
        List<Candidate> choice = choiceWith(other);
        KitAudit audit = new KitAudit(request, KitSolver.lines(request.needs(), choice));
        return swap(other.product(), KitSolver.total(request, choice), audit.terms(), List.of(), obeys(audit, other));
    }

    /** A pin of the slot itself does not count: the swap takes its place. */
    private boolean obeys(KitAudit audit, Candidate other) {
        return audit.faults().stream().allMatch(f -> f.words().equals(Wish.PRODUCT + other.slot().id()));
    }

    /** What one product would mean in a slot with everything else as it is; empty when it can fill no such slot. */
    Optional<Swap> of(String slotId, String sku) {
        Candidate there = chosen.get(slotId);
        return request.catalogue().product(sku).filter(p -> there != null && shortlist.fits(there.slot(), p)).map(p -> inPlace(candidate(there.slot(), p)));
    }

    /** What keeps a product out of its slot while everything else is as it is. */
    Cause cause(String slotId, String sku) {
        Candidate there = chosen.get(slotId);
        Optional<Product> product = request.catalogue().product(sku);
        if (there == null || product.isEmpty() || !product.get().roles().contains(there.slot().role())) {
            return new Cause(Cause.Kind.GONE, "");
        }
        if (!Shortlist.rightSize(there.slot().first(), product.get())) {
            return new Cause(Cause.Kind.SIZE, "");
        }
        List<Candidate> choice = choiceWith(candidate(there.slot(), product.get()));
        List<KitAudit.Fault> faults = new KitAudit(request, KitSolver.lines(request.needs(), choice)).faults();
        return faults.stream().map(f -> new Cause(switch (f.kind()) {
            case WISH -> Cause.Kind.WISH;
            case STOCK -> Cause.Kind.STOCK;
            case BUDGET -> Cause.Kind.BUDGET;
            case CAP -> Cause.Kind.CAP;
            case HOUSE -> Cause.Kind.HOUSE;
            case LINES -> Cause.Kind.TAKEN;
        }, f.words())).min(Comparator.comparing(Cause::kind)).orElse(new Cause(Cause.Kind.BETTER, ""));
    }

    private Swap anew(String slot, Product product) {
        Adjustments pinned = request.hand().withProduct(slot, product.sku());
        Optional<Kit> found = solver.best(new KitRequest(request.brief(), request.needs(), request.catalogue(), request.budget(), pinned,
                request.own()), patience);
        if (found.isEmpty()) {
            return new Swap(product, 0, 0, List.of(), List.of(), false, 0, Optional.empty());
        }
        List<String> also = new ArrayList<>();
        found.get().lines().stream().filter(l -> !l.slot().equals(slot) && !chosen.get(l.slot()).product().sku().equals(l.sku()))
                .map(KitLine::slot).distinct().forEach(also::add);
        return swap(product, found.get().total(), found.get().terms(), also, true);
    }

    private Swap swap(Product product, Money total, List<TermScore> terms, List<String> also, boolean possible) {
        List<TermScore> changes = new ArrayList<>();
        for (int i = 0; i < terms.size(); i++) {
            double points = terms.get(i).points() - before.get(i).points();
            // That something changes is what the customer wants here; it is no loss.
            if (terms.get(i).term() != Term.STABILITY && Math.abs(points) > 1e-9) {
                changes.add(new TermScore(terms.get(i).term(), terms.get(i).value(), terms.get(i).weight(), points));
            }
        }
        return new Swap(product, total.coins() - kit.total().coins(), changes.stream().mapToDouble(TermScore::points).sum(), changes, also, possible, 0,
                Optional.empty());
    }

    private Swap lacking(Candidate wanting, List<Candidate> enough) {
        Product product = wanting.product();
        Optional<Product> nearest = enough.stream().map(Candidate::product)
                .min(Comparator.comparingDouble((Product p) -> Nearness.distance(p, product)).thenComparing(Product::sku));
        return new Swap(product, 0, 0, List.of(), List.of(), false, wanting.packs() - product.stock(), nearest);
    }
}
