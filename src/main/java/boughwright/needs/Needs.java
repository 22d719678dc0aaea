package boughwright.needs;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that a kit has to bring, and what the house asks of it.
 *
 * @param edition the rulebook edition that said so
 * @param needs in the order of layers, ids unique
 * @param rules what the house asks of the kit, by the rules' ids
 * @param ribbon the measures of a run on this tree
 * @param accents what goes into a gap, by its size, smallest first
 * @param weights points of a term of the design score by its word, where the house weighs otherwise than the term itself does
 */
public record Needs(String edition, List<Need> needs, List<HouseRule> rules, RibbonMeasures ribbon, List<AccentChoice> accents,
        Map<String, Double> weights) {

    public Needs {
        needs = List.copyOf(needs);
        rules = List.copyOf(rules);
        accents = List.copyOf(accents);
        weights = Map.copyOf(weights);
    }

    /** Needs that a product fills, quantity above 0. */
    public List<Need> bought() {
        return needs.stream().filter(n -> n.role().bought() && n.quantity() > 0).toList();
    }

    public Optional<Need> need(String id) {
        return needs.stream().filter(n -> n.id().equals(id)).findFirst();
    }

    /** Sum of the quantities of a role in a layer. */
    public int quantity(Layer layer, Role role) {
        return needs.stream().filter(n -> n.layer() == layer && n.role() == role).mapToInt(Need::quantity).sum();
    }

    public <D extends Demand> List<D> demands(Class<D> kind) {
        return rules.stream().map(HouseRule::demand).filter(kind::isInstance).map(kind::cast).toList();
    }
}
