package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.measure.Money;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/**
 * The integer programme: one binary variable for each candidate, 1 when it is chosen. Each constraint and each term of
 * docs/design-score.md is one method here.
 *
 * <p>A product fills at most one slot, so what a candidate costs is known beforehand and no variable for packs is needed. The
 * terms that count different values use a variable for each value, at most the number of choices that show it; the shares use
 * one for each distance from a target.
 */
final class KitProgramme implements AutoCloseable {

    /**
     * @param chosen one candidate for each slot, in the order of the slots
     * @param objective of the choice as the solver counted it, without the tie-breaking
     * @param bound on the objective of any choice
     */
    record Solution(List<Candidate> chosen, double objective, double bound) {
    }

    /** What a search came to. */
    sealed interface Result {

        record Chosen(Solution solution) implements Result {
        }

        record None() implements Result {
        }

        /** The time was over before anything was found or ruled out. */
        record OutOfTime() implements Result {
        }
    }

    /** What may be given up, and what that costs. */
    record Soft(String wish, double penalty) {
    }

    /**
     * Points by which a candidate that is further back, by price and then by SKU, is less liked than an equal one: too little to
     * outweigh anything that the score tells apart, enough that equal kits always fall the same way.
     */
    private static final double TIE = 1e-7;
    /** What a choice may fall short of the points that it must reach, in the programme; whoever asks looks at the kit's own score. */
    private static final double REACH = 1e-3;
    /** Coins in a unit of money in the programme; solvers like moderate numbers. */
    private static final double COINS = 100.0;

    private record Choice(Candidate candidate, MPVariable variable, double tie) {

        Slot slot() {
            return candidate.slot();
        }

        Product product() {
            return candidate.product();
        }
    }

    private final KitRequest request;
    private final Map<String, List<Candidate>> candidates;
    private final IntegerProgramme programme = new IntegerProgramme();
    private final List<Choice> choices = new ArrayList<>();

    /** @param candidates by slot id; with wishes to be given up, a slot may come in more than one quantity */
    KitProgramme(KitRequest request, Map<String, List<Candidate>> candidates) {
        this.request = request;
        this.candidates = candidates;
    }

    @Override
    public void close() {
        programme.close();
    }

    /** The choice with the best score, if there is one of so many points; any, when they are not finite. */
    Result best(DesignScore score, double points, double gap, Patience patience) {
        holdEverything();
        addUpPoints(score);
        rewardShares(score);
        rewardTextures(score);
        rewardFinishes(score);
        rewardScales(score);
        if (Double.isFinite(points)) {
            // Ties take a little off, and the solver rounds.
            programme.reach(points - REACH);
        }
        return result(programme.maximise(gap, patience));
    }

    /** The choice that costs least, in coins. */
    Result cheapest(Patience patience) {
        holdEverything();
        choices.forEach(c -> programme.worth(c.variable(), c.candidate().coins() / COINS));
        return result(programme.minimise(0, patience));
    }

    /** Any choice at all. */
    Result any(Patience patience) {
        holdEverything();
        return result(programme.minimise(1, patience));
    }

    /** The choice for which least has to be given up; of equals, one that costs little. */
    Result leastGivenUp(List<Soft> soft, Patience patience) {
        Map<String, MPVariable> given = new LinkedHashMap<>();
        soft.forEach(s -> {
            MPVariable gives = programme.binary();
            programme.worth(gives, s.penalty());
            given.put(s.wish(), gives);
        });
        chooseOneForEachSlot();
        useEachProductOnce();
        keepToTheBudget(given.get(Wish.BUDGET));
        keepToTheCaps(given);
        keepTheDemands();
        payForBrokenWishes(given);
        choices.forEach(c -> programme.worth(c.variable(), 1e-6 * c.candidate().coins() / COINS));
        return result(programme.minimise(0, patience));
    }

    private void holdEverything() {
        chooseOneForEachSlot();
        useEachProductOnce();
        keepToTheBudget(null);
        keepToTheCaps(Map.of());
        keepTheDemands();
    }

    private void keepTheDemands() {
        request.needs().demands(Demand.Variety.class).forEach(this::showVariety);
        request.needs().demands(Demand.Differ.class).forEach(this::keepApart);
        request.needs().demands(Demand.DarkOne.class).forEach(this::includeADarkOne);
        request.needs().demands(Demand.Narrower.class).forEach(this::keepNarrower);
    }

