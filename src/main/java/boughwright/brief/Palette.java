package boughwright.brief;

import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import java.util.List;

/**
 * Four colours and what each does: main carries the tree, second answers it, spark is the little that surprises, ground is the
 * dark that gives depth.
 *
 * @param id the shop's word for it, or {@code own} for one that the customer chose
 */
public record Palette(String id, String title, Srgb main, Srgb second, Srgb spark, Srgb ground) {

    public static final String OWN = "own";

    /** The four in order main, second, spark, ground. */
    public List<Srgb> colours() {
        return List.of(main, second, spark, ground);
    }

    public List<Lab> labs() {
        return colours().stream().map(Lab::of).toList();
    }
}
