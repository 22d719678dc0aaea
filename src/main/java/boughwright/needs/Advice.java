package boughwright.needs;

import boughwright.measure.Length;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a rule concludes that somebody should take care of; it becomes a {@link Caution} under the rule's id.
 *
 * <p>The text is one whole sentence or several, so that it can be translated. Its places are house numbers by name, such as
 * {@code {heat-distance}}, and what the rule gives in {@code values}.
 *
 * @param source where the advice comes from
 * @param values by the name of their place: a {@link Long} or a {@link Length}
 */
public record Advice(String text, String source, SortedMap<String, Object> values) {

    public Advice {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    public Advice(String text, String source) {
        this(text, source, new TreeMap<>());
    }

    public Advice with(String place, long number) {
        return with(place, (Object) number);
    }

    public Advice with(String place, Length length) {
        return with(place, (Object) length);
    }

    private Advice with(String place, Object value) {
        SortedMap<String, Object> more = new TreeMap<>(values);
        more.put(place, value);
        return new Advice(text, source, more);
    }
}
