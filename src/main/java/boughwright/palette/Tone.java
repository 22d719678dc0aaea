package boughwright.palette;

import boughwright.colour.Lab;
import boughwright.colour.Srgb;

/**
 * One colour among those that are looked at together: of a palette, or of a product in a kit.
 *
 * @param id of the palette's colour its word ({@code main}, …), of a product its slot
 * @param name for people
 * @param share of what is seen, 0..1
 * @param part of the palette: 0 main, 1 second, 2 spark, 3 ground; of a product the one that it counts for
 */
public record Tone(String id, String name, Srgb colour, double share, int part) {

    /** A product's name without its sizes and finishes, which follow a comma; two products may share it. */
    public String shortName() {
        int comma = name.indexOf(',');
        return comma < 0 ? name : name.substring(0, comma);
    }

    public Lab lab() {
        return Lab.of(colour);
    }
}
