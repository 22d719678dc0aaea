package boughwright.layout;

import boughwright.needs.Layer;
import java.util.Map;

/**
 * How evenly a layout is spread.
 *
 * @param leastNeighbour least distance between the middles of two pieces that hang in the outer zone or at the tips, clusters
 *     counted as one, metres; 0 when there are fewer than two
 * @param leastNeighbourShare that over the same distance in the densest packing of as many equal discs on the same area,
 *     √(2·area/(√3·n)) (hexagonal packing, Thue)
 * @param largestEmptyDisc diameter of the largest disc on the surface that holds no piece and no ribbon after the accents, metres
 * @param meanSpacing that distance of the densest packing for all pieces of the body, runs and accents, metres
 * @param coverage area of each layer's pieces over the dressed area; layers lie over one another, so the sum may pass 1
 * @param sides share of the body's pieces on each side of the tree; they add up to 1, or are all 0 where there is no piece
 * @param alike filler balls whose nearest neighbour among them is of the same product, over all of them; 0 when all are of one
 * @param runsAcross runs of ribbon that cross a cluster
 */
public record Measures(
        double leastNeighbour, double leastNeighbourShare, double largestEmptyDisc, double meanSpacing, Map<Layer, Double> coverage,
        Map<Side, Double> sides, double alike, int runsAcross) {
}
