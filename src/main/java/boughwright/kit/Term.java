package boughwright.kit;

import boughwright.brief.Word;
import boughwright.needs.Needs;
import boughwright.text.Text;

/** The terms of the design score and the points each can bring; docs/design-score.md explains them one by one. */
public enum Term implements Word {
    LOOK_FIT(24), PALETTE_FIT(26), PALETTE_SHARES(12), TEXTURE_VARIETY(9), FINISH_MIX(6), SCALE_MIX(4), NO_NEAR_MISS(6), HOUSE_PREFERENCE(5),
    NO_LEFTOVERS(3), THRIFT(5),
    /** For each kind of piece that the customer has and the kit uses: more than a slot can gain by any other choice. */
    OWNED_USED(8),
    /** For each slot in a layer whose price level was chosen and that is off that level; more than a change costs. */
    PRICE_LEVEL(14),
    /** For each product that a change by hand brings with it; more than a slot can gain otherwise. */
    STABILITY(8);

    private final double weight;

    Term(double weight) {
        this.weight = weight;
    }

    /** Points for a value of 1, as shipped. */
    public double weight() {
        return weight;
    }

    /** Points for a value of 1 as the house of these needs weighs. */
    double weight(Needs needs) {
        return needs.weights().getOrDefault(word(), weight);
    }

    /** Whether its value counts things, and so may lie outside 0 to 1. */
    public boolean counts() {
        return this == OWNED_USED || this == PRICE_LEVEL || this == STABILITY;
    }

    /** What a value of this term says of a kit, in a sentence. */
    public String sentence(double value) {
        long whole = Math.round(counts() ? Math.abs(value) : 100 * value);
        return Text.of("term." + word() + ".says", whole);
    }
}
