package boughwright.brief;

import boughwright.text.Words;
import java.util.List;

/**
 * A style that the shop offers this season.
 *
 * @param blurb one sentence for the customer
 * @param palette the id of the palette that it is shown in unless the customer chooses another
 * @param textures those that belong to it, the most telling first
 * @param finishes likewise
 * @param words what title and blurb, which are as the shop wrote them, are in other languages
 */
public record Look(String id, String title, String blurb, String palette, List<String> textures, List<String> finishes, Words words) {

    public Look(String id, String title, String blurb, String palette, List<String> textures, List<String> finishes) {
        this(id, title, blurb, palette, textures, finishes, Words.NONE);
    }

    /** The title in the language that is spoken. */
    public String shownTitle() {
        return words.of(title);
    }

    /** The blurb in the language that is spoken. */
    public String shownBlurb() {
        return words.of(blurb);
    }
}
