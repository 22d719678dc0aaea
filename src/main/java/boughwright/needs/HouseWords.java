package boughwright.needs;

import boughwright.brief.Word;
import java.util.Set;

/** The lists of words that a shop sets for its own style: which values of a trait may, or must not, fill a role. */
public enum HouseWords implements Word {

    OVERLAY_PATTERNS(Trait.PATTERN, Set.of()),
    BASE_WEAVES(Trait.WEAVE, Set.of()),
    ACCENT_WEAVES(Trait.WEAVE, Set.of()),
    BALL_MATERIALS(Trait.MATERIAL, Set.of()),
    /** Kept out of homes with small children (US Consumer Product Safety Commission advice on trimmings near small children). */
    NEVER_WITH_TODDLERS(Trait.SAFETY, Set.of("fragile", "food-like", "small-parts", "sharp", "tinsel")),
    /** Kept out of homes with animals (common practice, no published source). */
    NEVER_WITH_PETS(Trait.SAFETY, Set.of("fragile", "food-like", "small-parts", "tinsel"));

    private final Trait trait;
    private final Set<String> floor;

    HouseWords(Trait trait, Set<String> floor) {
        this.trait = trait;
        this.floor = floor;
    }

    /** The trait of a product whose values are listed. */
    public Trait trait() {
        return trait;
    }

    /** Words that safety keeps on the list whatever the shop prefers; empty when the list is one of style. */
    public Set<String> floor() {
        return floor;
    }
}
