package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Leaves out candidates that no best kit needs.
 *
 * <p>A candidate is dominated by another of its slot that costs no more, brings no fewer points and shows the same in every
 * respect that a constraint or a counting term looks at, and in no capped layer costs more. Since a product fills only one slot, one dominator could be taken
 * elsewhere; so a candidate goes only when it has more dominators than there are other slots that any of them may fill. Then in
 * every kit at least one of them is free to take its place, the kit gets no worse and no dearer, and the optimum stays what it
 * was. Of candidates that are alike in everything the first SKU dominates, so two never rule out each other.
 */
final class Pruning {

    private final Optional<DesignScore> score;
    private final Needs needs;
    private final Set<Layer> capped;
    private final Map<String, Set<String>> slotsOf = new HashMap<>();
    private final Map<Role, List<Trait>> constrained = new EnumMap<>(Role.class);
    private final List<Demand.DarkOne> darkOnes;
    private final List<Demand.Narrower> narrowers;

    /**
     * @param score empty when only money matters; then points and what only they look at tell no candidates apart
     * @param candidates by slot id, of all slots
     */
    Pruning(KitRequest request, Optional<DesignScore> score, Map<String, List<Candidate>> candidates) {
        this.score = score;
        this.needs = request.needs();
        this.capped = request.hand().caps().keySet();
        this.darkOnes = needs.demands(Demand.DarkOne.class);
        this.narrowers = needs.demands(Demand.Narrower.class);
        candidates.forEach((slot, list) -> list.forEach(c -> slotsOf.computeIfAbsent(c.product().sku(), s -> new HashSet<>()).add(slot)));
    }

    /** What is left of a slot's candidates, in their order. */
    List<Candidate> left(String slot, List<Candidate> candidates) {
        Map<Object, List<Rated>> alike = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            alike.computeIfAbsent(shown(candidate), x -> new ArrayList<>()).add(new Rated(candidate, score.map(s -> s.points(candidate)).orElse(0.0)));
        }
        List<Candidate> left = new ArrayList<>();
        for (List<Rated> group : alike.values()) {
            group.stream().filter(r -> needed(slot, r, group)).map(Rated::candidate).forEach(left::add);
        }
        left.sort((a, b) -> a.product().sku().compareTo(b.product().sku()));
        return left;
    }

    private record Rated(Candidate candidate, double points) {

        boolean dominates(Rated other, Set<Layer> capped) {
            if (candidate.coins() > other.candidate.coins() || points < other.points
                    || capped.stream().anyMatch(l -> candidate.coinsIn(l) > other.candidate.coinsIn(l))) {
                return false;
            }
            return candidate.coins() < other.candidate.coins() || points > other.points
                    || candidate.product().sku().compareTo(other.candidate.product().sku()) < 0;
        }
    }

    private boolean needed(String slot, Rated rated, List<Rated> group) {
        int dominators = 0;
        Set<String> elsewhere = new HashSet<>();
        for (Rated other : group) {
            if (other != rated && other.dominates(rated, capped)) {
                dominators++;
                elsewhere.addAll(slotsOf.get(other.candidate().product().sku()));
            }
        }
        elsewhere.remove(slot);
        return dominators <= elsewhere.size();
    }

    /** Everything but points and money by which constraints and counting terms tell candidates of one slot apart. */
    private List<Object> shown(Candidate candidate) {
        Product product = candidate.product();
        Role role = candidate.slot().role();
        List<Object> shown = new ArrayList<>();
        shown.add(candidate.slot().quantity());
        shown.add(candidate.breaks());
        score.ifPresent(s -> {
            shown.add(role == Role.LIGHT_STRING ? 0 : DesignScore.shareGroup(s.part(role, product)));
            shown.add(product.texture());
            if (DesignScore.inLayer(candidate.slot(), Layer.ORNAMENTS)) {
                shown.add(product.finish());
            }
            if (DesignScore.inLayer(candidate.slot(), Layer.FLORALS)) {
                shown.add(product.scale());
            }
        });
        for (Trait trait : constrained.computeIfAbsent(role, this::constrained)) {
            shown.add(product.values(trait));
        }
        for (Demand.DarkOne dark : darkOnes) {
            shown.add(dark.roles().contains(role) && product.lab().l() <= dark.lightness());
        }
        for (Demand.Narrower narrower : narrowers) {
            if (narrower.narrower() == role || narrower.wider() == role) {
                shown.add(product.width());
            }
        }
        return shown;
    }

    private List<Trait> constrained(Role role) {
        List<Trait> traits = new ArrayList<>();
        needs.demands(Demand.Variety.class).stream().filter(d -> d.roles().contains(role)).map(Demand.Variety::trait).forEach(traits::add);
        needs.demands(Demand.Differ.class).stream().filter(d -> d.one() == role || d.other() == role).map(Demand.Differ::trait).forEach(traits::add);
        return traits;
    }
}
