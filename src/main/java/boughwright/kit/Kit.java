package boughwright.kit;

import boughwright.measure.Money;
import java.util.List;
import java.util.Optional;

/**
 * Everything for one tree.
 *
 * @param lines in the order of layers and needs
 * @param score points of the design score, the sum of the terms' points
 * @param bound no kit under the same demands can score more, as the solver proved
 * @param gap (bound − score) / score, a fraction, never below 0
 */
public record Kit(
        List<KitLine> lines, Money total, Optional<Money> budget, double score, List<TermScore> terms, double bound, double gap) {

    public Kit {
        lines = List.copyOf(lines);
        terms = List.copyOf(terms);
    }

    public Optional<KitLine> line(String needId) {
        return lines.stream().filter(l -> l.needId().equals(needId)).findFirst();
    }
}
