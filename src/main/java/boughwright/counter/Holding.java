package boughwright.counter;

import java.util.SortedMap;

/** What came of asking for packs to be held. */
public sealed interface Holding {

    /** @param again whether it was asked for before, with the same key, and was answered again */
    record Held(Hold hold, boolean again) implements Holding {
    }

    /**
     * Nothing has changed: some of it is promised to others, or gone.
     *
     * @param left by SKU, how many packs of those that are too scarce could be had
     */
    record Scarce(SortedMap<String, Integer> left) implements Holding {
    }

    /** There is nothing to hold: no such consultation, or its customer owns everything. */
    record Nothing() implements Holding {
    }
}
