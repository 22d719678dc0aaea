package boughwright.api;

import boughwright.consultation.Consultations;
import boughwright.consultation.Saved;
import boughwright.consultation.ShopDoor;
import boughwright.document.Paper;
import boughwright.document.PlanDocument;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
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
    @GetMapping("/api/proposals/{code}/plan.pdf")
    ResponseEntity<?> plan(@PathVariable String code, @RequestParam(required = false) String paper) {
        Optional<Proposal> proposal = proposal(code);
        if (proposal.isEmpty()) {
            return missing(code);
        }
        Paper sheet = paper == null ? Paper.of(proposal.get().brief().units())
                : paper.toLowerCase(Locale.ROOT).equals("a4") ? Paper.A4 : Paper.LETTER;
        byte[] pdf = PlanDocument.pdf(proposal.get(), picture(proposal.get()).printed(View.FRONT), sheet,
                consultations.open(code).map(Saved::spoken), shop.designer().catalogue());
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_PDF).header("Content-Disposition", "inline; filename=\"plan-" + code + ".pdf\"").body(pdf);
    }

    @GetMapping("/api/proposals/{code}/{view:front|left|right|back}.svg")
    ResponseEntity<?> svg(@PathVariable String code, @PathVariable String view) {
        return proposal(code).<ResponseEntity<?>>map(p -> ResponseEntity.ok().contentType(SVG)
                .body(picture(p).svg(View.valueOf(view.toUpperCase(Locale.ROOT))))).orElseGet(() -> missing(code));
    }

    @GetMapping("/api/proposals/{code}/picklist.csv")
    ResponseEntity<?> pickList(@PathVariable String code) {
        return proposal(code).<ResponseEntity<?>>map(p -> ResponseEntity.ok().contentType(CSV).body(PickList.csv(p))).orElseGet(() -> missing(code));
    }

    private ProposalPicture picture(Proposal p) {
        return new ProposalPicture(p.brief(), p.kit(), p.layout(), shop.designer().catalogue());
    }

    /** Made again from what was saved: the same brief, changes and seed give the same proposal. */
    private Optional<Proposal> proposal(String code) {
        Designer designer = shop.designer();
        return consultations.open(code).map(s -> designer.propose(s.brief(), s.adjustments(), s.seed()))
                .filter(Outcome.Made.class::isInstance).map(o -> ((Outcome.Made) o).proposal());
    }

    private static ResponseEntity<?> missing(String code) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, Text.of("api.no-code", code));
        problem.setTitle(Text.of("api.no-code.title"));
        problem.setProperty("field", "code");
        return ResponseEntity.of(problem).build();
    }
}
