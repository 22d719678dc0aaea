package boughwright.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The preferred conflict among constraints that cannot all hold: minimal, and among the minimal ones the one that does without
 * the least important constraints.
 *
 * <p>U. Junker, "QUICKXPLAIN: Preferred Explanations and Relaxations for Over-Constrained Problems", AAAI 2004, with his split in
 * halves. For a conflict of k among n constraints it needs at most 2k·log2(n/k) + 2k checks (his Table 4), not counting the first,
 * which tells that there is a conflict at all.
 *
 * @param <T> a constraint
 */
final class QuickXplain<T> {

    private final Predicate<List<T>> consistent;
    private int checks;
    /** What earlier checks have shown; with fewer constraints it still holds, with more it still clashes. */
    private final List<Set<T>> consistentSets = new ArrayList<>();
    private final List<Set<T>> clashingSets = new ArrayList<>();

    /**
     * @param consistent whether these constraints can all hold together with what must hold in any case. Whatever it finds
     *     consistent must stay so with fewer constraints. A check that gave up must answer true: then the conflict is still one,
     *     if not always minimal
     */
    QuickXplain(Predicate<List<T>> consistent) {
        this.consistent = consistent;
    }

    /**
     * @param constraints the most important first
     * @return empty when they can all hold; an empty list when not even none of them can
     */
    Optional<List<T>> conflict(List<T> constraints) {
        return check(constraints) ? Optional.empty() : Optional.of(explain(constraints));
    }

    /** The conflict among constraints that are known to be one. */
    List<T> explain(List<T> constraints) {
        if (constraints.isEmpty()) {
            return List.of();
        }
        List<T> conflict = explain(List.of(), false, constraints);
        // Only a conflict of one can hide that the background fails by itself.
        return conflict.size() == 1 && !check(List.of()) ? List.of() : conflict;
    }

    /** Checks so far, without those that an earlier one has answered. */
    int checks() {
        return checks;
    }

    private List<T> explain(List<T> background, boolean added, List<T> constraints) {
        if (added && !check(background)) {
            return List.of();
        }
        if (constraints.size() == 1) {
            return constraints;
        }
        int half = (constraints.size() + 1) / 2;
        List<T> more = constraints.subList(0, half);
        List<T> less = constraints.subList(half, constraints.size());
        List<T> ofLess = explain(join(background, more), true, less);
        List<T> ofMore = explain(join(background, ofLess), !ofLess.isEmpty(), more);
        return join(ofMore, ofLess);
    }

    private boolean check(List<T> constraints) {
        Set<T> set = new HashSet<>(constraints);
        if (consistentSets.stream().anyMatch(known -> known.containsAll(set))) {
            return true;
        }
        if (clashingSets.stream().anyMatch(set::containsAll)) {
            return false;
        }
        checks++;
        boolean holds = consistent.test(constraints);
        (holds ? consistentSets : clashingSets).add(set);
        return holds;
    }

    private static <T> List<T> join(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return both;
    }
}
