package boughwright.layout;

import boughwright.brief.Word;

/** Why no more gaps are filled. */
public enum GapStop implements Word {
    /** The largest gap that is left is smaller than the house's smallest accent is for. */
    BELOW_THRESHOLD,
    /** The accent ribbon gives no other accent that suits the largest gap. */
    RIBBON_USED_UP,
    /** As many are filled as the house asks for. */
    HOUSE_COUNT,
    /** The kit has no accent ribbon, or the house no accents. */
    NO_ACCENTS
}
