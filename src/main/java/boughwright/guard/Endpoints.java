package boughwright.guard;

import boughwright.people.Role;
import java.util.List;
import java.util.Set;
import org.springframework.http.HttpMethod;

/**
 * Who may ask for what over HTTP besides the screens. What lies under {@link #PREFIXES} and is not named here is refused.
 *
 * <p>None of these endpoints that changes anything goes by the session's cookie: a page of another site cannot use somebody's sign-in
 * through them, so they need no token against it. An endpoint with roles must be one that only reads.
 */
final class Endpoints {

    /** Everything that is no screen. */
    static final List<String> PREFIXES = List.of("/api/**", "/at-home/**", "/schemas/**", "/lib/**", "/v3/**", "/swagger-ui/**", "/swagger-ui.html", "/actuator/**");

    /**
     * An endpoint.
     *
     * @param roles that may ask for it; empty for everybody
     */
    record Endpoint(HttpMethod method, String pattern, Set<Role> roles) {
    }

    static final List<Endpoint> ALL = List.of(
            open(HttpMethod.POST, "/api/proposals"), open(HttpMethod.GET, "/api/proposals/*"), open(HttpMethod.GET, "/api/proposals/*/*"),
            open(HttpMethod.POST, "/api/proposals/*/changes"), open(HttpMethod.POST, "/api/colours"), open(HttpMethod.GET, "/api/show-trees/*"), open(HttpMethod.GET, "/api/products"),
            open(HttpMethod.GET, "/api/product"), open(HttpMethod.GET, "/api/product/drawing.svg"), open(HttpMethod.GET, "/api/product/photo.jpg"),
            open(HttpMethod.GET, "/api/show-trees/*"),
            // The till shows its key, which the endpoint itself looks at.
            open(HttpMethod.PUT, "/api/stock"),
            open(HttpMethod.GET, "/at-home/**"), open(HttpMethod.GET, "/schemas/**"), open(HttpMethod.GET, "/lib/**"),
            // What the interface is like is no secret: it is open itself, and its examples are invented.
            open(HttpMethod.GET, "/v3/api-docs"), open(HttpMethod.GET, "/v3/api-docs/**"), open(HttpMethod.GET, "/v3/api-docs.yaml"),
            open(HttpMethod.GET, "/swagger-ui/**"), open(HttpMethod.GET, "/swagger-ui.html"),
            open(HttpMethod.GET, "/actuator/health"), open(HttpMethod.GET, "/actuator/health/*"));

    private Endpoints() {
    }

    private static Endpoint open(HttpMethod method, String pattern) {
        return new Endpoint(method, pattern, Set.of());
    }
}
