package boughwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import boughwright.consultation.Consultations;
import boughwright.consultation.Saved;
import boughwright.text.Language;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The interface answers in the language that is asked for, and a kept plan stays what it was. */
class LanguagesApiTest extends KioskServer {

    private static final String BRIEF = "{\"tree\": {\"height\": \"7 ft 6 in\"}}";

    @Autowired
    private Consultations consultations;

    private HttpResponse<byte[]> get(String path, String liked) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address(path)));
        if (!liked.isEmpty()) {
            request.header("Accept-Language", liked);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private JsonNode made(String liked) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address("/api/proposals"))).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(BRIEF));
        if (!liked.isEmpty()) {
            request.header("Accept-Language", liked);
        }
        return new ObjectMapper().readTree(HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString()).body());
    }

    private static JsonNode json(HttpResponse<byte[]> response) throws Exception {
        return new ObjectMapper().readTree(response.body());
    }

    private static String firstTitle(JsonNode proposal) {
        return proposal.at("/plan/steps/0/title").asText();
    }

    @Test
    void a_proposal_is_told_in_the_language_of_whoever_asks_and_in_english_to_whoever_asks_for_none() throws Exception {
        assertThat(firstTitle(made(""))).isEqualTo("Wind the lights");
        assertThat(firstTitle(made("fr"))).isEqualTo("Wind the lights");
        String german = firstTitle(made("de-CH, en;q=0.5"));
        assertThat(german).isNotEqualTo("Wind the lights").isEqualTo(boughwright.text.Text.in(Language.GERMAN, () -> boughwright.text.Text.of("plan.step.lights.title")));
    }

    @Test
    void asking_for_a_kept_plan_in_another_language_changes_nothing_that_is_kept() throws Exception {
        String code = made("de").get("code").asText();
        Saved kept = consultations.open(code).orElseThrow();
        assertThat(kept.language()).isEqualTo(Language.GERMAN);

        HttpResponse<byte[]> spanish = get("/api/proposals/" + code + "?language=es", "de");
        assertThat(spanish.headers().firstValue("Content-Language")).hasValue("es");
        assertThat(firstTitle(json(spanish))).isEqualTo(boughwright.text.Text.in(Language.SPANISH, () -> boughwright.text.Text.of("plan.step.lights.title")));
        get("/api/proposals/" + code + "/front.svg", "en");
        get("/at-home/" + code, "es");

        assertThat(consultations.open(code)).hasValue(kept);
        assertThat(kept.revision()).isEqualTo(1);
        // Without a wish the plan is given exactly as it was kept.
        assertThat(new String(get("/api/proposals/" + code, "").body(), java.nio.charset.StandardCharsets.UTF_8)).isEqualTo(kept.proposal());
    }

    @Test
    void the_printed_plan_speaks_the_language_and_the_units_that_are_asked_for() throws Exception {
        String code = made("").get("code").asText();
        try (PDDocument plan = Loader.loadPDF(get("/api/proposals/" + code + "/plan.pdf?language=de&units=metres", "").body())) {
            assertThat(plan.getDocumentCatalog().getLanguage()).isEqualTo("de");
            assertThat(new PDFTextStripper().getText(plan).replace('\u00a0', ' ')).contains("2,29 m").doesNotContain("7 ft 6 in").doesNotContain("7 Fuß 6");
        }
        assertThat(get("/api/proposals/" + code + "/plan.pdf?units=yards", "").statusCode()).isEqualTo(400);
    }

    @Test
    void the_page_for_the_phone_says_which_language_it_is_in() throws Exception {
        String code = made("").get("code").asText();
        assertThat(new String(get("/at-home/" + code, "es-MX").body(), java.nio.charset.StandardCharsets.UTF_8)).contains("<html lang=\"es\">");
        assertThat(new String(get("/at-home/no-such-code", "de").body(), java.nio.charset.StandardCharsets.UTF_8)).contains("<html lang=\"de\">");
    }

    @Test
    void faults_of_a_brief_are_told_in_the_language_that_is_asked_for() throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address("/api/proposals?language=de"))).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"tree\": {\"height\": \"tall\"}}")).build();
        JsonNode problem = new ObjectMapper().readTree(HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString()).body());
        assertThat(problem.at("/faults/0/field").asText()).isEqualTo("tree.height");
        assertThat(problem.at("/faults/0/mend").asText()).isEqualTo(boughwright.text.Text.in(Language.GERMAN, () -> boughwright.text.Text.of("brief.height.mend")));
    }
}
