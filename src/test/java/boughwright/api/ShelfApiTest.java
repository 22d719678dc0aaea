package boughwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import boughwright.catalogue.Product;
import boughwright.consultation.Consultations;
import boughwright.kit.KitLine;
import boughwright.kit.Patience;
import boughwright.kit.Swap;
import boughwright.needs.Role;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Shelf;
import boughwright.shelf.Till;
import boughwright.shelf.Uses;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

class ShelfApiTest extends KioskServer {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static int calls;

    private final HttpClient client = HttpClient.newHttpClient();
    @Autowired
    private Shelf shelf;
    @Autowired
    private Till till;
    @Autowired
    private ShopDoor shop;
    @Autowired
    private Uses uses;
    @Autowired
    private Consultations consultations;
    private String key;
    private Product product;

    @BeforeEach
    void openTheTill() {
        shop.designer();
        key = till.newKey("test");
        product = shelf.onSale().get(0);
    }

    @AfterEach
    void putBack() throws Exception {
        put(mark(), key, "{\"products\":[{\"sku\":\"%s\",\"stock\":%d,\"price\":\"%s\"}]}".formatted(product.sku(), product.stock(), product.price().decimal()));
        assertThat(shelf.catalogue().product(product.sku())).contains(product);
        till.takeAway();
    }

    private static String mark() {
        return "test-" + ++calls;
    }

