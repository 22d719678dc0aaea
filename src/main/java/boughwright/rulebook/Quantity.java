package boughwright.rulebook;

import boughwright.brief.Word;

/** The quantities that the rulebook's tables size, each with its own file. */
enum Quantity implements Word {
    LIGHT_BULBS, TOPPER_GROUPINGS, BODY_RIBBON, ACCENT_RIBBON, CLUSTERS, SINGLE_FLOWERS, SPRAY_STYLES, SPRAYS, FILLER_BALLS,
    FEATURE_ORNAMENTS, GAP_ACCENTS;

    String file() {
        return "sizing/" + word() + ".dmn";
    }
}
