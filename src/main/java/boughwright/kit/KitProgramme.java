package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The integer programme: one binary variable for each candidate, 1 when it is chosen.
 *
 * <p>A product fills at most one slot, so what a candidate costs is known beforehand and no variable for packs is needed. The
 * terms that count different values use a variable for each value, at most the number of choices that show it; the shares use
 * one for each distance from a target.
 */
final class KitProgramme {

    enum Aim { BEST, CHEAPEST }

    /**
     * @param chosen one candidate for each slot, in the order of the slots
     * @param bound on the score of any kit; meaningless for the cheapest
     */
    record Solution(Map<Slot, Candidate> chosen, DesignScore score, double bound) {
    }

    /** The relative gap at which the search for the best may stop; the cheapest is told to the cent, so it is found exactly. */
    private static final double GAP = 0.002;
    private static final long TIME_LIMIT_MILLIS = 8_000;

    private record Choice(Candidate candidate, MPVariable variable) {

        Slot slot() {
            return candidate.slot();
        }

        Product product() {
            return candidate.product();
        }
    }

    private final KitRequest request;
    private final Map<Slot, List<Candidate>> candidates;
    private final DesignScore score;
    private final MPSolver solver;
    private final List<Choice> choices = new ArrayList<>();
    private final MPObjective objective;

    KitProgramme(KitRequest request, Map<Slot, List<Candidate>> candidates, DesignScore score) {
        this.request = request;
        this.candidates = candidates;
        this.score = score;
        this.solver = MPSolver.createSolver("CBC");
        this.objective = solver.objective();
    }

    /** Empty when no choice meets every constraint. */
    Optional<Solution> solve(Aim aim) {
        try {
            chooseOneForEachSlot();
            useEachProductOnce();
            keepToTheBudget();
            request.needs().demands(Demand.Variety.class).forEach(this::showVariety);
            request.needs().demands(Demand.Differ.class).forEach(this::keepApart);
            request.needs().demands(Demand.DarkOne.class).forEach(this::includeADarkOne);
            request.needs().demands(Demand.Narrower.class).forEach(this::keepNarrower);
            if (aim == Aim.BEST) {
                addUpPoints();
                rewardShares();
                score.variedLayers().forEach(this::rewardTextures);
                reward(Term.FINISH_MIX, DesignScore.FINISHES, c -> DesignScore.inLayer(c.slot(), Layer.ORNAMENTS), c -> Set.of(c.product().finish().word()));
                reward(Term.SCALE_MIX, DesignScore.SCALES, c -> DesignScore.inLayer(c.slot(), Layer.FLORALS),
                        c -> Set.of(c.product().scale()));
                objective.setMaximization();
            } else {
                choices.forEach(c -> objective.setCoefficient(c.variable(), c.candidate().coins() / 100.0));
                objective.setMinimization();
            }
            return run(aim);
        } finally {
            solver.delete();
        }
    }

    private void chooseOneForEachSlot() {
        candidates.forEach((slot, list) -> {
            MPConstraint one = solver.makeConstraint(1, 1, "");
            for (Candidate candidate : list) {
                MPVariable chosen = solver.makeBoolVar("");
                one.setCoefficient(chosen, 1);
                choices.add(new Choice(candidate, chosen));
            }
        });
    }

    private void useEachProductOnce() {
        Map<String, List<Choice>> bySku = new TreeMap<>();
        choices.forEach(c -> bySku.computeIfAbsent(c.product().sku(), s -> new ArrayList<>()).add(c));
        bySku.values().stream().filter(l -> l.size() > 1).forEach(list -> sum(0, 1, list));
    }

    private void keepToTheBudget() {
        request.budget().ifPresent(budget -> {
            MPConstraint limit = solver.makeConstraint(0, budget.coins() / 100.0, "");
            choices.forEach(c -> limit.setCoefficient(c.variable(), c.candidate().coins() / 100.0));
        });
    }

    private void showVariety(Demand.Variety demand) {
        List<MPVariable> seen = valueVariables(c -> demand.roles().contains(c.slot().role()), c -> c.product().values(demand.trait()));
        // On a tree that lacks these roles altogether there is nothing to vary.
        long slots = candidates.keySet().stream().filter(s -> demand.roles().contains(s.role())).count();
        if (slots >= demand.least()) {
            MPConstraint enough = solver.makeConstraint(demand.least(), MPSolver.infinity(), "");
            seen.forEach(v -> enough.setCoefficient(v, 1));
        }
    }

    private void keepApart(Demand.Differ demand) {
        for (Slot one : slots(demand.one())) {
            for (Slot other : slots(demand.other())) {
                if (one.equals(other)) {
                    continue;
                }
                Map<String, List<Choice>> byValue = new TreeMap<>();
                choices.stream().filter(c -> c.slot().equals(one) || c.slot().equals(other))
                        .forEach(c -> c.product().values(demand.trait()).forEach(v -> byValue.computeIfAbsent(v, x -> new ArrayList<>()).add(c)));
                byValue.values().forEach(list -> sum(0, 1, list));
            }
        }
    }

