package boughwright.needs;

import boughwright.brief.Word;

/** What a need counts. A roll is 10 yd of ribbon; a bulb is one lamp of a light string. */
public enum Unit implements Word {
    BULB, GROUPING, STEM, ROLL, CLUSTER, PIECE, ACCENT
}
