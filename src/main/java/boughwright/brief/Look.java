package boughwright.brief;

import java.util.List;

/**
 * A style that the shop offers this season.
 *
 * @param blurb one sentence for the customer
 * @param palette the id of the palette that it is shown in unless the customer chooses another
 * @param textures those that belong to it, the most telling first
 * @param finishes likewise
 */
public record Look(String id, String title, String blurb, String palette, List<String> textures, List<String> finishes) {
}
