package boughwright.api;

import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.kit.Patience;
import boughwright.needs.Adjustments;
import boughwright.proposal.AdjustmentsJson;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.text.Text;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Bends a kept proposal: everything that hands have changed, at once. */
@RestController
class ChangesApi {

    private static final int LONGEST = 100_000;

    private final Consultations consultations;

    ChangesApi(Consultations consultations) {
        this.consultations = consultations;
    }

    @Operation(summary = "Bend a kept proposal; these changes take the place of all that were made before, and what need not change stays")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(required = true, content = @Content(mediaType = "application/json",
            schema = @Schema(ref = "/schemas/changes.schema.json"),
            examples = @ExampleObject("{\"tastes\": [{\"wanted\": false, \"trait\": \"finish\", \"value\": \"glitter\"}]}")))
    @ApiResponse(responseCode = "200", description = "The proposal as it is now, a new revision under the same code", content = @Content(
            mediaType = "application/json", schema = @Schema(ref = "/schemas/proposal.schema.json")))
    @ApiResponse(responseCode = "400", description = "Faults in the changes, each with field, value and mend", content = @Content(
            mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "404", description = "No proposal has this code", content = @Content(mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "422", description = "No kit fits; kept as a new revision with the conflict and the ways out", content = @Content(
            mediaType = "application/json", schema = @Schema(ref = "/schemas/proposal.schema.json")))
    @PostMapping(path = "/api/proposals/{code}/changes", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> bend(@PathVariable String code, @RequestBody(required = false) String changes) {
        String text = changes == null ? "" : changes;
        if (text.length() > LONGEST) {
            return ProposalsApi.problem(HttpStatus.PAYLOAD_TOO_LARGE, "changes", Text.of("api.bad-changes.title"), Text.of("api.too-long", LONGEST));
        }
        Optional<Reopened> reopened = consultations.reopen(code);
        if (reopened.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.NOT_FOUND, "code", Text.of("api.no-code.title"), Text.of("api.no-code", code));
        }
        Designer designer = reopened.get().designer();
        AdjustmentsJson.Reading reading = AdjustmentsJson.read(text, designer.rulebook().choices().currency(), designer.catalogue());
        if (reading instanceof AdjustmentsJson.Reading.Faulty faulty) {
            return ProposalsApi.problem(faulty.faults());
        }
        Saved saved = reopened.get().saved();
        Adjustments hand = ((AdjustmentsJson.Reading.Read) reading).adjustments();
        if (hand.kept().isEmpty() && reopened.get().outcome() instanceof Outcome.Made made) {
            hand = hand.keeping(made.proposal().products());
        }
        Outcome outcome = consultations.workOut(designer, saved.brief(), hand, saved.seed(), Patience.usual());
        if (outcome instanceof Outcome.BadBrief bad) {
            return ProposalsApi.problem(bad.faults());
        }
        Saved next = consultations.go(saved.code(), saved.brief(), outcome);
        return ResponseEntity.status(next.fits() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_ENTITY).contentType(MediaType.APPLICATION_JSON)
                .body(next.proposal());
    }
}
