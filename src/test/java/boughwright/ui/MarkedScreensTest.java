package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Product;
import boughwright.counter.Counter;
import boughwright.people.People;
import boughwright.publishing.Editions;
import boughwright.publishing.ShopDoor;
import boughwright.text.Marked;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Every screen, the page for the phone and the printed plan with each message between marks: what stands outside of them is a name, a
 * code or a number, or it was written past the message bundle.
 *
 * <p>Briefs begin with a space here and nowhere else: a kit that was worked out lately is recalled with the words of that time.
 */
class MarkedScreensTest extends StaffedKiosk {

    /** Names and codes that are the same in every language, beside those of products. */
    private static final List<String> NAMES = List.of("Larkrise & Daughters", "Winter 26", "winter-26", "English", "Deutsch", "Español", "Ada", "USD",
            "Boughwright", "JSON", "CSV", "XLSX", " mm", "http://localhost", "/at-home/");

    /** All text nodes and everything that a screen reader says or a field shows, but for scripts, styles and what is typed by hand. */
    private static final String SAID = """
            const said = [];
            const look = node => {
              if (node.nodeType === 3) { said.push(node.textContent); return; }
              if (node.nodeType !== 1 && node.nodeType !== 11) return;
              if (['SCRIPT', 'STYLE', 'NOSCRIPT', 'TEMPLATE'].includes(node.tagName)) return;
              if (node.tagName && node.tagName.toLowerCase().startsWith('vaadin-dev')) return;
              if (node.getAttribute) for (const name of ['aria-label', 'placeholder', 'title', 'alt', 'aria-description']) {
                if (node.hasAttribute(name)) said.push('\\n' + node.getAttribute(name) + '\\n');
              }
              node.childNodes.forEach(look);
              said.push('\\n');
            };
            look(document.body);
            said.push('\\n' + document.title);
            return said.join('');""";

    @Autowired
    private ShopDoor shop;

    private final List<String> strays = new ArrayList<>();
    private static final Pattern NOTHING = Pattern.compile("(?!)");
    /** Heights and moments that stand by themselves in a list, as English writes them. */
    private static final Pattern FIGURES = Pattern.compile("\\d+ ft(?: \\d+ in)?|[A-Z][a-z]{2} \\d{1,2}, \\d{4}, \\d{1,2}:\\d{2}\\s[AP]M");

    @BeforeEach
    void mark() {
        shop.designer();
        Marked.begin();
    }

    @AfterEach
    void speakPlainly() {
        Marked.end();
    }

    private Set<String> names() {
        Set<String> names = new TreeSet<>(NAMES);
        for (Product product : shop.designer().catalogue().products()) {
            // Where it is told beside a number, a name ends before its size.
            names.addAll(List.of(product.name(), product.name().replaceAll(",.*", ""), product.sku(), product.gtin(), product.shelf()));
            if (!product.brand().isEmpty()) {
                names.add(product.brand());
            }
        }
        return names;
    }

    private void look(String where, String... also) {
        look(where, also, NOTHING);
    }

    /** @param figures what is no word of anybody's, such as the time of day */
    private void look(String where, String[] also, Pattern figures) {
        // Until nothing is being worked out any more.
        patience.until(b -> (Boolean) browser.executeScript("return !document.querySelector('.busy')"
                + " && (!window.Vaadin || !Vaadin.Flow || !Vaadin.Flow.clients || Object.values(Vaadin.Flow.clients).every(c => !c.isActive || !c.isActive()))"));
        check(where, figures.matcher(said()).replaceAll(" "), also);
    }

    private String said() {
        return (String) browser.executeScript(SAID);
    }

    private void check(String where, String said, String... also) {
        Set<String> names = names();
        names.addAll(List.of(also));
        assertThat(said).as(where).contains("‹");
        Marked.strays(said, names).forEach(stray -> strays.add(where + ": " + stray));
    }

    private void press(String css) {
        patience.ignoring(StaleElementReferenceException.class).until(b -> {
            WebElement found = ExpectedConditions.elementToBeClickable(By.cssSelector(css)).apply(b);
            if (found != null) {
                found.click();
            }
            return found != null;
        });
    }

    private void pressEach(String css, String where, String... also) {
        int many = browser.findElements(By.cssSelector(css)).size();
        for (int i = 0; i < many; i++) {
            int at = i;
            patience.ignoring(StaleElementReferenceException.class).until(b -> {
                List<WebElement> all = browser.findElements(By.cssSelector(css));
                if (at < all.size()) {
                    browser.executeScript("arguments[0].click()", all.get(at));
                }
                return true;
            });
            look(where + " " + (i + 1), also);
        }
    }

