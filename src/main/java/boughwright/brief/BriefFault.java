package boughwright.brief;

import boughwright.text.Text;

/**
 * One thing that keeps a brief from being read.
 *
 * @param field path of the field, as in {@code tree.height} or {@code owned[2].sku}
 * @param value what stands there, as text; empty when nothing does
 * @param mend what is allowed, as a sentence
 */
public record BriefFault(String field, String value, String mend, Kind kind) {

    /** A value that will not do, a required field that is not there, or a text that has no fields at all. */
    public enum Kind { WRONG, MISSING, UNREADABLE }

    public static BriefFault wrong(String field, String value, String mend) {
        return new BriefFault(field, value, mend, Kind.WRONG);
    }

    static BriefFault missing(String field, String mend) {
        return new BriefFault(field, "", mend, Kind.MISSING);
    }

    /** The three together in one sentence. */
    public String sentence() {
        return switch (kind) {
            case WRONG -> Text.of("brief.fault", field, value, mend);
            case MISSING -> Text.of("brief.fault.missing", field, mend);
            case UNREADABLE -> mend;
        };
    }

    /** @param field path of an {@code owned} entry's SKU that no product has */
    public static BriefFault unknownSku(String field, String sku) {
        return wrong(field, sku, Text.of("brief.owned.unknown"));
    }
}
