package boughwright.api;

import boughwright.brief.BriefFault;
import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.counter.Deeds;
import boughwright.kit.Patience;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.ProposalJson;
import boughwright.publishing.ShopDoor;
import boughwright.text.Language;
import boughwright.text.Text;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.net.URI;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Proposals for other programs: the same brief, the same answer as on screen and on the command line. */
@RestController
class ProposalsApi {

    private static final String BRIEF = "/schemas/brief.schema.json";
    private static final String PROPOSAL = "/schemas/proposal.schema.json";

    /** Characters; a brief with all its fields and two hundred owned products has a tenth of it. */
    private static final int LONGEST_BRIEF = 100_000;

    /** Characters of a key under which a call is made once, as in the IETF draft "The Idempotency-Key HTTP Header Field", from memory. */
    private static final int LONGEST_KEY = 60;
    private static final String DEED = "proposal ";

    private final ShopDoor shop;
    private final Consultations consultations;
    private final Deeds deeds;

    ProposalsApi(ShopDoor shop, Consultations consultations, Deeds deeds) {
        this.shop = shop;
        this.consultations = consultations;
        this.deeds = deeds;
    }

    @Operation(summary = "Make a proposal from a brief and keep it under a code")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(required = true, content = @Content(mediaType = "application/json",
            schema = @Schema(ref = BRIEF), examples = @ExampleObject("{\"tree\": {\"height\": \"9 ft\"}}")))
    @ApiResponse(responseCode = "201", description = "The proposal and its code", content = @Content(mediaType = "application/json",
            schema = @Schema(ref = PROPOSAL)))
    @ApiResponse(responseCode = "400", description = "Faults in the brief, each with field, value and mend",
            content = @Content(mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "422", description = "No kit fits; the conflict says which wishes clash and the ways out",
            content = @Content(mediaType = "application/json", schema = @Schema(ref = PROPOSAL)))
    @PostMapping(path = "/api/proposals", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> make(@RequestBody(required = false) String brief, @RequestHeader(name = "Idempotency-Key", required = false) String key) {
        String text = brief == null ? "" : brief;
        if (key != null && (key.isBlank() || key.length() > LONGEST_KEY)) {
            return problem(HttpStatus.BAD_REQUEST, "Idempotency-Key", Text.of("api.bad-key.title"), Text.of("api.bad-key", LONGEST_KEY));
        }
        if (text.length() > LONGEST_BRIEF) {
            return problem(HttpStatus.PAYLOAD_TOO_LARGE, "brief", Text.of("api.bad-brief.title"), Text.of("api.too-long", LONGEST_BRIEF));
        }
        Optional<String> before = Optional.ofNullable(key).flatMap(k -> deeds.answer(DEED + k));
        if (before.isPresent()) {
            return made(before.get(), text);
        }
        Outcome outcome = consultations.workOut(shop.designer(), text, Adjustments.NONE, Designer.SEED, Patience.usual());
        if (outcome instanceof Outcome.BadBrief bad) {
            return problem(bad.faults());
        }
        if (outcome instanceof Outcome.NoKitFits none) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_ENTITY).contentType(MediaType.APPLICATION_JSON)
                    .body(ProposalJson.text(ProposalJson.of(none)));
        }
        Saved saved = consultations.begin(text, outcome);
        if (key != null) {
            // Of two who send the same at once, both get the one that was remembered first.
            return made(deeds.once(DEED + key, saved::code).answer(), text);
        }
        return created(saved);
    }

    /** What was made under the same key before; another brief under that key is a mistake of the caller's. */
    private ResponseEntity<?> made(String code, String brief) {
        Optional<Saved> first = consultations.open(code, 1);
        if (first.isEmpty() || !first.get().brief().equals(brief)) {
            return problem(HttpStatus.UNPROCESSABLE_ENTITY, "Idempotency-Key", Text.of("api.bad-key.title"), Text.of("api.key-of-another"));
        }
        return created(first.get());
    }

    private static ResponseEntity<?> created(Saved saved) {
        return ResponseEntity.created(URI.create("/api/proposals/" + saved.code())).contentType(MediaType.APPLICATION_JSON).body(saved.proposal());
    }

    @Operation(summary = "A kept proposal again, by its code")
    @ApiResponse(responseCode = "200", description = "The newest revision of the proposal, exactly as it was kept unless another language is asked for; the first is as it was given when it was made", content = @Content(
            mediaType = "application/json", schema = @Schema(ref = PROPOSAL)))
    @ApiResponse(responseCode = "404", description = "No proposal has this code", content = @Content(mediaType = "application/problem+json"))
    @GetMapping("/api/proposals/{code}")
    ResponseEntity<?> again(@PathVariable String code, @RequestParam(required = false) Integer revision, HttpServletRequest request) {
        Optional<Language> asked = AskedLanguage.of(request);
        if (revision == null && asked.isPresent() && consultations.open(code).filter(saved -> saved.language() != asked.get()).isPresent()) {
            Reopened reopened = consultations.reopen(code).orElseThrow();
            return reopened.outcome() instanceof Outcome.BadBrief bad ? problem(bad.faults())
                    : ResponseEntity.status(reopened.outcome() instanceof Outcome.Made ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_ENTITY)
                            .contentType(MediaType.APPLICATION_JSON).body(Consultations.json(reopened));
        }
        return (revision == null ? consultations.open(code) : consultations.open(code, revision))
                .<ResponseEntity<?>>map(saved -> ResponseEntity.status(saved.fits() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_ENTITY)
                        .contentType(MediaType.APPLICATION_JSON).body(saved.proposal()))
                .orElseGet(() -> problem(HttpStatus.NOT_FOUND, "code", Text.of("api.no-code.title"), Text.of("api.no-code", code)));
    }

    /** A problem detail (RFC 9457) with the field that it is about. */
    static ResponseEntity<?> problem(HttpStatus status, String field, String title, String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setTitle(title);
        problem.setProperty("field", field);
        return ResponseEntity.of(problem).build();
    }

    /** One fault as other programs read it. */
    record Fault(String field, String value, String mend) {
    }

    static ResponseEntity<?> problem(List<BriefFault> faults) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, faults.get(0).sentence());
        problem.setTitle(Text.of("api.bad-brief.title"));
        problem.setProperty("field", faults.get(0).field());
        problem.setProperty("faults", faults.stream().map(f -> new Fault(f.field(), f.value(), f.mend())).toList());
        return ResponseEntity.of(problem).build();
    }
}
