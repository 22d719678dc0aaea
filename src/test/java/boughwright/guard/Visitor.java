package boughwright.guard;

import boughwright.people.Role;
import boughwright.people.SignedIn;
import boughwright.people.SignedInAs;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.catalina.Context;
import org.springframework.boot.web.embedded.tomcat.TomcatWebServer;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;

/** Somebody with a browser's cookies and nothing else, who asks by HTTP and opens screens by the calls that Vaadin's client would make. */
final class Visitor {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final ServletWebServerApplicationContext kiosk;
    private final String address;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder().cookieHandler(cookies).build();

    Visitor(ServletWebServerApplicationContext kiosk) {
        this.kiosk = kiosk;
        this.address = "http://localhost:" + kiosk.getWebServer().getPort();
    }

    HttpResponse<String> ask(String method, String path, String... headers) throws IOException, InterruptedException {
        return ask(method, path, HttpRequest.BodyPublishers.noBody(), headers);
    }

    HttpResponse<String> ask(String method, String path, HttpRequest.BodyPublisher body, String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path)).method(method, body);
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    String sessionId() {
        return cookies.getCookieStore().getCookies().stream().filter(c -> c.getName().equals("JSESSIONID")).map(HttpCookie::getValue).findFirst().orElseThrow();
    }

    /** Signs in as anybody of a role, behind the door's back. */
    Visitor as(Role role) throws IOException, InterruptedException {
        ask("GET", "/?v-r=init&location=&query=");
        Context context = (Context) ((TomcatWebServer) kiosk.getWebServer()).getTomcat().getHost().findChildren()[0];
        SignedIn in = SignedInAs.any(kiosk, role);
        context.getManager().findSession(sessionId()).getSession().setAttribute(SignedIn.ATTRIBUTE, in);
        return this;
    }

    /** What the kiosk tells the client to show at an address: the changes to the page, as JSON. */
    String screen(String route) throws IOException, InterruptedException {
        return screen(route, "");
    }

    /** @param token against forged calls; empty for the right one */
    String screen(String route, String token) throws IOException, InterruptedException {
        JsonNode init = JSON.readTree(ask("GET", "/?v-r=init&location=" + URLEncoder.encode(route, StandardCharsets.UTF_8) + "&query=").body());
        JsonNode config = init.path("appConfig");
        String call = JSON.writeValueAsString(JSON.createObjectNode().put("csrfToken", token.isEmpty() ? config.path("uidl").path("Vaadin-Security-Key").asText() : token).put("syncId", 0).put("clientId", 0)
                .set("rpc", JSON.createArrayNode().add(JSON.createObjectNode().put("type", "event").put("node", 1).put("event", "ui-navigate")
                        .set("data", JSON.createObjectNode().put("route", route).put("query", "").put("appShellTitle", "").put("trigger", "").putNull("historyState")))));
        HttpResponse<String> answer = ask("POST", "/?v-r=uidl&v-uiId=" + config.path("v-uiId").asInt(), HttpRequest.BodyPublishers.ofString(call), "Content-Type", "application/json");
        return answer.body();
    }

    Optional<HttpCookie> cookie(String name) {
        return cookies.getCookieStore().getCookies().stream().filter(c -> c.getName().equals(name)).findFirst();
    }
}
