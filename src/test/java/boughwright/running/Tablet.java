package boughwright.running;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;

/**
 * A browser without a face: opens a screen of the kiosk and presses its buttons, with the messages that Vaadin's own client sends
 * (flow-client 24.9: {@code v-r=init}, then {@code v-r=uidl} with the token, the number of the last message and events by node). It knows
 * of the page what the server has told: elements, their texts and which of them listen for a click.
 */
final class Tablet {

    private static final ObjectMapper JSON = new ObjectMapper();
    // Features of the server's tree of nodes, as flow-server names them in NodeFeatureRegistry.
    private static final int ELEMENT = 0;
    private static final int CHILDREN = 2;
    private static final int ATTRIBUTES = 3;
    private static final int TEXT = 7;
    private static final int CLASSES = 11;

    private final CookieManager cookies = new CookieManager();
    private final HttpClient http;
    private final String address;
    private final Map<Integer, Node> nodes = new HashMap<>();
    private final AtomicInteger drawings = new AtomicInteger();
    private String token = "";
    private int ui;
    private int synced;
    private int sent;

    private static final class Node {

        private String tag = "";
        private String text = "";
        private final List<String> classes = new ArrayList<>();
        private final List<Integer> children = new ArrayList<>();
    }

    Tablet(String address) {
        this.address = address;
        this.http = HttpClient.newBuilder().cookieHandler(cookies).followRedirects(HttpClient.Redirect.NORMAL).connectTimeout(Duration.ofSeconds(10)).build();
    }

    /** Opens a screen as a browser does that is sent there. */
    void open(String route) throws IOException, InterruptedException {
        nodes.clear();
        sent = 0;
        ask(HttpRequest.newBuilder(URI.create(address + "/" + route)).build());
        JsonNode init = JSON.readTree(ask(HttpRequest.newBuilder(URI.create(address + "/?v-r=init&location=" + URLEncoder.encode(route, StandardCharsets.UTF_8)
                + "&query=&v-browserDetails=" + URLEncoder.encode("{\"v-sh\":\"800\",\"v-sw\":\"1280\",\"v-wh\":\"800\",\"v-ww\":\"1280\",\"v-tzo\":\"0\"}", StandardCharsets.UTF_8)))
                .build()));
        JsonNode config = init.path("appConfig");
        ui = config.path("v-uiId").asInt();
        token = config.path("uidl").path("Vaadin-Security-Key").asText();
        take(config.path("uidl"));
        ObjectNode data = JSON.createObjectNode().put("route", route).put("query", "").put("appShellTitle", "").put("trigger", "");
        data.putObject("historyState");
        event(1, "ui-navigate", data);
    }

    /** Presses the first button that is meant. */
    void press(Predicate<String> button) throws IOException, InterruptedException {
        int node = buttons().stream().filter(n -> button.test(text(n))).findFirst()
                .orElseThrow(() -> new IllegalStateException("no such button among " + buttons().stream().map(this::text).toList()));
        press(node);
    }

    void press(int node) throws IOException, InterruptedException {
        event(node, "click", JSON.createObjectNode());
    }

    /** Nodes of the buttons on the page, in its order. */
    List<Integer> buttons() {
        List<Integer> found = new ArrayList<>();
        roots().forEach(root -> walk(root, found));
        return found;
    }

    /** The page itself and what hangs from it by other ways than as a child. */
    private List<Integer> roots() {
        Set<Integer> children = new HashSet<>();
        nodes.values().forEach(n -> children.addAll(n.children));
        return nodes.keySet().stream().filter(n -> !children.contains(n)).sorted().toList();
    }

    private void walk(int node, List<Integer> found) {
        Node at = nodes.get(node);
        if (at == null) {
            return;
        }
        if (at.tag.equals("button")) {
            found.add(node);
        }
        at.children.forEach(c -> walk(c, found));
    }

    String text(int node) {
        Node at = nodes.get(node);
        if (at == null) {
            return "";
        }
        StringBuilder words = new StringBuilder(at.text);
        at.children.forEach(c -> words.append(text(c)));
        return words.toString();
    }

    boolean is(int node, String className) {
        return nodes.get(node).classes.contains(className);
    }

    /** All words on the page. */
    String words() {
        StringBuilder words = new StringBuilder();
        roots().forEach(root -> words.append(text(root)).append('\n'));
        return words.toString();
    }

    /** Whether anything on the page has a class. */
    boolean shows(String className) {
        return roots().stream().anyMatch(root -> shows(root, className));
    }

