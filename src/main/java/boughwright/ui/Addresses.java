package boughwright.ui;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Parts of addresses. */
final class Addresses {

    private Addresses() {
    }

    /** A text as one part of a path (RFC 3986). */
    static String part(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
