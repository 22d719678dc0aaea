package boughwright.publishing;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * An edition of the house rules as it is kept; it never changes.
 *
 * @param number from 1, in the order in which editions were kept
 * @param id by which proposals name it
 * @param basedOn the edition from which it was made
 * @param madeAt UTC
 * @param texts its files by path, rule files not among them
 * @param override why it was published although reference briefs break; empty when none does
 */
public record KeptEdition(
        int number, String id, String title, String note, String author, Origin origin, Optional<Integer> basedOn, LocalDateTime madeAt,
        SortedMap<String, String> texts, String override) {

    /** Where an edition comes from: the rules folder of the kiosk, or the hands of staff. */
    public enum Origin { FOLDER, STAFF }

    public KeptEdition {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
    }
}
