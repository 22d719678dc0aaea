package boughwright.plan;

import boughwright.brief.Word;

/** A knack that a drawing shows better than words; the drawings are named like these. */
public enum HowTo implements Word {
    TWO_LOOP_BOW, LOOP_WITH_TWIST, FISHTAIL_CUT, BIND_CLUSTER, FOLD_STEM, WIND_CORD, TUCK_BALLS
}
