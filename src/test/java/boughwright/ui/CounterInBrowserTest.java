package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.counter.Holds;
import boughwright.counter.Pack;
import boughwright.shelf.Shelf;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;

/** The counter's screens in a real browser. */
class CounterInBrowserTest extends StaffedKiosk {

    @TempDir
    private Path otherProfile;

    @Autowired
    private Holds holds;

    @Autowired
    private Shelf shelf;

    private String code(String height) throws Exception {
        return kept("{\"tree\": {\"height\": \"" + height + "\"}}");
    }

    private void press(String words) {
        click("//button[normalize-space()='" + words + "']");
    }

    private void told(String words) {
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".notice"), words));
    }

    private void signInAt(String address, String css) {
        signIn(address);
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(css)));
    }

    private void at(String address, String css) {
        browser.get(address(address));
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(css)));
    }

    @Test
    void a_kit_is_quoted_held_picked_and_carried_home() throws Exception {
        String code = code("6 ft 6 in");
        signInAt("/counter", ".counter-list");
        isAccessible("consultations");
        at("/counter/of/" + code, ".case-side");
        press("Make a quote");
        told("Quoted:");
        press("Hold it for 48 hours");
        told("Held until");
        isAccessible("one consultation");

        at("/picking", ".entry-row");
        isAccessible("what to pick");
        at("/picking/" + code, ".pick-line");
        isAccessible("picking");
        while (!browser.findElements(By.cssSelector(".is-open .tick")).isEmpty()) {
            int open = browser.findElements(By.cssSelector(".is-open .tick")).size();
            browser.findElement(By.cssSelector(".is-open .tick")).click();
            patience.until(b -> b.findElements(By.cssSelector(".is-open .tick")).size() == open - 1);
        }
        assertThat(holds.open(code).orElseThrow().state()).hasToString("READY");

        at("/counter/of/" + code, ".case-side");
        press("All taken home");
        told("Taken home");
        assertThat(holds.newest(code).orElseThrow().state()).hasToString("COLLECTED");
        assertThat(browser.findElement(By.cssSelector(".case-names .state")).getText()).isEqualTo("Taken home");
    }

    @Test
    void what_is_not_on_its_shelf_is_told_to_the_associate() throws Exception {
        String code = code("7 ft");
        signInAt("/counter", ".counter-list");
        at("/counter/of/" + code, ".case-side");
        press("Hold it for 48 hours");
        told("Held until");
        at("/picking/" + code, ".pick-line");
        String name = browser.findElement(By.cssSelector(".pick-line .name")).getText();
        click("(//button[normalize-space()='Fewer there'])[1]");
        type("pick-found", "none");
        press("That is all");
        told("Write a number");
        type("pick-found", "0");
        press("That is all");
        told(name);
        at("/counter/of/" + code, ".case-side");
        assertThat(browser.findElement(By.cssSelector("[aria-label='Hold']")).getText()).contains("Not all of it was found").contains(name);
    }

    @Test
    void two_tablets_that_reach_for_the_last_pack_do_not_both_get_it() throws Exception {
        String first = code("8 ft");
        String second = code("8 ft");
        signInAt("/counter", ".counter-list");
        at("/counter/of/" + first, ".case-side");
        ChromeDriver mine = browser;
        WebDriverWait minePatience = patience;
        ChromeDriver other = Browser.open(otherProfile);
        try {
            browser = other;
            patience = new WebDriverWait(other, Duration.ofSeconds(60));
            signInAt("/counter", ".counter-list");
            at("/counter/of/" + second, ".case-side");
            // Both screens show that it can be had; now there is enough left for one.
            String sku = shelf.onSale().stream().filter(p -> inKit(first, p.sku())).findFirst().orElseThrow().sku();
            int held = Integer.parseInt(shelf.cells(sku).get("stock")) - shelf.catalogue().product(sku).orElseThrow().stock();
            shelf.edit(sku, "stock", String.valueOf(held + packs(first, sku)), "Ada");
            press("Hold it for 48 hours");
            told("Held until");
            browser = mine;
            patience = minePatience;
            press("Hold it for 48 hours");
            told("Somebody was faster");
            assertThat(holds.open(second)).isPresent();
            assertThat(holds.open(first)).isEmpty();
        } finally {
            browser = mine;
            patience = minePatience;
            other.quit();
        }
    }

    private boolean inKit(String code, String sku) {
        return packs(code, sku) > 0;
    }

    private int packs(String code, String sku) {
        return desk.consultations().reopen(code).map(r -> ((boughwright.proposal.Outcome.Made) r.outcome()).proposal()).map(Pack::of).orElse(List.of()).stream()
                .filter(p -> p.sku().equals(sku)).mapToInt(Pack::packs).sum();
    }

    @Autowired
    private CounterDesk desk;

    @Test
    void notes_copies_names_and_two_side_by_side_serve_the_associate() throws Exception {
        String one = code("7 ft 6 in");
        String two = code("9 ft");
        signInAt("/counter", ".counter-list");
        at("/counter/of/" + one, ".case-side");
        type("case-note", "Collects on Friday");
        press("Add the note");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".notes-list"), "Collects on Friday"));
        type("case-name", "Kim");
        press("Keep the name");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".case-names"), "Kim"));
        type("case-beside", two.replace('-', ' ').toUpperCase(java.util.Locale.ROOT));
        press("Show side by side");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".case-beside .plain-table")));
        isAccessible("two consultations side by side");
        at("/counter/of/" + one, ".case-side");
        press("Make a copy");
        told("This is a copy of");
        assertThat(browser.getCurrentUrl()).doesNotContain(one);
        at("/counter", ".entry-row");
        type("counter-find", "kim");
        browser.findElement(By.id("counter-find")).sendKeys(org.openqa.selenium.Keys.TAB);
        patience.until(b -> b.findElements(By.cssSelector(".entry-row")).stream().map(WebElement::getText).allMatch(t -> t.contains("Kim")));
    }

    @Test
    void the_manager_sets_the_terms_and_reads_the_figures() throws Exception {
        code("7 ft 6 in");
        signInAt("/terms", "#tax-name");
        isAccessible("terms");
        type("tax-percent", "one fifth");
        press("Set these terms");
        told("Write the rate as a number");
        type("tax-percent", "0");
        press("Set these terms");
        told("These terms apply");
        at("/figures", ".tile");
        isAccessible("figures");
        press("7 days");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".day-chart svg")));
    }
}
