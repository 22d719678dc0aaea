package boughwright.brief;

import boughwright.text.Text;

/**
 * One thing that keeps a brief from being read.
 *
 * @param field path of the field, as in {@code tree.height} or {@code owned[2].sku}
 * @param value what stands there, as text; empty when nothing does
 * @param mend what is allowed, as a sentence
 */
public record BriefFault(String field, String value, String mend) {

    /** The three together in one sentence. */
    public String sentence() {
        return value.isEmpty() ? Text.of("brief.fault.missing", field, mend) : Text.of("brief.fault", field, value, mend);
    }
}
