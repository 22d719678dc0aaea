package boughwright.api;

import boughwright.catalogue.CatalogueFault;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Till;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;

/** Stock and prices from the shop's till. */
@RestController
class StockApi {

    private static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();
    private static final int LONGEST = 5_000_000;
    private static final int MOST = 50_000;
    private static final String BEARER = "Bearer ";
    /** What a line may say, and the column of the catalogue that it means; schema.org's names where it has any. */
    private static final Map<String, String> FIELDS = Map.of("sku", "sku", "gtin", "gtin", "stock", "stock", "price", "price", "priceCurrency", "currency");

    private final ShopDoor shop;
    private final Till till;

    StockApi(ShopDoor shop, Till till) {
        this.shop = shop;
        this.till = till;
    }

    @Operation(summary = "Set stock and prices, all of the call or nothing; proposals made from then on use them")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(required = true, content = @Content(mediaType = "application/json", examples = @ExampleObject(
            "{\"products\": [{\"sku\": \"LK-LT-0103\", \"stock\": 41}, {\"gtin\": \"2186073039807\", \"price\": \"6.49\", \"priceCurrency\": \"USD\"}]}")))
    @ApiResponse(responseCode = "200", description = "How many products have changed, and whether this very call was answered before")
    @ApiResponse(responseCode = "400", description = "No mark, or not the JSON that is asked for", content = @Content(mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "401", description = "No key, or one that opens nothing", content = @Content(mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "422", description = "Lines that cannot be taken, or another call bore this mark; nothing has changed", content = @Content(
            mediaType = "application/problem+json"))
    @PutMapping(path = "/api/stock", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> put(@Parameter(hidden = true) @RequestHeader(value = HttpHeaders.AUTHORIZATION, required = false) String key,
            @Parameter(description = "A mark of this call alone, at most 200 characters; the same call repeated with it does nothing more")
            @RequestHeader(value = "Idempotency-Key", required = false) String mark, @Parameter(hidden = true) InputStream sent) throws IOException {
        if (key == null || !key.startsWith(BEARER) || !till.opens(key.substring(BEARER.length()).strip())) {
            ProblemDetail problem = problem(HttpStatus.UNAUTHORIZED, "Authorization", Text.of("api.till.no-key"));
            return ResponseEntity.status(HttpStatus.UNAUTHORIZED).header(HttpHeaders.WWW_AUTHENTICATE, "Bearer").contentType(MediaType.APPLICATION_PROBLEM_JSON)
                    .body(problem);
        }
        String bare = mark == null ? "" : mark.strip();
        if (bare.isEmpty() || bare.length() > Till.LONGEST_MARK) {
            return answer(problem(HttpStatus.BAD_REQUEST, "Idempotency-Key", Text.of("api.till.no-mark", Till.LONGEST_MARK)));
        }
        // Not before the key has been seen, and no more than is taken.
        byte[] bytes = sent.readNBytes(LONGEST + 1);
        if (bytes.length > LONGEST) {
            return answer(problem(HttpStatus.PAYLOAD_TOO_LARGE, "products", Text.of("api.till.shape", MOST)));
        }
        String body = new String(bytes, StandardCharsets.UTF_8);
        Optional<SortedMap<Integer, Map<String, String>>> lines = lines(body);
        if (lines.isEmpty()) {
            return answer(problem(HttpStatus.BAD_REQUEST, "products", Text.of("api.till.shape", MOST)));
        }
        // The shelf is there once the shop is open.
        shop.designer();
        Till.Answer answer = till.put(bare, body, lines.get());
        if (answer instanceof Till.Answer.Done done) {
            return ResponseEntity.ok(done);
        }
        if (answer instanceof Till.Answer.Refused refused) {
            List<CatalogueFault> faults = refused.faults();
            ProblemDetail problem = problem(HttpStatus.UNPROCESSABLE_ENTITY, "products[" + (faults.get(0).line() - 1) + "]", faults.get(0).sentence());
            problem.setProperty("faults", faults.stream().map(f -> new ProposalsApi.Fault("products[" + (f.line() - 1) + "]." + f.column(), f.value(), f.mend())).toList());
            return answer(problem);
        }
        return answer(problem(HttpStatus.UNPROCESSABLE_ENTITY, "Idempotency-Key", Text.of("api.till.other-call")));
    }

    private static ProblemDetail problem(HttpStatus status, String field, String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setTitle(Text.of("api.till.title"));
        problem.setProperty("field", field);
        return problem;
    }

    private static ResponseEntity<?> answer(ProblemDetail problem) {
        return ResponseEntity.of(problem).build();
    }

    /** Cells by place in the call, from 1; empty when it is not of the shape that is asked for. */
    private static Optional<SortedMap<Integer, Map<String, String>>> lines(String body) {
        JsonNode root;
        try {
            root = JSON.readTree(body);
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
        JsonNode products = root.path("products");
        if (root.size() != 1 || !products.isArray() || products.isEmpty() || products.size() > MOST) {
            return Optional.empty();
        }
        SortedMap<Integer, Map<String, String>> lines = new TreeMap<>();
        for (JsonNode product : products) {
            Map<String, String> cells = new HashMap<>();
            for (Map.Entry<String, JsonNode> field : product.properties()) {
                JsonNode value = field.getValue();
                if (!FIELDS.containsKey(field.getKey()) || !value.isTextual() && !value.isNumber()) {
                    return Optional.empty();
                }
                cells.put(FIELDS.get(field.getKey()), value.isNumber() ? value.decimalValue().toPlainString() : value.textValue().strip());
            }
            lines.put(lines.size() + 1, cells);
        }
        return Optional.of(lines);
    }
}
