package boughwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProposalsApiTest extends KioskServer {

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> post(String brief) throws IOException, InterruptedException {
        return post("/api/proposals", brief);
    }

    private HttpResponse<String> post(String path, String brief) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address(path))).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(brief)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address(path))).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode json(HttpResponse<String> response) throws IOException {
        return new ObjectMapper().readTree(response.body());
    }

    /** JSON Schema 2020-12 as checked by a validator of that standard, from the very files that are served. */
    private static Schema schema(String name) throws IOException {
        Map<String, String> texts = new HashMap<>();
        for (String each : List.of("brief.schema.json", "proposal.schema.json", "changes.schema.json", "colours.schema.json")) {
            texts.put("http://kiosk/schemas/" + each, Files.readString(Path.of("docs", each)));
        }
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(texts))
                .getSchema(SchemaLocation.of("http://kiosk/schemas/" + name));
    }

    private HttpResponse<String> keyed(String brief, String key) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address("/api/proposals"))).header("Content-Type", "application/json").header("Idempotency-Key", key)
                .POST(HttpRequest.BodyPublishers.ofString(brief)).build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void the_same_call_with_the_same_key_is_answered_as_before_and_makes_nothing_new() throws Exception {
        String brief = "{\"tree\": {\"height\": \"7 ft\"}}";
        HttpResponse<String> first = keyed(brief, "order-17");
        HttpResponse<String> again = keyed(brief, "order-17");
        assertThat(first.statusCode()).isEqualTo(201);
        assertThat(again.statusCode()).isEqualTo(201);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(keyed(brief, "order-18").body()).isNotEqualTo(first.body());
        assertThat(keyed("{\"tree\": {\"height\": \"8 ft\"}}", "order-17").statusCode()).isEqualTo(422);
        assertThat(keyed(brief, "k".repeat(61)).statusCode()).isEqualTo(400);
    }

    @Test
    void a_brief_is_answered_with_201_its_proposal_and_a_code_under_which_it_is_found_again() throws Exception {
        HttpResponse<String> made = post(Files.readString(Path.of("docs/example-brief.json")));

        assertThat(made.statusCode()).isEqualTo(201);
        String code = json(made).get("code").asText();
        assertThat(code).matches("[a-z]+-[2-9]-[a-z]+");
        assertThat(made.headers().firstValue("Location")).hasValue("/api/proposals/" + code);
        HttpResponse<String> again = get("/api/proposals/" + code);
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(again.body()).isEqualTo(made.body());
    }

    @Test
    void brief_and_answers_keep_to_the_schemas_that_are_served() throws Exception {
        String brief = Files.readString(Path.of("docs/example-brief.json"));
        assertThat(schema("brief.schema.json").validate(brief, InputFormat.JSON)).isEmpty();
        assertThat(schema("proposal.schema.json").validate(post(brief).body(), InputFormat.JSON)).isEmpty();
        assertThat(schema("proposal.schema.json").validate(post("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"40.00\"}").body(), InputFormat.JSON))
                .isEmpty();
        assertThat(schema("brief.schema.json").validate("{\"tree\": {\"height\": \"9 ft\", \"colour\": \"red\"}}", InputFormat.JSON)).isNotEmpty();
        assertThat(get("/schemas/brief.schema.json").body()).isEqualTo(Files.readString(Path.of("docs/brief.schema.json")));
        assertThat(get("/schemas/proposal.schema.json").statusCode()).isEqualTo(200);
    }

    /** RFC 9457, section 3. */
    @Test
    void a_bad_brief_is_a_problem_detail_with_the_path_of_each_field() throws Exception {
        HttpResponse<String> response = post("{\"tree\": {\"height\": \"9\"}, \"owned\": [{\"sku\": \"LK-XX\", \"quantity\": 0}]}");

        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(response.headers().firstValue("Content-Type")).hasValueSatisfying(t -> assertThat(t).startsWith("application/problem+json"));
        JsonNode problem = json(response);
        assertThat(problem.get("status").asInt()).isEqualTo(400);
        assertThat(problem.get("field").asText()).isEqualTo("tree.height");
        assertThat(problem.get("faults")).extracting(f -> f.get("field").asText()).containsExactly("tree.height", "owned[0].quantity");
    }

    @Test
    void when_no_kit_fits_the_answer_is_422_with_the_conflict() throws Exception {
        HttpResponse<String> response = post("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"40.00\"}");

        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(json(response).at("/conflict/wishes/0/id").asText()).isEqualTo("budget");
        assertThat(json(response).at("/conflict/waysOut/0/total").asText()).matches("\\d+\\.\\d\\d");
    }

    @Test
    void a_kept_proposal_is_bent_and_what_need_not_change_stays() throws Exception {
        JsonNode made = json(post("{\"tree\": {\"height\": \"9 ft\"}, \"owned\": [{\"text\": \"12 matte red 80 mm balls\"}]}"));
        String changes = "/api/proposals/" + made.get("code").asText() + "/changes";

        HttpResponse<String> bent = post(changes, "{\"tastes\": [{\"wanted\": false, \"trait\": \"finish\", \"value\": \"glitter\"}]}");

        assertThat(bent.statusCode()).isEqualTo(200);
        assertThat(schema("proposal.schema.json").validate(bent.body(), InputFormat.JSON)).isEmpty();
        assertThat(json(bent).at("/adjustments/tastes/0/value").asText()).isEqualTo("glitter");
        assertThat(json(bent).at("/adjustments/kept").size()).isGreaterThan(10);
        assertThat(json(bent).at("/kit/lines")).hasSameSizeAs(made.at("/kit/lines"));
        assertThat(get(changes.replace("/changes", "")).body()).isEqualTo(bent.body());
        assertThat(json(get(changes.replace("/changes", "?revision=1"))).has("adjustments")).isFalse();
        assertThat(post(changes, "{\"caps\": {\"florals\": \"1.00\"}}").statusCode()).isEqualTo(422);
        HttpResponse<String> faulty = post(changes, "{\"caps\": {\"roof\": \"1.00\"}}");
        assertThat(faulty.statusCode()).isEqualTo(400);
        assertThat(json(faulty).get("field").asText()).isEqualTo("caps.roof");
        assertThat(post("/api/proposals/moss-2-fern/changes", "{}").statusCode()).isEqualTo(404);
    }

    @Test
    void the_colours_of_a_kept_proposal_are_read_when_asked_and_leave_the_proposal_as_it_was_kept() throws Exception {
        HttpResponse<String> made = post("{\"tree\": {\"height\": \"7 ft 6 in\"}, \"palette\": \"cranberry-and-pine\"}");
        String path = "/api/proposals/" + json(made).get("code").asText();

        HttpResponse<String> colours = get(path + "/colours");

        assertThat(colours.statusCode()).isEqualTo(200);
        assertThat(schema("colours.schema.json").validate(colours.body(), InputFormat.JSON)).isEmpty();
        assertThat(json(colours).at("/palette/scheme/kind").asText()).isEqualTo("three-apart");
        assertThat(json(colours).at("/palette/confusions/0/deficiency").asText()).isEqualTo("protanopia");
        assertThat(json(colours).at("/kit/colours").size()).isGreaterThan(10);
        assertThat(get(path + "/colours").body()).isEqualTo(colours.body());
        assertThat(get(path).body()).isEqualTo(made.body());
        assertThat(get("/api/proposals/moss-2-fern/colours").statusCode()).isEqualTo(404);
    }

    @Test
    void an_unknown_code_and_a_wrong_type_are_problem_details() throws Exception {
        assertThat(get("/api/proposals/moss-2-fern").statusCode()).isEqualTo(404);
        assertThat(json(get("/api/proposals/nothing")).get("field").asText()).isEqualTo("code");
        HttpResponse<String> plain = client.send(HttpRequest.newBuilder(URI.create(address("/api/proposals"))).header("Content-Type", "text/plain")
                .POST(HttpRequest.BodyPublishers.ofString("9 ft")).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(plain.statusCode()).isEqualTo(415);
        assertThat(plain.headers().firstValue("Content-Type")).hasValueSatisfying(t -> assertThat(t).startsWith("application/problem+json"));
        assertThat(post("").statusCode()).isEqualTo(400);
        assertThat(post("{\"tree\": {\"height\": \"" + " ".repeat(100_000) + "9 ft\"}}").statusCode()).isEqualTo(413);
    }

    @Test
    void the_openapi_description_names_both_paths_and_the_schemas() throws Exception {
        JsonNode api = json(get("/v3/api-docs"));

        assertThat(api.get("paths").has("/api/proposals")).isTrue();
        assertThat(api.get("paths").has("/api/proposals/{code}")).isTrue();
        assertThat(api.toString()).contains("/schemas/brief.schema.json", "/schemas/proposal.schema.json");
    }

    @Test
    void the_plan_is_printed_on_either_paper_and_the_picks_are_listed() throws Exception {
        String code = json(post("{\"tree\": {\"height\": \"2.1 m\"}}")).get("code").asText();

        HttpResponse<byte[]> pdf = client.send(HttpRequest.newBuilder(URI.create(address("/api/proposals/" + code + "/plan.pdf?paper=letter"))).build(),
                HttpResponse.BodyHandlers.ofByteArray());
        assertThat(pdf.headers().firstValue("Content-Type")).hasValue("application/pdf");
        assertThat(new String(pdf.body(), 0, 5, java.nio.charset.StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
        assertThat(get("/api/proposals/" + code + "/plan.pdf?paper=tabloid").statusCode()).isEqualTo(400);
        assertThat(get("/api/proposals/moss-2-fern/plan.pdf").statusCode()).isEqualTo(404);
        assertThat(get("/api/proposals/" + code + "/picklist.csv").body()).startsWith("shelf,sku,name");
        assertThat(get("/api/proposals/" + code + "/left.svg").body()).startsWith("<svg");
    }
}
