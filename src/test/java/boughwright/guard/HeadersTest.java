package boughwright.guard;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;

/** What browsers are told with each answer. The values are those that the OWASP Secure Headers Project recommends, as its list stood in 2024. */
class HeadersTest extends KioskServer {

    private static final String[] PAGES = {"/", "/staff", "/plan/kelp-4-moss", "/api/products", "/api/proposals/kelp-4-moss", "/at-home/kelp-4-moss", "/at-home/worker.js",
        "/lib/boughwright.css", "/schemas/brief.schema.json", "/v3/api-docs", "/swagger-ui/index.html", "/nowhere/at/all", "/api/nowhere"};

    @Autowired
    private ServletWebServerApplicationContext kiosk;

    @Test
    void every_answer_says_what_the_secure_headers_project_recommends() throws Exception {
        Map<String, String> recommended = new LinkedHashMap<>();
        recommended.put("X-Content-Type-Options", "nosniff");
        recommended.put("X-Frame-Options", "DENY");
        recommended.put("X-Permitted-Cross-Domain-Policies", "none");
        recommended.put("Referrer-Policy", "no-referrer");
        recommended.put("Cross-Origin-Embedder-Policy", "require-corp");
        recommended.put("Cross-Origin-Opener-Policy", "same-origin");
        recommended.put("Cross-Origin-Resource-Policy", "same-origin");
        for (String page : PAGES) {
            HttpResponse<String> answer = new Visitor(kiosk).ask("GET", page);
            recommended.forEach((name, value) -> assertThat(answer.headers().allValues(name)).as(page + " " + name).containsExactly(value));
            assertThat(answer.headers().firstValue("Permissions-Policy").orElse("")).as(page).contains("camera=()", "microphone=()", "geolocation=()", "payment=()", "usb=()");
            assertThat(answer.headers().allValues("Content-Security-Policy")).as(page).hasSize(1);
            // V3.4.3 and V3.4.6 of ASVS 5.0.
            assertThat(answer.headers().firstValue("Content-Security-Policy").orElse("")).as(page).contains("default-src 'none'", "object-src 'none'", "base-uri 'self'",
                    "frame-ancestors 'none'").doesNotContain("http:", "*");
            for (String telling : new String[] {"Server", "X-Powered-By", "Access-Control-Allow-Origin"}) {
                assertThat(answer.headers().firstValue(telling)).as(page + " " + telling).isEmpty();
            }
        }
    }

    @Test
    void only_scripts_with_the_page_s_own_mark_run_and_the_mark_is_new_each_time() throws Exception {
        Pattern marked = Pattern.compile("script-src 'nonce-([A-Za-z0-9+/=]{24})' 'strict-dynamic' 'unsafe-eval'");
        Matcher first = marked.matcher(new Visitor(kiosk).ask("GET", "/").headers().firstValue("Content-Security-Policy").orElse(""));
        HttpResponse<String> page = new Visitor(kiosk).ask("GET", "/");
        Matcher second = marked.matcher(page.headers().firstValue("Content-Security-Policy").orElse(""));
        assertThat(first.find() && second.find()).isTrue();
        assertThat(first.group(1)).isNotEqualTo(second.group(1));
        Matcher scripts = Pattern.compile("<script[^>]*>").matcher(page.body());
        int count = 0;
        while (scripts.find()) {
            assertThat(scripts.group()).contains("nonce=\"" + second.group(1) + "\"");
            count++;
        }
        assertThat(count).isPositive();
    }

    @Test
    void pages_about_somebody_are_not_kept_by_anything_between() throws Exception {
        for (String page : new String[] {"/", "/staff", "/plan/kelp-4-moss", "/api/proposals/kelp-4-moss", "/at-home/kelp-4-moss"}) {
            assertThat(new Visitor(kiosk).ask("GET", page).headers().firstValue("Cache-Control").orElse("")).as(page).contains("no-store");
        }
    }

