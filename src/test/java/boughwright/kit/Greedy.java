package boughwright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Fills each need in turn with its best-scoring product that the money left allows; what the solver is compared with. */
final class Greedy {

    private Greedy() {
    }

    /** Empty when what it chooses breaks a rule of the house or the budget. */
    static Optional<Double> score(KitRequest request) {
        List<Slot> slots = Slot.of(request.needs().bought());
        DesignScore score = new DesignScore(request, slots);
        Shortlist shortlist = new Shortlist(request);
        Map<String, List<Candidate>> all = slots.stream().collect(Collectors.toMap(Slot::id, shortlist::candidates));
        // Enough is set aside for the cheapest of every need that is still to be filled.
        long reserve = all.values().stream().mapToLong(l -> l.stream().mapToLong(Candidate::coins).min().orElse(0)).sum();
        long left = request.budget().map(b -> b.coins()).orElse(Long.MAX_VALUE / 4);
        Set<String> used = new HashSet<>();
        List<Candidate> chosen = new ArrayList<>();
        for (Slot slot : slots) {
            reserve -= all.get(slot.id()).stream().mapToLong(Candidate::coins).min().orElse(0);
            long may = left - reserve;
            Optional<Candidate> best = all.get(slot.id()).stream().filter(c -> c.coins() <= may && !used.contains(c.product().sku()))
                    .max(Comparator.comparingDouble(score::points));
            if (best.isEmpty()) {
                return Optional.empty();
            }
            chosen.add(best.get());
            used.add(best.get().product().sku());
            left -= best.get().coins();
        }
        KitAudit audit = new KitAudit(request, KitSolver.lines(request.needs(), chosen));
        return audit.faults().isEmpty() ? Optional.of(audit.score()) : Optional.empty();
    }
}