    private void chooseOneForEachSlot() {
        candidates.forEach((slot, list) -> {
            MPConstraint one = programme.between(1, 1);
            List<Candidate> byPrice = list.stream().sorted(Comparator.comparingLong(Candidate::coins).thenComparing(c -> c.product().sku())).toList();
            for (int i = 0; i < byPrice.size(); i++) {
                MPVariable chosen = programme.binary();
                one.setCoefficient(chosen, 1);
                choices.add(new Choice(byPrice.get(i), chosen, TIE * i / byPrice.size()));
            }
        });
    }

    private void useEachProductOnce() {
        Map<String, List<Choice>> bySku = new TreeMap<>();
        choices.forEach(c -> bySku.computeIfAbsent(c.product().sku(), s -> new ArrayList<>()).add(c));
        bySku.values().stream().filter(l -> l.stream().map(c -> c.slot().id()).distinct().count() > 1).forEach(list -> sum(0, 1, list));
    }

    private void keepToTheBudget(MPVariable given) {
        request.budget().ifPresent(budget -> limit(budget, Candidate::coins, given));
    }

    private void keepToTheCaps(Map<String, MPVariable> given) {
        request.hand().caps().forEach((layer, cap) -> limit(cap, c -> c.coinsIn(layer), given.get(Wish.CAP + layer.word())));
    }

    private void limit(Money most, ToLongFunction<Candidate> coins, MPVariable given) {
        MPConstraint limit = programme.atMost(most.coins() / COINS);
        choices.forEach(c -> limit.setCoefficient(c.variable(), coins.applyAsLong(c.candidate()) / COINS));
        if (given != null) {
            limit.setCoefficient(given, -everything() / COINS);
        }
    }

    /** More than any choice costs. */
    private double everything() {
        return candidates.values().stream().mapToDouble(l -> l.stream().mapToLong(Candidate::coins).max().orElse(0)).sum();
    }

    private void payForBrokenWishes(Map<String, MPVariable> given) {
        given.forEach((wish, gives) -> {
            List<Choice> breaking = choices.stream().filter(c -> c.candidate().breaks().contains(wish)).toList();
            if (!breaking.isEmpty()) {
                MPConstraint pays = programme.atMost(0);
                breaking.forEach(c -> pays.setCoefficient(c.variable(), 1));
                pays.setCoefficient(gives, -candidates.size());
            }
        });
    }

    private void showVariety(Demand.Variety demand) {
        List<MPVariable> seen = valueVariables(c -> demand.roles().contains(c.slot().role()), c -> c.product().values(demand.trait()));
        // On a tree that lacks these roles altogether there is nothing to vary.
        long slots = slots().stream().filter(s -> demand.roles().contains(s.role())).count();
        if (slots >= demand.least()) {
            MPConstraint enough = programme.atLeast(demand.least());
            seen.forEach(v -> enough.setCoefficient(v, 1));
        }
    }

    private void keepApart(Demand.Differ demand) {
        for (Slot one : slots(demand.one())) {
            for (Slot other : slots(demand.other())) {
                if (one.id().equals(other.id())) {
                    continue;
                }
                Map<String, List<Choice>> byValue = new TreeMap<>();
                choices.stream().filter(c -> c.slot().id().equals(one.id()) || c.slot().id().equals(other.id()))
                        .forEach(c -> c.product().values(demand.trait()).forEach(v -> byValue.computeIfAbsent(v, x -> new ArrayList<>()).add(c)));
                byValue.values().forEach(list -> sum(0, 1, list));
            }
        }
    }

    private void includeADarkOne(Demand.DarkOne demand) {
        if (slots().stream().anyMatch(s -> demand.roles().contains(s.role()))) {
            sum(1, Double.POSITIVE_INFINITY, choices.stream()
                    .filter(c -> demand.roles().contains(c.slot().role()) && c.product().lab().l() <= demand.lightness()).toList());
        }
    }

    private void keepNarrower(Demand.Narrower demand) {
        for (Slot narrow : slots(demand.narrower())) {
            for (Slot wide : slots(demand.wider())) {
                // Widths in millimetres; a hundredth is less than any ribbon differs by, and more than the solver's own tolerance.
                MPConstraint narrower = programme.atMost(-0.01);
                choices.stream().filter(c -> c.slot().id().equals(narrow.id()))
                        .forEach(c -> narrower.setCoefficient(c.variable(), c.product().width().millimetres()));
                choices.stream().filter(c -> c.slot().id().equals(wide.id()))
                        .forEach(c -> narrower.setCoefficient(c.variable(), -c.product().width().millimetres()));
            }
        }
    }

