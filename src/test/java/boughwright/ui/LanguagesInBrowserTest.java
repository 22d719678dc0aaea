package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.text.Language;
import boughwright.text.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** The languages on real screens: switched at any step, and none of their longer words running out of their place. */
class LanguagesInBrowserTest extends StaffedKiosk {

    /** Words that are cut off or stick out, and a page that is wider than the screen. */
    private static final String OVERFLOWING = """
            const found = [];
            const wide = document.documentElement.scrollWidth - window.innerWidth;
            if (wide > 1) found.push('page wider by ' + wide);
            for (const e of document.querySelectorAll('button, a, h1, h2, label, .pill, .card, th, td, p, .bar > *')) {
              const box = e.getBoundingClientRect();
              if (box.width === 0 || getComputedStyle(e).visibility === 'hidden' || e.closest('.unseen') || e.classList.contains('unseen')) continue;
              if (e.scrollWidth > e.clientWidth + 2 && e.clientWidth > 0 && getComputedStyle(e).overflowX !== 'auto' && getComputedStyle(e).display !== 'inline')
                found.push('cut: ' + e.tagName + '.' + e.className + ' ' + e.textContent.trim().slice(0, 40));
              let scrolls = false;
              for (let p = e.parentElement; p; p = p.parentElement) if (['auto', 'scroll', 'hidden'].includes(getComputedStyle(p).overflowX)) scrolls = true;
              if (!scrolls && box.right > window.innerWidth + 1) found.push('out: ' + e.tagName + '.' + e.className + ' ' + e.textContent.trim().slice(0, 40));
            }
            return [...new Set(found)];""";

    private static final Path PICTURES = Path.of("target/languages");

    private void size(int width, int height) {
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    private void press(String css) {
        patience.ignoring(StaleElementReferenceException.class).until(b -> {
            List<WebElement> found = browser.findElements(By.cssSelector(css));
            if (!found.isEmpty()) {
                browser.executeScript("arguments[0].click()", found.get(0));
            }
            return !found.isEmpty();
        });
    }

    private void settled() {
        patience.until(b -> (Boolean) browser.executeScript("return !document.querySelector('.busy')"
                + " && (!window.Vaadin || !Vaadin.Flow || !Vaadin.Flow.clients || Object.values(Vaadin.Flow.clients).every(c => !c.isActive || !c.isActive()))"));
    }

    private void speak(Language language) {
        press(".languages button[lang=" + language.tag() + "]");
        patience.until(b -> language.tag().equals(browser.executeScript("return document.documentElement.lang")));
        settled();
    }

    private static String text(Language language, String key, Object... values) {
        return Text.in(language, () -> Text.of(key, values));
    }

    private String heading() {
        return browser.findElement(By.tagName("h1")).getText();
    }

    @Test
    void the_interview_goes_on_in_another_language_with_all_its_answers() {
        browser.get(address("/interview"));
        heading(text(Language.ENGLISH, Question.TREE.titleKey()));
        click("//button[contains(@class,'card')][.//span[text()='9 ft']]");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".card[aria-pressed=true]")));
        for (Question question : Question.values()) {
            for (Language language : List.of(Language.GERMAN, Language.SPANISH, Language.ENGLISH)) {
                speak(language);
                heading(text(language, question.titleKey()));
                if (question == Question.TREE) {
                    assertThat(browser.findElement(By.cssSelector(".card[aria-pressed=true] .card-title")).getText()).isEqualTo(text(language, "length.feet", "9"));
                }
            }
            if (question != Question.OWNED) {
                press("footer .strong");
                heading(text(Language.ENGLISH, Question.values()[question.ordinal() + 1].titleKey()));
            }
        }
    }

    @Test
    void a_plan_keeps_its_side_its_total_and_its_units_in_every_language() throws Exception {
        String code = kept("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"650.00\"}");
        openByCode(code);
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".sides button:nth-child(3)")));
        settled();
        String total = browser.findElement(By.cssSelector(".total")).getText();
        press(".sides button:nth-child(3)");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".sides button:nth-child(3)[aria-pressed=true]")));
        speak(Language.GERMAN);
        assertThat(browser.findElement(By.cssSelector(".sides button[aria-pressed=true]")).getText()).isEqualTo(text(Language.GERMAN, "proposal.side.steps"));
        // CLDR 42, de: decimal comma, the sign behind a space that does not break.
        assertThat(browser.findElement(By.cssSelector(".total")).getText()).isEqualTo(total.replace("$", "").replace(".", ",") + " $");
        assertThat(heading()).contains("9 Fuß");
        click("//header//button[text()='" + text(Language.GERMAN, "units.feet") + "']");
        patience.until(b -> heading().contains("2,74 m"));
        assertThat(browser.findElement(By.cssSelector(".sides button[aria-pressed=true]")).getText()).isEqualTo(text(Language.GERMAN, "proposal.side.steps"));
        speak(Language.ENGLISH);
        assertThat(heading()).contains("2.74 m");
        assertThat(browser.findElement(By.cssSelector(".total")).getText()).isEqualTo(total);
    }

    @ParameterizedTest
    @CsvSource({"GERMAN, 1280, 800", "GERMAN, 800, 1280", "SPANISH, 1280, 800", "SPANISH, 800, 1280"})
    void no_words_run_out_of_their_place(Language language, int width, int height) throws Exception {
        size(width, height);
        Files.createDirectories(PICTURES);
        List<String> found = new ArrayList<>();
        browser.get(address("/"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".inviting h1")));
        speak(language);
        see("inviting", language, width, found);
        browser.get(address("/code"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.id("code")));
        see("code", language, width, found);
        browser.get(address("/interview"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".interview .card")));
        press(".interview .card");
        for (Question question : Question.values()) {
            settled();
            see("interview-" + question.name().toLowerCase(java.util.Locale.ROOT), language, width, found);
            if (question != Question.OWNED) {
                press("footer .strong");
                heading(text(language, Question.values()[question.ordinal() + 1].titleKey()));
            }
        }
        String code = kept("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"650.00\", \"household\": {\"toddlers\": true}}");
        openByCode(code);
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".sides button")));
        for (int i = 1; i <= 5; i++) {
            press(".sides button:nth-child(" + i + ")");
            settled();
            see("plan-" + i, language, width, found);
        }
        for (String page : List.of("ways", "years")) {
            browser.get(address("/" + page + "/" + code));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("main .picture svg")));
            settled();
            see(page, language, width, found);
        }
        signIn("/house-rules");
        for (String page : List.of("house-rules/body-ribbon", "house-rules/cautions", "house-rules/looks", "house-rules/palettes", "house-rules/publish",
                "house-rules/editions", "house-rules/references", "house-rules/rehearsal", "shelf", "shelf/file", "shelf/till", "shelf/new", "people", "profile",
                "staff", "counter", "terms", "figures", "picking")) {
            browser.get(address("/" + page));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("main > *")));
            settled();
            see(page.replace('/', '-'), language, width, found);
        }
        assertThat(found).isEmpty();
    }

    private void see(String screen, Language language, int width, List<String> found) throws IOException {
        Files.write(PICTURES.resolve(screen + "-" + language.tag() + "-" + width + ".png"), browser.getScreenshotAs(OutputType.BYTES));
        ((List<?>) browser.executeScript(OVERFLOWING)).forEach(f -> found.add(screen + ": " + f));
    }
}
