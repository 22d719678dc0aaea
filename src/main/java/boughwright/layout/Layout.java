package boughwright.layout;

import boughwright.needs.Spot;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where everything goes.
 *
 * @param pieces every piece of the kit that is set on the tree; of lights the place where each string begins
 * @param clusters middle of each cluster, by its id
 * @param bulbs the lamps of the light strings, metres in room coordinates
 * @param gapStop why no more gaps are filled
 * @param unplaced ids of needs for some of whose pieces the tree had no room, once for each piece
 * @param strained ids of needs whose pieces are heavier than any branch of this tree bears where they hang
 * @param clashes of what hands have moved
 */
public record Layout(
        List<Placement> pieces, SortedMap<String, Spot> clusters, List<Point> bulbs, List<RibbonRun> ribbonRuns, List<RollCuts> cutList, List<Gap> gaps, GapStop gapStop,
        Measures measures, List<String> unplaced, List<String> strained, List<Clash> clashes, long seed) {

    public Layout {
        pieces = List.copyOf(pieces);
        clusters = Collections.unmodifiableSortedMap(new TreeMap<>(clusters));
        bulbs = List.copyOf(bulbs);
        ribbonRuns = List.copyOf(ribbonRuns);
        cutList = List.copyOf(cutList);
        gaps = List.copyOf(gaps);
        unplaced = List.copyOf(unplaced);
        strained = List.copyOf(strained);
        clashes = List.copyOf(clashes);
    }
}