    private HttpResponse<String> put(String mark, String key, String body) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address("/api/stock"))).header("Content-Type", "application/json")
                .PUT(HttpRequest.BodyPublishers.ofString(body));
        if (!mark.isEmpty()) {
            request.header("Idempotency-Key", mark);
        }
        if (!key.isEmpty()) {
            request.header("Authorization", "Bearer " + key);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address(path))).build(), HttpResponse.BodyHandlers.ofString());
    }

    private String stock(int packs) {
        return "{\"products\":[{\"sku\":\"%s\",\"stock\":%d}]}".formatted(product.sku(), packs);
    }

    @Test
    void stock_and_price_from_the_till_are_what_the_next_proposal_is_made_from() throws Exception {
        HttpResponse<String> answer = put(mark(), key, "{\"products\":[{\"gtin\":\"%s\",\"stock\":3,\"price\":4.5,\"priceCurrency\":\"USD\"}]}".formatted(product.gtin()));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(JSON.readTree(answer.body())).isEqualTo(JSON.readTree("{\"changed\":1,\"again\":false}"));
        assertThat(shop.designer().catalogue().product(product.sku())).hasValueSatisfying(p -> {
            assertThat(p.stock()).isEqualTo(3);
            assertThat(p.price().decimal()).isEqualTo("4.50");
        });
    }

    @Test
    void nobody_sets_stock_without_the_key() throws Exception {
        assertThat(put(mark(), "", stock(1)).statusCode()).isEqualTo(401);
        assertThat(put(mark(), "guess", stock(1))).satisfies(r -> {
            assertThat(r.statusCode()).isEqualTo(401);
            assertThat(r.headers().firstValue("WWW-Authenticate")).contains("Bearer");
        });
        assertThat(shelf.catalogue().product(product.sku())).contains(product);
    }

    @Test
    void a_call_without_a_mark_or_of_another_shape_says_what_is_asked_for() throws Exception {
        assertThat(put("", key, stock(1))).satisfies(r -> {
            assertThat(r.statusCode()).isEqualTo(400);
            assertThat(r.body()).contains("Idempotency-Key");
        });
        for (String body : List.of("", "[]", "{", "{\"products\":[]}", "{\"products\":[{\"sku\":\"X\",\"colour\":\"red\"}]}", "{\"products\":[{\"sku\":[1],\"stock\":1}]}",
                "{\"products\":[{\"sku\":\"X\",\"sku\":\"Y\",\"stock\":1}]}", "{\"products\":[1]}", "{\"products\":[{\"sku\":\"X\",\"stock\":1}]} x")) {
            assertThat(put(mark(), key, body).statusCode()).as(body).isIn(400, 422);
        }
        assertThat(shelf.catalogue().product(product.sku())).contains(product);
    }

    @Test
    void a_bad_line_is_told_by_its_place_and_nothing_changes() throws Exception {
        HttpResponse<String> answer = put(mark(), key, "{\"products\":[{\"sku\":\"%s\",\"stock\":1},{\"sku\":\"NOBODY\",\"stock\":2.5}]}".formatted(product.sku()));

        assertThat(answer.statusCode()).isEqualTo(422);
        JsonNode faults = JSON.readTree(answer.body()).path("faults");
        assertThat(faults.get(0).path("field").asText()).isEqualTo("products[1].stock");
        assertThat(shelf.catalogue().product(product.sku())).contains(product);
    }

    @Test
    void one_call_sent_many_times_at_once_counts_once() throws Exception {
        String mark = mark();
        String body = stock(product.stock() + 1);
        ExecutorService senders = Executors.newFixedThreadPool(8);
        List<Callable<HttpResponse<String>>> sends = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            sends.add(() -> put(mark, key, body));
        }
        int first = 0;
        for (Future<HttpResponse<String>> answer : senders.invokeAll(sends)) {
            assertThat(answer.get().statusCode()).isEqualTo(200);
            first += JSON.readTree(answer.get().body()).path("again").asBoolean() ? 0 : 1;
        }
        senders.shutdown();
        assertThat(first).isEqualTo(1);
        assertThat(put(mark, key, stock(1)).statusCode()).isEqualTo(422);
    }

    private HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address(path))).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)).build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void a_product_remembers_where_it_was_proposed_chosen_and_swapped_out() throws Exception {
        String code = JSON.readTree(post("/api/proposals", "{\"tree\": {\"height\": \"7 ft 6 in\"}}").body()).path("code").asText();
        Proposal proposal = ((Outcome.Made) consultations.reopen(code).orElseThrow().outcome()).proposal();
        KitLine line = proposal.kit().lines().stream().filter(l -> l.role() == Role.BASE_RIBBON).findFirst().orElseThrow();
        Swap other = shop.designer().swaps(proposal, line.slot(), 3, Patience.usual()).stream().filter(Swap::possible).findFirst().orElseThrow();

        assertThat(post("/api/proposals/" + code + "/changes", "{\"products\": {\"%s\": \"%s\"}}".formatted(line.slot(), other.product().sku())).statusCode()).isEqualTo(200);

        assertThat(uses.of(line.sku(), 50)).satisfies(u -> {
            assertThat(u.get(Uses.Kind.PROPOSED)).contains(code);
            assertThat(u.get(Uses.Kind.CHOSEN)).doesNotContain(code);
            assertThat(u.get(Uses.Kind.SWAPPED_OUT)).contains(code);
        });
        assertThat(uses.of(other.product().sku(), 50)).satisfies(u -> {
            assertThat(u.get(Uses.Kind.PROPOSED)).contains(code);
            assertThat(u.get(Uses.Kind.CHOSEN)).contains(code);
            assertThat(u.get(Uses.Kind.SWAPPED_OUT)).doesNotContain(code);
        });
    }

    @Test
    void products_are_found_by_the_eye_nearest_first() throws Exception {
        JsonNode found = JSON.readTree(get("/api/products?role=overlay-ribbon&near=%235e2750&most=10").body());

        assertThat(found.path("found").asInt()).isGreaterThan(10);
        assertThat(found.path("products")).hasSize(10);
        for (int i = 1; i < 10; i++) {
            assertThat(found.path("products").get(i).path("distance").asDouble()).isGreaterThanOrEqualTo(found.path("products").get(i - 1).path("distance").asDouble());
        }
    }

    @Test
    void what_cannot_be_looked_for_says_what_can() throws Exception {
        assertThat(get("/api/products?role=tinsel")).satisfies(r -> {
            assertThat(r.statusCode()).isEqualTo(400);
            assertThat(r.body()).contains("overlay-ribbon");
        });
        assertThat(get("/api/products?near=red").statusCode()).isEqualTo(400);
        assertThat(get("/api/products?most=9999").statusCode()).isEqualTo(400);
        assertThat(get("/api/products?size=2").statusCode()).isEqualTo(400);
    }

    @Test
    void one_product_and_its_drawing_are_given_and_an_unknown_one_is_not() throws Exception {
        assertThat(JSON.readTree(get("/api/product?sku=" + product.sku()).body()).path("gtin").asText()).isEqualTo(product.gtin());
        assertThat(get("/api/product/drawing.svg?sku=" + product.sku()).body()).startsWith("<svg");
        assertThat(get("/api/product?sku=NOBODY").statusCode()).isEqualTo(404);
        assertThat(get("/api/product/photo.jpg?sku=" + product.sku()).statusCode()).isEqualTo(404);
    }
}
