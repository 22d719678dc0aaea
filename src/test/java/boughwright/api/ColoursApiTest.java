package boughwright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.KioskServer;
import boughwright.colour.Srgb;
import boughwright.photo.Drawn;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColoursApiTest extends KioskServer {

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> post(String query, String type, byte[] picture) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address("/api/colours" + query))).header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofByteArray(picture)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        return new ObjectMapper().readTree(answer.body());
    }

    private static byte[] flag() {
        return Drawn.png(Drawn.picture(400, 400, Color.WHITE, pen -> {
            pen.setColor(new Color(0xa8, 0x1c, 0x28));
            pen.fillRect(50, 50, 300, 200);
            pen.setColor(new Color(0x1f, 0x4d, 0x36));
            pen.fillRect(50, 250, 300, 100);
        }));
    }

    @Test
    void a_picture_is_answered_with_its_colours_their_shares_and_a_palette() throws Exception {
        HttpResponse<String> answer = post("?ground=drop&most=3", "image/png", flag());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        JsonNode json = json(answer);
        assertThat(json.at("/colours")).hasSize(2);
        assertThat(json.at("/colours/0/hex").asText()).isEqualTo("#a81c28");
        assertThat(json.at("/colours/0/share").asDouble()).isCloseTo(0.6667, within(0.0001));
        assertThat(json.at("/palette/main").asText()).isEqualTo("#a81c28");
        assertThat(json.at("/palette/ground").asText()).isEqualTo("#1f4d36");
        assertThat(json.at("/palette/filled").toString()).isEqualTo("[\"second\",\"spark\"]");
        assertThat(Srgb.read(json.at("/palette/spark").asText())).isPresent();
        assertThat(json.at("/finish/finish").asText()).isEqualTo("matte");
        assertThat(json.at("/finish/reason").asText()).isNotBlank();
        assertThat(json.at("/finish").has("highlight")).isFalse();
        assertThat(json.at("/setAside").asDouble()).isCloseTo(1 - 0.5625, within(0.0001));
    }

    @Test
    void a_room_keeps_its_background_and_has_no_finish() throws Exception {
        JsonNode json = json(post("", "image/png", flag()));
        assertThat(json.at("/colours")).hasSize(3);
        assertThat(json.has("finish")).isFalse();
        assertThat(json(post("", "image/jpeg", Drawn.jpeg(Drawn.room(800, 600), 0.85, false))).at("/colours")).hasSize(5);
    }

    @Test
    void what_is_not_understood_is_a_problem_with_its_field() throws Exception {
        HttpResponse<String> ground = post("?ground=sea", "image/png", flag());
        assertThat(ground.statusCode()).isEqualTo(400);
        assertThat(ground.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(json(ground).at("/field").asText()).isEqualTo("ground");
        HttpResponse<String> most = post("?most=9", "image/png", flag());
        assertThat(most.statusCode()).isEqualTo(400);
        assertThat(json(most).at("/detail").asText()).contains("9", "2 to 5");
        assertThat(post("?most=2.5", "image/png", flag()).statusCode()).isEqualTo(400);
    }

    @Test
    void what_is_no_picture_or_too_large_is_refused_by_name() throws Exception {
        byte[] letter = "Dear shop".getBytes(StandardCharsets.US_ASCII);
        assertThat(post("", "text/plain", letter).statusCode()).isEqualTo(415);
        HttpResponse<String> text = post("", "image/jpeg", letter);
        assertThat(text.statusCode()).isEqualTo(415);
        assertThat(json(text).at("/field").asText()).isEqualTo("picture");
        assertThat(json(text).at("/detail").asText()).isEqualTo("This is not a picture. Send a JPEG, PNG or GIF.");
        assertThat(post("", "image/jpeg", new byte[0]).statusCode()).isEqualTo(400);
        assertThat(post("", "image/jpeg", new byte[25_000_001]).statusCode()).isEqualTo(413);
    }

    @Test
    void the_interface_describes_itself() throws Exception {
        JsonNode docs = new ObjectMapper().readTree(client.send(HttpRequest.newBuilder(URI.create(address("/v3/api-docs"))).build(),
                HttpResponse.BodyHandlers.ofString()).body());
        JsonNode post = docs.path("paths").path("/api/colours").path("post");
        List<String> parameters = new ArrayList<>();
        post.path("parameters").forEach(p -> parameters.add(p.path("name").asText()));
        assertThat(parameters).containsExactlyInAnyOrder("ground", "most");
        assertThat(post.at("/requestBody/content").fieldNames()).toIterable().containsExactlyInAnyOrder("image/jpeg", "image/png", "image/gif");
        assertThat(post.path("responses").fieldNames()).toIterable().contains("200", "400", "413", "415");
    }
}
