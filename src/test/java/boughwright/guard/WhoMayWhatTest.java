package boughwright.guard;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import boughwright.people.Role;
import boughwright.text.Text;
import com.vaadin.flow.router.RouteData;
import com.vaadin.flow.server.VaadinServletContext;
import com.vaadin.flow.server.startup.ApplicationRouteRegistry;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

/**
 * Every screen and every endpoint that there is, asked for by nobody and by each role, against what is written here (as OWASP ASVS 5.0,
 * V8.2.1 and V8.3.1, ask for: each function for those alone who may use it, enforced by the server). What is not written here fails.
 */
class WhoMayWhatTest extends KioskServer {

    private static final Set<Role> MANAGER = EnumSet.of(Role.MANAGER);
    private static final Set<Role> ALL = EnumSet.allOf(Role.class);

    /** Screens by the name of their class: who may open it; empty for everybody, with a sign-in or without. */
    private static final Map<String, Optional<Set<Role>>> SCREENS = new TreeMap<>(Map.ofEntries(
            Map.entry("InvitingView", Optional.empty()),
            Map.entry("CodeView", Optional.empty()),
            Map.entry("InterviewView", Optional.empty()),
            Map.entry("ProposalView", Optional.empty()),
            Map.entry("WaysView", Optional.empty()),
            Map.entry("YearsView", Optional.empty()),
            Map.entry("StaffView", Optional.of(ALL)),
            Map.entry("ProfileView", Optional.of(ALL)),
            Map.entry("CounterView", Optional.of(EnumSet.of(Role.ASSOCIATE, Role.MANAGER))),
            Map.entry("PickingView", Optional.of(EnumSet.of(Role.ASSOCIATE, Role.STOCK_ROOM, Role.MANAGER))),
            Map.entry("FiguresView", Optional.of(MANAGER)),
            Map.entry("TermsView", Optional.of(MANAGER)),
            Map.entry("PeopleView", Optional.of(MANAGER)),
            Map.entry("HouseRulesView", Optional.of(EnumSet.of(Role.MERCHANDISER, Role.MANAGER))),
            Map.entry("ShelfView", Optional.of(EnumSet.of(Role.MERCHANDISER, Role.STOCK_ROOM, Role.MANAGER)))));

    /** Who may ask for an endpoint. */
    private sealed interface Who {

        /** Everybody. */
        record Everybody() implements Who {
        }

        /** Whoever shows the till's key; nobody else, whatever they have signed in as. */
        record Key() implements Who {
        }

        /** Some roles. */
        record Some(Set<Role> roles) implements Who {
        }

        /** Nobody over HTTP. */
        record Nobody() implements Who {
        }
    }

    private static final Who EVERYBODY = new Who.Everybody();
    private static final Map<String, Who> ENDPOINTS = new LinkedHashMap<>();

    static {
        for (String open : new String[] {"POST /api/proposals", "GET /api/proposals/{code}", "POST /api/proposals/{code}/changes", "GET /api/proposals/{code}/plan.pdf",
            "GET /api/proposals/{code}/{view:front|left|right|back|above}.svg", "GET /api/proposals/{code}/picklist.csv", "GET /api/proposals/{code}/scene.json",
            "GET /api/proposals/{code}/colours", "GET /api/proposals/{code}/at-home.svg", "GET /api/proposals/{code}/at-home", "POST /api/colours", "GET /api/products", "GET /api/product",
            "GET /api/product/drawing.svg", "GET /api/product/photo.jpg", "GET /api/show-trees/{look:[a-z0-9-]+}.svg", "GET /at-home/{token:[A-Za-z0-9 -]+}", "GET /at-home/worker.js", "GET /v3/api-docs",
            "GET /v3/api-docs.yaml", "GET /v3/api-docs/swagger-config", "GET /swagger-ui.html", "GET /actuator/health", "GET /actuator/health/**", "GET /livez", "GET /readyz"}) {
            ENDPOINTS.put(open, EVERYBODY);
        }
        ENDPOINTS.put("PUT /api/stock", new Who.Key());
        ENDPOINTS.put("GET /actuator", new Who.Nobody());
    }

    @Autowired
    private ServletWebServerApplicationContext kiosk;