    private boolean shows(int node, String className) {
        Node at = nodes.get(node);
        return at != null && (at.classes.contains(className) || at.children.stream().anyMatch(c -> shows(c, className)));
    }

    /** Finishes and clears, as the page does: the next page that is asked for is given to nobody's session. */
    void wipe() throws IOException, InterruptedException {
        HttpCookie wiped = new HttpCookie("boughwright-wiped", "1");
        wiped.setPath("/");
        wiped.setDomain(URI.create(address).getHost());
        wiped.setVersion(0);
        cookies.getCookieStore().add(URI.create(address), wiped);
        ask(HttpRequest.newBuilder(URI.create(address + "/")).build());
        nodes.clear();
    }

    /** How many drawings were fetched so far. */
    int drawings() {
        return drawings.get();
    }

    /** Asks whether there is something new, as a screen does that waits. */
    void poll() throws IOException, InterruptedException {
        event(1, "ui-poll", JSON.createObjectNode());
    }

    private void event(int node, String name, ObjectNode data) throws IOException, InterruptedException {
        ObjectNode message = JSON.createObjectNode().put("csrfToken", token).put("syncId", synced).put("clientId", sent++);
        ArrayNode calls = message.putArray("rpc");
        calls.addObject().put("type", "event").put("node", node).put("event", name).set("data", data);
        String answer = ask(HttpRequest.newBuilder(URI.create(address + "/?v-r=uidl&v-uiId=" + ui)).header("Content-Type", "application/json; charset=UTF-8")
                .POST(HttpRequest.BodyPublishers.ofString(message.toString())).build());
        if (!answer.startsWith("for(;;);[")) {
            throw new IllegalStateException("no message of the server: " + answer.substring(0, Math.min(200, answer.length())));
        }
        take(JSON.readTree(answer.substring("for(;;);".length())).get(0));
    }

    private void take(JsonNode uidl) {
        if (uidl.path("meta").has("appError") || uidl.path("meta").has("sessionExpired")) {
            throw new IllegalStateException("the server says " + uidl.path("meta"));
        }
        synced = uidl.path("syncId").asInt(synced);
        for (JsonNode change : uidl.path("changes")) {
            Node node = nodes.computeIfAbsent(change.path("node").asInt(), n -> new Node());
            switch (change.path("type").asText()) {
                case "put" -> put(node, change.path("feat").asInt(), change.path("key").asText(), change.path("value"));
                case "splice" -> splice(node, change);
                case "clear" -> (change.path("feat").asInt() == CHILDREN ? node.children : node.classes).clear();
                case "detach" -> nodes.remove(change.path("node").asInt());
                default -> { }
            }
        }
    }

    private void put(Node node, int feature, String key, JsonNode value) {
        if (feature == ATTRIBUTES && key.equals("data-drawing")) {
            // As the page does, beside what else happens on it.
            String drawing = value.isObject() ? value.path("uri").asText() : value.asText();
            http.sendAsync(HttpRequest.newBuilder(URI.create(address + "/" + drawing)).build(), HttpResponse.BodyHandlers.ofByteArray())
                    .thenAccept(answer -> drawings.addAndGet(answer.statusCode() == 200 ? 1 : 0));
            return;
        }
        if (feature == ELEMENT && key.equals("tag")) {
            node.tag = value.asText();
        } else if (feature == TEXT && key.equals("text")) {
            node.text = value.asText();
        }
    }

    private static void splice(Node node, JsonNode change) {
        int at = change.path("index").asInt();
        if (change.path("feat").asInt() == CHILDREN) {
            splice(node.children, at, change.path("remove").asInt(), change.path("addNodes"), JsonNode::asInt);
        } else if (change.path("feat").asInt() == CLASSES) {
            splice(node.classes, at, change.path("remove").asInt(), change.path("add"), JsonNode::asText);
        }
    }

    private static <T> void splice(List<T> list, int at, int remove, JsonNode add, java.util.function.Function<JsonNode, T> read) {
        for (int i = 0; i < remove; i++) {
            list.remove(at);
        }
        int to = at;
        for (JsonNode each : add) {
            list.add(to++, read.apply(each));
        }
    }

    private String ask(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> answer = http.send(HttpRequest.newBuilder(request, (name, value) -> true).timeout(Duration.ofSeconds(60))
                .header("Accept-Language", "en").build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(request.uri() + " → " + answer.statusCode() + " " + answer.body());
        }
        return answer.body();
    }
}
