package boughwright.guard;

import boughwright.athome.AtHomePage;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a browser may load and run on each kind of page (Content Security Policy Level 3); docs/security.md says why each looser word is there.
 */
final class ContentPolicy {

    private static final String SELF = "'self'";
    private static final String NONE = "'none'";
    private static final String INLINE = "'unsafe-inline'";

    private ContentPolicy() {
    }

    /** @param nonce of this answer */
    static String of(String path, String nonce) {
        if (path.startsWith("/at-home/")) {
            return policy(Map.of("script-src", "'" + AtHomePage.scriptDigest() + "'", "style-src", INLINE, "img-src", SELF + " data:", "font-src", SELF,
                    "connect-src", SELF, "worker-src", SELF));
        }
        if (path.startsWith("/swagger-ui")) {
            return policy(Map.of("script-src", SELF, "style-src", SELF + " " + INLINE, "img-src", SELF + " data:", "connect-src", SELF));
        }
        if (path.matches("/(api|v3|schemas|lib|actuator)/.*")) {
            // A drawing that is opened by itself has its styles within it.
            return policy(Map.of("style-src", INLINE, "img-src", "data:", "font-src", "data:"));
        }
        return policy(Map.of(
                // Vaadin's client makes functions of the expressions that the kiosk sends, hence eval.
                "script-src", "'nonce-" + nonce + "' 'strict-dynamic' 'unsafe-eval'",
                // Vaadin's components write style elements while they run, which no nonce reaches.
                "style-src", SELF + " " + INLINE,
                "img-src", String.join(" ", SELF, "data:", "blob:"), "font-src", SELF + " data:", "connect-src", SELF, "worker-src", NONE, "manifest-src", SELF));
    }

    private static String policy(Map<String, String> allowed) {
        Map<String, String> all = new TreeMap<>(allowed);
        all.put("default-src", NONE);
        all.put("object-src", NONE);
        all.put("base-uri", SELF);
        all.put("form-action", SELF);
        all.put("frame-ancestors", NONE);
        return all.entrySet().stream().map(e -> e.getKey() + " " + e.getValue()).collect(Collectors.joining("; "));
    }
}
