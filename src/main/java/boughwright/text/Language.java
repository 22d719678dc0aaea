package boughwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The languages that the kiosk speaks, each with a message bundle of its own.
 *
 * <p>Which one is spoken belongs to a thread for the length of some work, see {@link Text#in}; a thread of which nobody said anything
 * speaks English.
 */
public enum Language {

    ENGLISH("en", "English"),
    GERMAN("de", "Deutsch"),
    SPANISH("es", "Español");

    private final String tag;
    private final String ownName;
    private final Locale locale;

    Language(String tag, String ownName) {
        this.tag = tag;
        this.ownName = ownName;
        this.locale = Locale.forLanguageTag(tag);
    }

    /** The language that this thread speaks at present. */
    public static Language now() {
        return Text.SPOKEN.get();
    }

    /** BCP 47: {@code de}. */
    public String tag() {
        return tag;
    }

    /** As those call it who speak it: {@code Deutsch}. */
    public String ownName() {
        return ownName;
    }

    public Locale locale() {
        return locale;
    }

    /** The language of a tag, whatever its region: {@code de-AT} is German. Empty for one that the kiosk does not speak. */
    public static Optional<Language> read(String tag) {
        String primary = tag == null ? "" : Locale.forLanguageTag(tag.strip().replace('_', '-')).getLanguage();
        for (Language language : values()) {
            if (language.tag.equals(primary)) {
                return Optional.of(language);
            }
        }
        return Optional.empty();
    }

    /** The language of a tag; English for one that the kiosk does not speak. */
    public static Language of(String tag) {
        return read(tag).orElse(ENGLISH);
    }

    /**
     * The one that somebody likes best among those that the kiosk speaks.
     *
     * @param ranges as in the header {@code Accept-Language} (RFC 9110, 12.5.4), may be null; what cannot be read names nothing
     */
    public static Optional<Language> liked(String ranges) {
        if (ranges == null || ranges.isBlank()) {
            return Optional.empty();
        }
        List<Locale.LanguageRange> wanted;
        try {
            wanted = new ArrayList<>(Locale.LanguageRange.parse(ranges));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
        return wanted.stream().filter(r -> r.getWeight() > 0).map(r -> read(r.getRange())).flatMap(Optional::stream).findFirst();
    }
}
