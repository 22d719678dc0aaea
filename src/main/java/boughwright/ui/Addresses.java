package boughwright.ui;

import boughwright.measure.Units;
import boughwright.text.Language;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Parts of addresses. */
final class Addresses {

    private Addresses() {
    }

    /** The query that asks for what a screen shows: in the language that is spoken, in the units that are read. */
    static String told(Units units) {
        return "language=" + Language.now().tag() + "&units=" + units.name().toLowerCase(Locale.ROOT);
    }

    /** A text as one part of a path (RFC 3986). */
    static String part(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
