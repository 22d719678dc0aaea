package boughwright.drawing;

import java.util.List;

/**
 * One run of two ribbons pinched together: a wide base beneath and a narrower overlay on it.
 *
 * @param id            unique in the scene; becomes {@code data-piece} of each of its parts
 * @param title         what a pointer or a screen reader says of it
 * @param layer         the layer that shows or hides it
 * @param points        {x, y, z} in metres along the middle of the ribbon, the bulge of each loop already in them, about
 *                      12 points a loop; the pinches are the points nearest the trunk; at least 2
 * @param baseWidth     metres
 * @param baseColour    {@code #rrggbb}
 * @param overlayWidth  metres; 0 draws the base alone
 * @param overlayColour {@code #rrggbb}
 * @param pattern       of the overlay
 */
public record Band(String id, String title, String layer, List<double[]> points, double baseWidth, String baseColour,
                   double overlayWidth, String overlayColour, RibbonPattern pattern) {

    public Band {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("ribbon " + id + " needs at least two points");
        }
        Tint.check(baseColour);
        Tint.check(overlayColour);
    }
}
