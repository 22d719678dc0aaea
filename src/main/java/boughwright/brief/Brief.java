package boughwright.brief;

import boughwright.measure.Money;
import boughwright.measure.Units;
import java.util.List;
import java.util.Optional;

/**
 * What a consultation has learned: complete, checked, in SI.
 *
 * @param units those in which the customer gave the height, and so reads the answer
 * @param asGiven the customer's own JSON, so that nothing they said is lost; two briefs that mean the same may differ in it
 */
public record Brief(
        Tree tree,
        Room room,
        Household household,
        Look look,
        Palette palette,
        Abundance abundance,
        Optional<Money> budget,
        List<Owned> owned,
        Units units,
        String asGiven) {

    public Brief {
        owned = List.copyOf(owned);
    }

    public Brief withAbundance(Abundance other) {
        return new Brief(tree, room, household, look, palette, other, budget, owned, units, asGiven);
    }

    public Brief withOwned(List<Owned> other) {
        return new Brief(tree, room, household, look, palette, abundance, budget, other, units, asGiven);
    }

    public Brief withBudget(Optional<Money> other) {
        return new Brief(tree, room, household, look, palette, abundance, other, owned, units, asGiven);
    }

    public Brief withPalette(Palette other) {
        return new Brief(tree, room, household, look, other, abundance, budget, owned, units, asGiven);
    }

    /** The same brief for somebody who reads other units. */
    public Brief withUnits(Units other) {
        return new Brief(tree, room, household, look, palette, abundance, budget, owned, other, asGiven);
    }

    public Brief withTree(Tree other) {
        return new Brief(other, room, household, look, palette, abundance, budget, owned, units, asGiven);
    }
}
