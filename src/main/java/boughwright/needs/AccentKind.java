package boughwright.needs;

import boughwright.brief.Word;

/** What the third ribbon makes for a gap. */
public enum AccentKind implements Word {
    TAILS, ONE_LOOP_BOW, TWO_LOOP_BOW
}