    /** One for each slot, whatever its quantity. */
    private List<Slot> slots() {
        return candidates.values().stream().map(l -> l.get(0).slot()).toList();
    }

    private List<Slot> slots(Role role) {
        return slots().stream().filter(s -> s.role() == role).toList();
    }

    private void addUpPoints(DesignScore score) {
        choices.forEach(c -> programme.worth(c.variable(), score.points(c.candidate()) - c.tie()));
    }

    private void rewardShares(DesignScore score) {
        double[] targets = score.targets();
        for (int group = 0; group < targets.length; group++) {
            MPVariable off = programme.upTo(1);
            MPConstraint above = programme.atMost(targets[group]);
            MPConstraint below = programme.atLeast(targets[group]);
            above.setCoefficient(off, -1);
            below.setCoefficient(off, 1);
            for (Choice c : choices) {
                if (DesignScore.shareGroup(score.part(c.slot().role(), c.product())) == group) {
                    above.setCoefficient(c.variable(), score.areaShare(c.slot()));
                    below.setCoefficient(c.variable(), score.areaShare(c.slot()));
                }
            }
            programme.worth(off, -score.weight(Term.PALETTE_SHARES) / 2);
        }
        programme.worth(score.weight(Term.PALETTE_SHARES));
    }

    private void rewardTextures(DesignScore score) {
        int whole = score.variedLayers().values().stream().mapToInt(Integer::intValue).sum();
        score.variedLayers().forEach((layer, most) -> reward(score.weight(Term.TEXTURE_VARIETY) * most / whole, most,
                c -> DesignScore.inLayer(c.slot(), layer), c -> Set.of(c.product().texture().word())));
    }

    private void rewardFinishes(DesignScore score) {
        reward(score.weight(Term.FINISH_MIX), DesignScore.FINISHES, c -> DesignScore.inLayer(c.slot(), Layer.ORNAMENTS),
                c -> Set.of(c.product().finish().word()));
    }

    private void rewardScales(DesignScore score) {
        reward(score.weight(Term.SCALE_MIX), DesignScore.SCALES, c -> DesignScore.inLayer(c.slot(), Layer.FLORALS), c -> Set.of(c.product().scale()));
    }

    /** Gives points for each different value among some choices, all of them at {@code most} values. */
    private void reward(double points, int most, Predicate<Choice> among, Function<Choice, Set<String>> value) {
        MPVariable counted = programme.upTo(most);
        MPConstraint reached = programme.atLeast(0);
        reached.setCoefficient(counted, -1);
        valueVariables(among, value).forEach(v -> reached.setCoefficient(v, 1));
        programme.worth(counted, points / most);
    }

    /** For each value a variable in [0, 1] that can be 1 only when a choice that shows the value is made. */
    private List<MPVariable> valueVariables(Predicate<Choice> among, Function<Choice, Set<String>> value) {
        Map<String, List<Choice>> byValue = new LinkedHashMap<>();
        choices.stream().filter(among)
                .forEach(c -> new TreeSet<>(value.apply(c)).forEach(v -> byValue.computeIfAbsent(v, x -> new ArrayList<>()).add(c)));
        List<MPVariable> variables = new ArrayList<>();
        byValue.values().forEach(list -> {
            MPVariable shown = programme.upTo(1);
            MPConstraint only = programme.atLeast(0);
            only.setCoefficient(shown, -1);
            list.forEach(c -> only.setCoefficient(c.variable(), 1));
            variables.add(shown);
        });
        return variables;
    }

    private void sum(double least, double most, List<Choice> list) {
        MPConstraint constraint = programme.between(least, most);
        list.forEach(c -> constraint.setCoefficient(c.variable(), 1));
    }

    private Result result(IntegerProgramme.Outcome outcome) {
        return switch (outcome) {
            case SOLVED, STOPPED -> new Result.Chosen(solution());
            case IMPOSSIBLE -> new Result.None();
            case OUT_OF_TIME -> new Result.OutOfTime();
        };
    }

    private Solution solution() {
        List<Candidate> chosen = new ArrayList<>();
        double ties = 0;
        for (Choice c : choices) {
            if (c.variable().solutionValue() > 0.5) {
                chosen.add(c.candidate());
                ties += c.tie();
            }
        }
        return new Solution(chosen, programme.value() + ties, programme.bound() + TIE * candidates.size());
    }
}
