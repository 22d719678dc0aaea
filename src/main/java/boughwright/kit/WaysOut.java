package boughwright.kit;

import boughwright.brief.Word;
import boughwright.catalogue.Product;
import boughwright.kit.Conflict.Step;
import boughwright.kit.Conflict.WayOut;
import boughwright.kit.KitProgramme.Result;
import boughwright.kit.KitProgramme.Soft;
import boughwright.measure.Money;
import boughwright.needs.Layer;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The smallest ways out of a conflict: for each wish in it, what a kit costs without that wish, and what little else must be let
 * go of with it where other wishes clash too.
 *
 * <p>One programme finds that little: every wish may be broken at a penalty, fewest wishes first and of as many the less important.
 * How richly the tree is dressed changes what is needed altogether, so each lower abundance is a programme of its own. A number
 * may be met in part and a product by its nearest substitute; that is offered before they are dropped.
 */
final class WaysOut {

    /** One wish more weighs more than any order among fewer. */
    private static final double EACH = 100;
    /** The nearest products that are tried in place of one that cannot be had. */
    private static final int SUBSTITUTES = 4;

    private final KitSolver solver;
    private final Wishes wishes;
    private final Patience patience;
    private final List<Wish> all;

    WaysOut(KitSolver solver, Wishes wishes, Patience patience) {
        this.solver = solver;
        this.wishes = wishes;
        this.patience = patience;
        this.all = wishes.inOrder();
    }

    /** In the order of the wishes. */
    List<WayOut> of(List<Wish> conflict) {
        List<WayOut> ways = new ArrayList<>();
        for (Wish wish : conflict) {
            Set<Wish> given = givenUpWith(wish);
            if (given.size() == 1 && wish.id().startsWith(Wish.QUANTITY)) {
                partOf(wish).ifPresent(ways::add);
            }
            if (given.size() == 1 && wish.id().startsWith(Wish.PRODUCT)) {
                substitute(wish).ifPresent(ways::add);
            }
            ways.add(without(given));
        }
        return ways;
    }

    private Set<Wish> held(Set<Wish> given) {
        Set<Wish> held = new LinkedHashSet<>(all);
        held.removeAll(given);
        return held;
    }

