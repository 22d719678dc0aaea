package boughwright.api;

import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.consultation.ShopDoor;
import boughwright.document.Paper;
import boughwright.document.PlanDocument;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.proposal.Outcome;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The printed plan, the pictures and the pick list of a kept proposal. */
@RestController
class PagesApi {

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final MediaType CSV = MediaType.parseMediaType("text/csv;charset=UTF-8");

    private final ShopDoor shop;
    private final Consultations consultations;

    PagesApi(ShopDoor shop, Consultations consultations) {
        this.shop = shop;
        this.consultations = consultations;
    }

    /** @param paper {@code letter} or {@code a4}; by the customer's units when nobody says */
    @Operation(summary = "The printed plan of a kept proposal")
    @ApiResponse(responseCode = "200", description = "The plan", content = @Content(mediaType = "application/pdf"))
    @GetMapping("/api/proposals/{code}/plan.pdf")
    ResponseEntity<?> plan(@PathVariable String code, @RequestParam(required = false) String paper) {
        Optional<Paper> asked = paper == null ? Optional.empty()
                : Arrays.stream(Paper.values()).filter(p -> p.name().equalsIgnoreCase(paper)).findFirst();
        if (paper != null && asked.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.BAD_REQUEST, "paper", Text.of("api.bad-paper.title"), Text.of("api.bad-paper", paper));
        }
        return page(code, MediaType.APPLICATION_PDF, (saved, p) -> PlanDocument.pdf(p, picture(p).printed(View.FRONT),
                asked.orElse(Paper.of(p.brief().units())), Optional.of(saved.spoken())));
    }

    @Operation(summary = "The dressed tree of a kept proposal from one side")
    @ApiResponse(responseCode = "200", description = "The picture", content = @Content(mediaType = "image/svg+xml"))
    @GetMapping("/api/proposals/{code}/{view:front|left|right|back|above}.svg")
    ResponseEntity<?> svg(@PathVariable String code, @PathVariable String view) {
        return page(code, SVG, (saved, p) -> picture(p).svg(View.valueOf(view.toUpperCase(Locale.ROOT))));
    }

    @Operation(summary = "What to pick from the shelves for a kept proposal")
    @ApiResponse(responseCode = "200", description = "The list", content = @Content(mediaType = "text/csv"))
    @GetMapping("/api/proposals/{code}/picklist.csv")
    ResponseEntity<?> pickList(@PathVariable String code) {
        return page(code, CSV, (saved, p) -> PickList.csv(p));
    }

    private ProposalPicture picture(Proposal p) {
        return new ProposalPicture(p.brief(), p.kit(), p.layout(), p.catalogue());
    }

    /** A page of the proposal as it is now; the conflict or the faults where there is none. */
    private ResponseEntity<?> page(String code, MediaType type, BiFunction<Saved, Proposal, ?> page) {
        Optional<Reopened> reopened = consultations.reopen(code, shop.designer());
        if (reopened.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.NOT_FOUND, "code", Text.of("api.no-code.title"), Text.of("api.no-code", code));
        }
        Outcome outcome = reopened.get().outcome();
        if (outcome instanceof Outcome.BadBrief bad) {
            return ProposalsApi.problem(bad.faults());
        }
        if (outcome instanceof Outcome.NoKitFits) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_ENTITY).contentType(MediaType.APPLICATION_JSON).body(reopened.get().saved().proposal());
        }
        return ResponseEntity.ok().contentType(type).body(page.apply(reopened.get().saved(), ((Outcome.Made) outcome).proposal()));
    }
}