    @Test
    void over_https_browsers_are_told_to_stay_there_for_a_year() throws Exception {
        assertThat(new Visitor(kiosk).ask("GET", "/").headers().firstValue("Strict-Transport-Security")).as("over plain HTTP it would mean nothing").isEmpty();
        org.springframework.mock.web.MockHttpServletRequest request = new org.springframework.mock.web.MockHttpServletRequest("GET", "/api/products");
        request.setSecure(true);
        org.springframework.mock.web.MockHttpServletResponse response = new org.springframework.mock.web.MockHttpServletResponse();
        kiosk.getBean("springSecurityFilterChain", jakarta.servlet.Filter.class).doFilter(request, response, new org.springframework.mock.web.MockFilterChain());
        // V3.4.1 of ASVS 5.0: at least a year.
        assertThat(response.getHeader("Strict-Transport-Security")).isEqualTo("max-age=31536000 ; includeSubDomains");
    }

    @Test
    void the_session_s_cookie_is_kept_from_scripts_and_from_other_sites() throws Exception {
        HttpResponse<String> first = new Visitor(kiosk).ask("GET", "/?v-r=init&location=&query=");
        String cookie = first.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).startsWith("JSESSIONID=").contains("; HttpOnly").contains("SameSite=Lax").contains("Path=/");
        assertThat(cookie.substring("JSESSIONID=".length(), cookie.indexOf(';'))).as("128 bits (ASVS 5.0, V7.2.3)").matches("[0-9A-F]{32}");
    }

    @Test
    void no_session_is_begun_for_other_programs_and_phones() throws Exception {
        for (String page : new String[] {"/api/products", "/at-home/kelp-4-moss", "/lib/boughwright.css", "/v3/api-docs"}) {
            assertThat(new Visitor(kiosk).ask("GET", page).headers().firstValue("Set-Cookie")).as(page).isEmpty();
        }
    }

    @Test
    void other_sites_may_not_ask_with_a_browser() throws Exception {
        HttpResponse<String> asked = new Visitor(kiosk).ask("OPTIONS", "/api/proposals", "Origin", "https://elsewhere.example", "Access-Control-Request-Method", "POST",
                "Access-Control-Request-Headers", "content-type");
        assertThat(asked.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
        // What a browser would send without asking first is not understood.
        assertThat(new Visitor(kiosk).ask("POST", "/api/proposals", HttpRequest.BodyPublishers.ofString("{}"), "Content-Type", "text/plain").statusCode()).isEqualTo(415);
    }

    @Test
    void a_screen_s_call_without_its_token_is_refused() throws Exception {
        Visitor visitor = new Visitor(kiosk);
        assertThat(visitor.screen("staff")).contains("staff-password");
        assertThat(visitor.screen("staff", "guessed")).contains("appError").doesNotContain("staff-password");
    }

    /** Nothing is pushed to screens, so no other site can open a line to one either. */
    @Test
    void no_web_socket_opens() throws Exception {
        for (String path : new String[] {"/VAADIN/push?v-r=push&v-uiId=0", "/?v-r=push&v-uiId=0&X-Atmosphere-Transport=websocket", "/vaadinServlet/VAADIN/push?v-r=push"}) {
            try {
                java.net.http.HttpClient.newHttpClient().newWebSocketBuilder().header("Origin", "https://elsewhere.example")
                        .buildAsync(java.net.URI.create("ws://localhost:" + port + path), new java.net.http.WebSocket.Listener() { }).get();
                throw new AssertionError(path + " opened");
            } catch (java.util.concurrent.ExecutionException refused) {
                assertThat(refused.getCause()).isInstanceOf(java.net.http.WebSocketHandshakeException.class);
            }
        }
    }

    @Test
    void a_body_is_counted_before_anybody_reads_it() throws Exception {
        for (String path : new String[] {"/api/proposals", "/api/proposals/kelp-4-moss/changes"}) {
            HttpResponse<String> answer = new Visitor(kiosk).ask("POST", path, HttpRequest.BodyPublishers.ofString(" ".repeat(400_001)), "Content-Type", "application/json");
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
            // Of a length that nobody has told.
            HttpResponse<String> unknown = new Visitor(kiosk).ask("POST", path,
                    HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(new byte[400_001])), "Content-Type", "application/json");
            assertThat(unknown.statusCode()).isEqualTo(413);
        }
        assertThat(new Visitor(kiosk).ask("POST", "/?v-r=uidl&v-uiId=0", HttpRequest.BodyPublishers.ofString(" ".repeat(1_000_001)), "Content-Type", "application/json")
                .statusCode()).isEqualTo(413);
    }
}