    /** The wish and as little else as lets a kit be made. */
    private Set<Wish> givenUpWith(Wish wish) {
        if (solver.possible(wishes.holding(held(Set.of(wish))), patience)) {
            return Set.of(wish);
        }
        Set<Wish> best = null;
        double least = Double.MAX_VALUE;
        for (Set<Wish> simpler : simplifications(wish)) {
            double penalty = simpler.stream().mapToDouble(w -> penalty(w, wish)).sum();
            if (penalty < least) {
                Optional<Set<Wish>> given = givenUp(simpler, wish);
                double whole = penalty + given.stream().flatMap(Set::stream).mapToDouble(w -> penalty(w, wish)).sum();
                if (given.isPresent() && whole < least) {
                    least = whole;
                    best = new LinkedHashSet<>(simpler);
                    best.add(wish);
                    best.addAll(given.get());
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("without any wish a kit can be made, and yet no way out was found");
        }
        Set<Wish> given = best;
        return all.stream().filter(given::contains).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Which wishes for abundance may go: none, the highest, both; each set holds the wish when it is one of them. */
    private List<Set<Wish>> simplifications(Wish wish) {
        List<Wish> levels = all.stream().filter(w -> w.id().startsWith(Wish.ABUNDANCE)).toList();
        List<Set<Wish>> sets = new ArrayList<>(List.of(Set.of()));
        for (Wish level : levels) {
            sets.add(Set.of(level));
        }
        if (levels.size() > 1) {
            sets.add(Set.copyOf(levels));
        }
        sets.removeIf(s -> wish.id().startsWith(Wish.ABUNDANCE) && !s.contains(wish));
        return sets;
    }

    private double penalty(Wish other, Wish free) {
        return other.equals(free) ? 0 : EACH + all.size() - all.indexOf(other);
    }

    private Optional<Set<Wish>> givenUp(Set<Wish> simpler, Wish free) {
        KitRequest asked = wishes.holding(held(simpler));
        Set<Wish> eased = new LinkedHashSet<>(held(simpler));
        eased.removeIf(w -> w.id().startsWith(Wish.QUANTITY));
        KitRequest computed = wishes.holding(eased);
        Set<String> soft = held(simpler).stream().map(Wish::id).filter(id -> !id.startsWith(Wish.ABUNDANCE)).collect(Collectors.toSet());
        Map<String, List<Candidate>> candidates = new LinkedHashMap<>();
        Shortlist shortlist = new Shortlist(asked);
        Slot.of(asked.needs().bought()).forEach(slot -> candidates.computeIfAbsent(slot.id(), s -> new ArrayList<>())
                .addAll(shortlist.candidates(slot, soft)));
        for (Slot slot : Slot.of(computed.needs().bought())) {
            List<Candidate> there = candidates.computeIfAbsent(slot.id(), s -> new ArrayList<>());
            Set<String> fewer = slot.needs().stream().map(n -> Wish.QUANTITY + n.id()).filter(soft::contains).collect(Collectors.toSet());
            if (!fewer.isEmpty()) {
                shortlist.candidates(slot, soft).forEach(c -> there.add(c.breaking(fewer)));
            }
        }
        if (candidates.values().stream().anyMatch(List::isEmpty)) {
            return Optional.empty();
        }
        KitSolver.prune(asked, Optional.empty(), candidates);
        List<Soft> penalties = all.stream().filter(w -> soft.contains(w.id())).map(w -> new Soft(w.id(), penalty(w, free))).toList();
        try (KitProgramme programme = new KitProgramme(asked, candidates)) {
            Result result = programme.leastGivenUp(penalties, patience);
            return result instanceof Result.Chosen chosen ? Optional.of(broken(asked, chosen.solution().chosen())) : Optional.empty();
        }
    }

    private Set<Wish> broken(KitRequest asked, List<Candidate> chosen) {
        Set<String> broken = chosen.stream().flatMap(c -> c.breaks().stream()).collect(Collectors.toSet());
        asked.budget().filter(b -> KitSolver.total(asked, chosen).compareTo(b) > 0).ifPresent(b -> broken.add(Wish.BUDGET));
        asked.hand().caps().forEach((layer, cap) -> {
            if (KitSolver.total(asked, chosen, layer).compareTo(cap) > 0) {
                broken.add(Wish.CAP + layer.word());
            }
        });
        return all.stream().filter(w -> broken.contains(w.id())).collect(Collectors.toSet());
    }

    private WayOut without(Set<Wish> given) {
        KitRequest request = wishes.holding(held(given));
        List<Candidate> chosen = solver.cheapest(request, patience)
                .orElseThrow(() -> new IllegalStateException("letting go of " + given + " was found to be enough"));
        Money total = KitSolver.total(request, chosen);
        List<Step> steps = given.stream().map(w -> new Step(w.id(), instead(w, total, request, chosen))).toList();
        return new WayOut(steps, words(given, total), total);
    }

    private static Optional<String> instead(Wish wish, Money total, KitRequest request, List<Candidate> chosen) {
        if (wish.id().equals(Wish.BUDGET)) {
            return Optional.of(total.decimal());
        }
        if (wish.id().startsWith(Wish.CAP)) {
            Layer layer = Word.read(Layer.class, wish.id().substring(Wish.CAP.length())).orElseThrow();
            return Optional.of(KitSolver.total(request, chosen, layer).decimal());
        }
        return Optional.empty();
    }

    private String words(Set<Wish> given, Money total) {
        if (given.size() == 1 && given.iterator().next().id().equals(Wish.BUDGET)) {
            Money budget = wishes.holding(new LinkedHashSet<>(all)).budget().orElseThrow();
            return Text.of("kit.out.budget", total.minus(budget).show(), total.show());
        }
        String list = given.stream().map(Wish::text).collect(Collectors.joining(Text.of("kit.out.and")));
        return Text.of("kit.out.wish", list, total.show());
    }

    /** As many as can be had of what was asked for; empty when not one more than the rulebook gives. */
    private Optional<WayOut> partOf(Wish wish) {
        Wishes.Range range = wishes.quantity(wish);
        int fits = range.computed();
        int fails = range.asked();
        while (fails - fits > 1) {
            int middle = (fits + fails) >>> 1;
            if (solver.possible(wishes.holding(new LinkedHashSet<>(all), number(wish, middle)), patience)) {
                fits = middle;
            } else {
                fails = middle;
            }
        }
        if (fits <= range.computed()) {
            return Optional.empty();
        }
        int most = fits;
        Step step = number(wish, most);
        return solver.least(wishes.holding(new LinkedHashSet<>(all), step), patience)
                .map(total -> new WayOut(List.of(step), Text.of("kit.out.part", most, range.asked(), total.show()), total));
    }

    private static Step number(Wish wish, int number) {
        return new Step(wish.id(), Optional.of(String.valueOf(number)));
    }

    /** The product nearest to the wished one with which a kit can be made. */
    private Optional<WayOut> substitute(Wish wish) {
        KitRequest asked = wishes.holding(new LinkedHashSet<>(all));
        String slotId = wish.id().substring(Wish.PRODUCT.length());
        Optional<Product> wished = asked.catalogue().product(asked.hand().products().getOrDefault(slotId, ""));
        Optional<Slot> slot = Slot.of(asked.needs().bought()).stream().filter(s -> s.id().equals(slotId)).findFirst();
        if (wished.isEmpty() || slot.isEmpty()) {
            return Optional.empty();
        }
        List<Product> near = new Shortlist(wishes.holding(held(Set.of(wish)))).candidates(slot.get()).stream().map(Candidate::product)
                .sorted(Comparator.comparingDouble((Product p) -> Nearness.distance(p, wished.get())).thenComparing(Product::sku))
                .limit(SUBSTITUTES).toList();
        for (Product product : near) {
            Step step = new Step(wish.id(), Optional.of(product.sku()));
            Optional<Money> total = solver.least(wishes.holding(new LinkedHashSet<>(all), step), patience);
            if (total.isPresent()) {
                return Optional.of(new WayOut(List.of(step), Text.of("kit.out.substitute", product.name(), wished.get().name(), total.get().show()),
                        total.get()));
            }
        }
        return Optional.empty();
    }
}