    @Test
    void every_screen_opens_for_those_who_may_and_for_nobody_else() throws Exception {
        Map<String, RouteData> routes = new TreeMap<>();
        ApplicationRouteRegistry.getInstance(new VaadinServletContext(kiosk.getServletContext())).getRegisteredRoutes()
                .stream().filter(route -> shipped(route.getNavigationTarget())).forEach(route -> routes.put(route.getNavigationTarget().getSimpleName(), route));
        assertThat(routes.keySet()).as("screens that are not in the table, or in the table alone").isEqualTo(SCREENS.keySet());
        for (Map.Entry<String, RouteData> screen : routes.entrySet()) {
            String route = screen.getValue().getTemplate().replaceAll("/?:.*", "");
            Optional<Set<Role>> roles = SCREENS.get(screen.getKey());
            String nobodys = new Visitor(kiosk).screen(route);
            assertThat(door(nobodys)).as(screen.getKey() + " without a sign-in: " + nobodys).isEqualTo(roles.isPresent());
            for (Role role : Role.values()) {
                String shown = new Visitor(kiosk).as(role).screen(route);
                assertThat(shown).as(screen.getKey() + " for " + role).contains("\"changes\"").doesNotContain("appError");
                assertThat(door(shown)).as(screen.getKey() + " for " + role + " asks for a sign-in").isFalse();
                boolean refused = shown.contains(Text.of("staff.not-for"));
                assertThat(refused).as(screen.getKey() + " for " + role).isEqualTo(roles.isPresent() && !roles.get().contains(role));
                assertThat(shown.contains(Text.of("staff.out"))).as(screen.getKey() + " for " + role + " shows the bar of staff").isEqualTo(roles.isPresent() && !refused);
            }
        }
    }

    /** Tests have a screen of their own. */
    private static boolean shipped(Class<?> view) {
        return !view.getProtectionDomain().getCodeSource().getLocation().getPath().contains("test-classes");
    }

    /** First start or later: the door asks for a name and a password. */
    private static boolean door(String shown) {
        return shown.contains("staff-password");
    }

    @Test
    void every_endpoint_answers_those_who_may_and_nobody_else() throws Exception {
        Map<String, RequestMappingInfo> found = endpoints();
        assertThat(found.keySet()).as("endpoints that are not in the table, or in the table alone").isEqualTo(new TreeSet<>(ENDPOINTS.keySet()));
        for (String endpoint : found.keySet()) {
            String method = endpoint.substring(0, endpoint.indexOf(' '));
            String path = endpoint.substring(endpoint.indexOf(' ') + 1).replaceAll("\\{(code|token)[^}]*}", "kelp-4-moss").replaceAll("\\{view[^}]*}", "front").replaceAll("\\{look[^}]*}", "woodland").replace("/**", "/liveness");
            allows(ENDPOINTS.get(endpoint), new Visitor(kiosk), Optional.empty(), method, path);
            for (Role role : Role.values()) {
                allows(ENDPOINTS.get(endpoint), new Visitor(kiosk).as(role), Optional.of(role), method, path);
            }
        }
    }

    private Map<String, RequestMappingInfo> endpoints() {
        Map<String, RequestMappingInfo> found = new TreeMap<>();
        kiosk.getBeansOfType(RequestMappingInfoHandlerMapping.class).values().forEach(mapping -> mapping.getHandlerMethods().forEach((info, handler) -> {
            // Where errors are told; nothing is there to ask for.
            if (!handler.getBeanType().getSimpleName().equals("BasicErrorController")) {
                for (String pattern : info.getPatternValues()) {
                    Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
                    assertThat(methods).as(pattern + " answers to a method that is named").isNotEmpty();
                    methods.forEach(method -> found.put(method + " " + pattern, info));
                }
            }
        }));
        return found;
    }

    private static void allows(Who who, Visitor visitor, Optional<Role> role, String method, String path) throws Exception {
        HttpRequest.BodyPublisher body = method.equals("GET") ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString("{}");
        HttpResponse<String> answer = visitor.ask(method, path, body, "Content-Type", path.equals("/api/colours") ? "image/png" : "application/json");
        boolean refused = answer.statusCode() == 401 || answer.statusCode() == 403 || answer.body().contains(Text.of("guard.nothing.title"));
        String as = method + " " + path + " for " + role.map(Role::name).orElse("nobody") + ": " + answer.statusCode() + " " + answer.body();
        if (who instanceof Who.Key) {
            assertThat(answer.statusCode()).as(as).isEqualTo(401);
            assertThat(answer.headers().firstValue("WWW-Authenticate")).as(as).contains("Bearer");
        } else {
            boolean may = who instanceof Who.Everybody || who instanceof Who.Some some && role.filter(some.roles()::contains).isPresent();
            assertThat(refused).as(as).isEqualTo(!may);
            assertThat(answer.statusCode()).as(as).isNotEqualTo(500);
        }
    }

    @Test
    void what_nobody_has_named_is_refused() throws Exception {
        for (String path : new String[] {"/api/people", "/api/proposals/kelp-4-moss/extra/thing", "/actuator/env", "/actuator/heapdump", "/actuator/loggers", "/v3/other"}) {
            HttpResponse<String> answer = new Visitor(kiosk).as(Role.MANAGER).ask("GET", path);
            assertThat(answer.statusCode()).as(path).isEqualTo(404);
            assertThat(answer.headers().firstValue("Content-Type").orElse("")).as(path).startsWith("application/problem+json");
        }
        assertThat(new Visitor(kiosk).ask("DELETE", "/api/proposals/kelp-4-moss").statusCode()).isEqualTo(404);
    }
}
