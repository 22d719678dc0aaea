package boughwright.api;

import boughwright.drawing.ProposalPicture;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.publishing.ShopDoor;
import io.swagger.v3.oas.annotations.Hidden;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** A tree of the shop's own in each of its looks, for the page that invites. Each is drawn when it is first asked for. */
@RestController
@Hidden
class ShowTreesApi {

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final String BRIEF = "{\"tree\": {\"height\": \"7 ft 6 in\", \"fullness\": \"full\"}, \"look\": \"%s\", \"abundance\": \"generous\"}";
    private static final Duration KEPT = Duration.ofMinutes(30);
    private static final int MOST = 40;

    private final ShopDoor shop;
    private final Map<String, Optional<String>> drawn = new ConcurrentHashMap<>();

    ShowTreesApi(ShopDoor shop) {
        this.shop = shop;
    }

    @GetMapping("/api/show-trees/{look:[a-z0-9-]+}.svg")
    ResponseEntity<String> tree(@PathVariable String look) {
        Designer designer = shop.designer();
        if (designer.rulebook().choices().look(look).isEmpty()) {
            return ResponseEntity.notFound().build();
        }
        if (drawn.size() > MOST) {
            // Of editions that have gone.
            drawn.clear();
        }
        return drawn.computeIfAbsent(designer.rulebook().edition().id() + "/" + look, k -> draw(designer, look))
                .map(svg -> ResponseEntity.ok().contentType(SVG).cacheControl(CacheControl.maxAge(KEPT).cachePublic()).body(svg))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    /** Empty when the shelf has not enough for a kit of this look. */
    private static Optional<String> draw(Designer designer, String look) {
        Outcome outcome = designer.propose(BRIEF.formatted(look), Adjustments.NONE, Designer.SEED);
        if (!(outcome instanceof Outcome.Made made)) {
            return Optional.empty();
        }
        Proposal p = made.proposal();
        return Optional.of(new ProposalPicture(p.brief(), p.kit(), p.layout(), p.catalogue()).shown());
    }
}
