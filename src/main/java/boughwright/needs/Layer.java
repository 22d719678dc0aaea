package boughwright.needs;

import boughwright.brief.Word;

/** The layers of a dressed tree, in the order in which they go on (common practice, no published source). */
public enum Layer implements Word {
    LIGHTS, TOPPER, RIBBON, FLORALS, ORNAMENTS, ACCENTS
}