    @Test
    void every_word_of_the_interview_comes_from_the_bundle() {
        browser.get(address("/"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".inviting h1")));
        look("the inviting page");
        browser.get(address("/code"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.id("code")));
        look("the page that asks for a code");
        browser.get(address("/interview"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".interview .card")));
        look("interview, without a height");
        press(".interview .card");
        for (Question question : Question.values()) {
            look("interview, " + question);
            if (question != Question.OWNED) {
                String heading = browser.findElement(By.tagName("h1")).getText();
                press("footer .strong");
                patience.until(ExpectedConditions.not(ExpectedConditions.textToBe(By.tagName("h1"), heading)));
            }
        }
        assertThat(strays).isEmpty();
    }

    @Test
    void every_word_of_a_proposal_its_ways_and_its_years_comes_from_the_bundle() throws Exception {
        String code = kept(" {\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"650.00\", \"household\": {\"toddlers\": true}, \"room\": {\"ceiling\": \"9 ft 3 in\", \"nearHeat\": true}, \"owned\": [{\"text\": \"24 matte red 80 mm balls\"}]}");
        String spoken = code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT);
        String[] also = {code, spoken, "24 matte red 80 mm balls"};
        openByCode(code);
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".proposal .sides")));
        pressEach(".sides button", "proposal, side", also);
        for (String page : List.of("ways", "years")) {
            browser.get(address("/" + page + "/" + code));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("main .picture, main .stage, main svg")));
            look(page, also);
        }
        assertThat(strays).isEmpty();
    }

    @Test
    void every_word_of_a_conflict_comes_from_the_bundle() throws Exception {
        HttpResponse<String> made = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/api/proposals")))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(" {\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"60.00\"}")).build(),
                HttpResponse.BodyHandlers.ofString());
        String text = new com.fasterxml.jackson.databind.ObjectMapper().readTree(made.body()).path("conflict").findValuesAsText("text").toString();
        check("conflict", text);
        assertThat(strays).isEmpty();
    }

    @Test
    void every_word_of_the_printed_plan_comes_from_the_bundle() throws Exception {
        String code = kept(" {\"tree\": {\"height\": \"9 ft\"}, \"household\": {\"pets\": true}}");
        byte[] pdf = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/api/proposals/" + code + "/plan.pdf"))).build(),
                HttpResponse.BodyHandlers.ofByteArray()).body();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            // Names break over lines.
            check("printed plan", new PDFTextStripper().getText(document).replaceAll("\\s+", " ").replaceAll("/ ?at-home ?/ ?[0-9a-f ]{32,40}", " "), code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT), code);
        }
        assertThat(strays).isEmpty();
    }

    @Test
    void every_word_on_the_phone_comes_from_the_bundle() throws Exception {
        String code = kept(" {\"tree\": {\"height\": \"7 ft 6 in\"}}");
        String[] also = {code, code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT)};
        browser.get(address("/api/proposals/" + code + "/at-home"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.tagName("h1")));
        look("at home", also);
        pressEach("button", "at home, button", also);
        assertThat(strays).isEmpty();
    }

    @Autowired
    private People staff;

    @Autowired
    private Editions kept;

    /** What other tests of this kiosk have left behind: who works here, and what was done to the house rules, told in the words of that time. */
    private String[] left() {
        Set<String> left = new TreeSet<>();
        staff.all().forEach(c -> left.add(c.person().name()));
        kept.all().forEach(e -> left.addAll(List.of(e.title(), e.note(), e.author(), e.id())));
        kept.history(1_000).forEach(e -> {
            left.add(e.author());
            e.words().lines().forEach(left::add);
        });
        left.removeIf(String::isBlank);
        return left.toArray(String[]::new);
    }

    @Autowired
    private Counter counter;

    /** With the consultations of this kiosk, by whatever name they are told on the counter's pages. */
    private String[] counted(String[] left) {
        Set<String> all = new TreeSet<>(List.of(left));
        counter.find("", 10_000).forEach(e -> all.addAll(List.of(e.code(), e.spoken(), e.nickname())));
        shop.designer().rulebook().choices().looks().forEach(l -> all.add(l.title()));
        all.removeIf(String::isBlank);
        return all.toArray(String[]::new);
    }

    @Test
    void every_word_of_the_staff_screens_comes_from_the_bundle() throws Exception {
        browser.get(address("/house-rules"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.id("staff-name")));
        look("the staff's door");
        signIn("/house-rules");
        String[] left = left();
        for (String page : List.of("body-ribbon", "filler-balls", "topper", "variety", "pieces", "ribbon", "colour", "score", "cautions", "looks", "palettes",
                "rehearsal", "publish", "editions", "references", "compare")) {
            browser.get(address("/house-rules/" + page));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".house-content > *")));
            look("house rules, " + page, left);
        }
        for (String page : List.of("", "/file", "/done", "/till", "/new", "/of?sku=" + shop.designer().catalogue().products().get(0).sku())) {
            browser.get(address("/shelf" + page));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".house-content > *")));
            look("shelf" + page, left);
        }
        String code = kept(" {\"tree\": {\"height\": \"7 ft 6 in\"}}");
        String[] counted = counted(left);
        for (String page : List.of("/people", "/profile", "/staff", "/counter", "/counter/of/" + code, "/counter/beside/" + code + "/" + code, "/picking", "/terms", "/figures")) {
            browser.get(address(page));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("main > *")));
            look(page, counted, FIGURES);
        }
        assertThat(strays).isEmpty();
    }
}
