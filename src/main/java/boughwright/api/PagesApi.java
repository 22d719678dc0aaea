package boughwright.api;

import boughwright.athome.SceneJson;
import boughwright.counter.AtHomeAddress;
import boughwright.counter.Links;
import boughwright.document.Paper;
import boughwright.document.PlanDocument;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.QrCode;
import boughwright.drawing.View;
import boughwright.palette.PaletteJson;
import boughwright.palette.PaletteReading;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.net.URI;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The printed plan, the pictures, the pick list and the colours of a kept proposal. */
@RestController
class PagesApi {

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final MediaType CSV = MediaType.parseMediaType("text/csv;charset=UTF-8");

    private final KeptPages kept;
    private final AtHomeAddress atHome;
    private final Links links;

    PagesApi(KeptPages kept, AtHomeAddress atHome, Links links) {
        this.kept = kept;
        this.atHome = atHome;
        this.links = links;
    }

    /**
     * @param paper {@code letter} or {@code a4}; by the units when nobody says
     * @param units {@code feet} or {@code metres}; the customer's own when nobody says
     */
    @Operation(summary = "The printed plan of a kept proposal")
    @ApiResponse(responseCode = "200", description = "The plan", content = @Content(mediaType = "application/pdf"))
    @GetMapping("/api/proposals/{code}/plan.pdf")
    ResponseEntity<?> plan(@PathVariable String code, @RequestParam(required = false) String paper, @RequestParam(required = false) String units) {
        Optional<Paper> asked = paper == null ? Optional.empty()
                : Arrays.stream(Paper.values()).filter(p -> p.name().equalsIgnoreCase(paper)).findFirst();
        if (paper != null && asked.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.BAD_REQUEST, "paper", Text.of("api.bad-paper.title"), Text.of("api.bad-paper", paper));
        }
        return kept.page(code, MediaType.APPLICATION_PDF, units, (saved, p) -> PlanDocument.pdf(p, picture(p).printed(View.FRONT),
                asked.orElse(Paper.of(p.brief().units())), Optional.of(saved.spoken()), Optional.of(atHome.of(links.of(saved.code()).token()))));
    }

    @Operation(summary = "The dressed tree of a kept proposal from one side")
    @ApiResponse(responseCode = "200", description = "The picture", content = @Content(mediaType = "image/svg+xml"))
    @GetMapping("/api/proposals/{code}/{view:front|left|right|back|above}.svg")
    ResponseEntity<?> svg(@PathVariable String code, @PathVariable String view, @RequestParam(required = false) String units) {
        return kept.page(code, SVG, units, (saved, p) -> picture(p).svg(View.valueOf(view.toUpperCase(Locale.ROOT))));
    }

    @Operation(summary = "What to pick from the shelves for a kept proposal")
    @ApiResponse(responseCode = "200", description = "The list", content = @Content(mediaType = "text/csv"))
    @GetMapping("/api/proposals/{code}/picklist.csv")
    ResponseEntity<?> pickList(@PathVariable String code) {
        return kept.page(code, CSV, (saved, p) -> PickList.csv(p));
    }

    @Operation(summary = "The dressed tree of a kept proposal as a scene to turn, in metres")
    @ApiResponse(responseCode = "200", description = "The scene", content = @Content(mediaType = "application/json"))
    @GetMapping("/api/proposals/{code}/scene.json")
    ResponseEntity<?> scene(@PathVariable String code, @RequestParam(required = false) String units) {
        return kept.page(code, MediaType.APPLICATION_JSON, units, (saved, p) -> SceneJson.of(p));
    }

    @Operation(summary = "How the kit of a kept proposal keeps to its palette, and how their colours stand to one another")
    @ApiResponse(responseCode = "200", description = "Shares, scheme, hue template, near misses and what some eyes confuse",
            content = @Content(mediaType = "application/json", schema = @Schema(ref = "/schemas/colours.schema.json")))
    @GetMapping("/api/proposals/{code}/colours")
    ResponseEntity<?> colours(@PathVariable String code) {
        return kept.page(code, MediaType.APPLICATION_JSON, (saved, p) -> PaletteJson.text(PaletteReading.of(p.brief(), p.needs(), p.catalogue(), p.kit())));
    }

    @Operation(summary = "A QR code that leads to the page to follow at home")
    @ApiResponse(responseCode = "200", description = "The code", content = @Content(mediaType = "image/svg+xml"))
    @GetMapping("/api/proposals/{code}/at-home.svg")
    ResponseEntity<?> atHome(@PathVariable String code) {
        return kept.page(code, SVG, (saved, p) -> new QrCode(atHome.of(links.of(saved.code()).token())).svg(Text.of("athome.qr", saved.spoken())));
    }

    /** Leads to the private link, which is made when there is none. */
    @Operation(summary = "The way to the page to follow at home, by its private link")
    @ApiResponse(responseCode = "302", description = "The page lies at the address given", content = @Content)
    @GetMapping("/api/proposals/{code}/at-home")
    ResponseEntity<?> toAtHome(@PathVariable String code) {
        ResponseEntity<?> there = kept.page(code, MediaType.TEXT_PLAIN, null, (saved, p) -> saved.code());
        if (!there.getStatusCode().is2xxSuccessful()) {
            return there;
        }
        return ResponseEntity.status(HttpStatus.FOUND).location(URI.create("/at-home/" + links.of((String) there.getBody()).token())).build();
    }

    private ProposalPicture picture(Proposal p) {
        return new ProposalPicture(p.brief(), p.kit(), p.layout(), p.catalogue());
    }
}
