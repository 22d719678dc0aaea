package boughwright.plan;

import boughwright.needs.Layer;
import java.util.List;

/**
 * One thing to do, in the order in which it is done.
 *
 * @param number from 1
 * @param text how to do it
 * @param pieces what to take in hand for it
 * @param places where each thing goes, one line each, in order; empty when the text says enough
 * @param placed ids of what hangs on the tree once it is done: of the layout's pieces, runs and gaps; those of {@code places} in
 *     their order
 * @param howTo knacks that it takes
 * @param minutes for a person doing it for the first time
 */
public record Step(
        int number, Layer layer, String title, String text, List<StepPiece> pieces, List<String> places, List<String> placed, List<HowTo> howTo,
        int minutes) {

    public Step {
        pieces = List.copyOf(pieces);
        places = List.copyOf(places);
        placed = List.copyOf(placed);
        howTo = List.copyOf(howTo);
    }

    public record StepPiece(String sku, String name, int quantity) {
    }
}
