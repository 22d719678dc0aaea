package boughwright.brief;

import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.text.Text;
import boughwright.text.Words;
import java.util.List;

/**
 * Four colours and what each does: main carries the tree, second answers it, spark is the little that surprises, ground is the
 * dark that gives depth.
 *
 * @param id the shop's word for it, or {@code own} for one that the customer chose
 * @param words what the title, which is as the shop wrote it, is in other languages
 */
public record Palette(String id, String title, Srgb main, Srgb second, Srgb spark, Srgb ground, Words words) {

    public static final String OWN = "own";

    public Palette(String id, String title, Srgb main, Srgb second, Srgb spark, Srgb ground) {
        this(id, title, main, second, spark, ground, Words.NONE);
    }

    /** Four colours that a customer chose. */
    public static Palette own(Srgb main, Srgb second, Srgb spark, Srgb ground) {
        return new Palette(OWN, "", main, second, spark, ground);
    }

    /** The title in the language that is spoken. */
    public String shownTitle() {
        return id.equals(OWN) ? Text.of("brief.palette.own") : words.of(title);
    }

    /** The four in order main, second, spark, ground. */
    public List<Srgb> colours() {
        return List.of(main, second, spark, ground);
    }

    public List<Lab> labs() {
        return colours().stream().map(Lab::of).toList();
    }
}