    private void includeADarkOne(Demand.DarkOne demand) {
        if (candidates.keySet().stream().anyMatch(s -> demand.roles().contains(s.role()))) {
            sum(1, MPSolver.infinity(), choices.stream()
                    .filter(c -> demand.roles().contains(c.slot().role()) && c.product().lab().l() <= demand.lightness()).toList());
        }
    }

    private void keepNarrower(Demand.Narrower demand) {
        for (Slot narrow : slots(demand.narrower())) {
            for (Slot wide : slots(demand.wider())) {
                // Widths in millimetres; a hundredth is less than any ribbon differs by, and more than the solver's own tolerance.
                MPConstraint narrower = solver.makeConstraint(-MPSolver.infinity(), -0.01, "");
                choices.stream().filter(c -> c.slot().equals(narrow))
                        .forEach(c -> narrower.setCoefficient(c.variable(), c.product().width().millimetres()));
                choices.stream().filter(c -> c.slot().equals(wide))
                        .forEach(c -> narrower.setCoefficient(c.variable(), -c.product().width().millimetres()));
            }
        }
    }

    private List<Slot> slots(Role role) {
        return candidates.keySet().stream().filter(s -> s.role() == role).toList();
    }

    private void addUpPoints() {
        choices.forEach(c -> objective.setCoefficient(c.variable(), score.points(c.candidate())));
    }

    private void rewardShares() {
        double[] targets = score.targets();
        for (int group = 0; group < targets.length; group++) {
            MPVariable off = solver.makeNumVar(0, 1, "");
            MPConstraint above = solver.makeConstraint(-MPSolver.infinity(), targets[group], "");
            MPConstraint below = solver.makeConstraint(targets[group], MPSolver.infinity(), "");
            above.setCoefficient(off, -1);
            below.setCoefficient(off, 1);
            for (Choice c : choices) {
                if (DesignScore.shareGroup(score.part(c.slot().role(), c.product())) == group) {
                    above.setCoefficient(c.variable(), score.areaShare(c.slot()));
                    below.setCoefficient(c.variable(), score.areaShare(c.slot()));
                }
            }
            objective.setCoefficient(off, -Term.PALETTE_SHARES.weight() / 2);
        }
        objective.setOffset(objective.offset() + Term.PALETTE_SHARES.weight());
    }

    private void rewardTextures(Layer layer, int most) {
        int whole = score.variedLayers().values().stream().mapToInt(Integer::intValue).sum();
        reward(Term.TEXTURE_VARIETY.weight() * most / whole, most, c -> DesignScore.inLayer(c.slot(), layer), c -> Set.of(c.product().texture().word()));
    }

    private void reward(Term term, int most, Predicate<Choice> among, Function<Choice, Set<String>> value) {
        reward(term.weight(), most, among, value);
    }

    /** Gives points for each different value among some choices, all of them at {@code most} values. */
    private void reward(double points, int most, Predicate<Choice> among, Function<Choice, Set<String>> value) {
        MPVariable counted = solver.makeNumVar(0, most, "");
        MPConstraint reached = solver.makeConstraint(0, MPSolver.infinity(), "");
        reached.setCoefficient(counted, -1);
        valueVariables(among, value).forEach(v -> reached.setCoefficient(v, 1));
        objective.setCoefficient(counted, points / most);
    }

    /** For each value a variable in [0, 1] that can be 1 only when a choice that shows the value is made. */
    private List<MPVariable> valueVariables(Predicate<Choice> among, Function<Choice, Set<String>> value) {
        Map<String, List<Choice>> byValue = new LinkedHashMap<>();
        choices.stream().filter(among)
                .forEach(c -> new TreeSet<>(value.apply(c)).forEach(v -> byValue.computeIfAbsent(v, x -> new ArrayList<>()).add(c)));
        List<MPVariable> variables = new ArrayList<>();
        byValue.values().forEach(list -> {
            MPVariable shown = solver.makeNumVar(0, 1, "");
            MPConstraint only = solver.makeConstraint(0, MPSolver.infinity(), "");
            only.setCoefficient(shown, -1);
            list.forEach(c -> only.setCoefficient(c.variable(), 1));
            variables.add(shown);
        });
        return variables;
    }

    private void sum(double least, double most, List<Choice> list) {
        MPConstraint constraint = solver.makeConstraint(least, most, "");
        list.forEach(c -> constraint.setCoefficient(c.variable(), 1));
    }

    private Optional<Solution> run(Aim aim) {
        solver.setTimeLimit(TIME_LIMIT_MILLIS);
        MPSolverParameters parameters = new MPSolverParameters();
        parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, aim == Aim.BEST ? GAP : 0);
        MPSolver.ResultStatus status = solver.solve(parameters);
        parameters.delete();
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            return Optional.empty();
        }
        if (status != MPSolver.ResultStatus.OPTIMAL && status != MPSolver.ResultStatus.FEASIBLE) {
            // "Found nothing in time" must not be mistaken for "nothing fits".
            throw new IllegalStateException("the solver stopped with " + status);
        }
        Map<Slot, Candidate> chosen = new LinkedHashMap<>();
        choices.stream().filter(c -> c.variable().solutionValue() > 0.5).forEach(c -> chosen.put(c.slot(), c.candidate()));
        return Optional.of(new Solution(chosen, score, objective.bestBound()));
    }
}
