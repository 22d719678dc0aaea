package boughwright.api;

import boughwright.athome.AtHomePage;
import boughwright.counter.Links;
import io.swagger.v3.oas.annotations.Hidden;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The page that a customer follows at home, and the script that keeps it on the phone. */
@RestController
@Hidden
class AtHomeApi {

    private static final MediaType HTML = MediaType.parseMediaType("text/html;charset=UTF-8");
    private static final MediaType SCRIPT = MediaType.parseMediaType("text/javascript;charset=UTF-8");

    private final KeptPages kept;
    private final Links links;

    AtHomeApi(KeptPages kept, Links links) {
        this.kept = kept;
        this.links = links;
    }

    /**
     * @param token of a private link; a code that was heard in the shop opens nothing here
     * @param copy present when the page is to be saved as a file
     */
    @GetMapping("/at-home/{token:[A-Za-z0-9 -]+}")
    ResponseEntity<?> page(@PathVariable String token, @RequestParam(required = false) String copy, @RequestParam(required = false) String units) {
        Optional<String> code = links.open(token);
        if (code.isEmpty()) {
            return ResponseEntity.status(HttpStatus.NOT_FOUND).contentType(HTML).body(AtHomePage.sorry());
        }
        ResponseEntity<?> page = kept.page(code.get(), HTML, units, (saved, p) -> copy == null ? AtHomePage.html(p, saved.code(), saved.spoken())
                : AtHomePage.copy(p, saved.code(), saved.spoken()));
        if (!page.getStatusCode().is2xxSuccessful()) {
            return ResponseEntity.status(page.getStatusCode()).contentType(HTML).body(AtHomePage.sorry());
        }
        if (copy == null) {
            return page;
        }
        return ResponseEntity.ok().contentType(HTML)
                .header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.attachment().filename("plan-" + code.get() + ".html").build().toString()).body(page.getBody());
    }

    @GetMapping("/at-home/worker.js")
    ResponseEntity<String> worker() throws IOException {
        try (InputStream in = AtHomePage.class.getResourceAsStream("worker.js")) {
            return ResponseEntity.ok().contentType(SCRIPT).cacheControl(CacheControl.maxAge(Duration.ZERO))
                    .body(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }
}
