package boughwright.kit;

import boughwright.brief.Word;

/** The terms of the design score and the points each can bring; docs/design-score.md explains them one by one. */
public enum Term implements Word {
    LOOK_FIT(24), PALETTE_FIT(26), PALETTE_SHARES(12), TEXTURE_VARIETY(9), FINISH_MIX(6), SCALE_MIX(4), NO_NEAR_MISS(6), HOUSE_PREFERENCE(5),
    OWNED_USED(12), NO_LEFTOVERS(3), THRIFT(5);

    private final double weight;

    Term(double weight) {
        this.weight = weight;
    }

    /** Points for a value of 1. */
    public double weight() {
        return weight;
    }
}
