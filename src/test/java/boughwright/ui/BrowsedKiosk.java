package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A running kiosk with a browser of its own for each test. */
abstract class BrowsedKiosk extends KioskServer {

    @TempDir
    private Path profile;

    ChromeDriver browser;
    WebDriverWait patience;

    @BeforeEach
    void openBrowser() {
        browser = Browser.open(profile);
        patience = new WebDriverWait(browser, Duration.ofSeconds(60));
    }

    /** Whatever a test does, the browser must never have been kept from something that a page needs. */
    @AfterEach
    void quitBrowser() {
        if (browser != null) {
            List<String> refused = browser.manage().logs().get(LogType.BROWSER).getAll().stream().map(LogEntry::getMessage)
                    .filter(m -> m.contains("Content Security Policy") || m.contains("Cross-Origin") || m.contains("ermissions policy")).toList();
            browser.quit();
            assertThat(refused).as("what the browser refused").isEmpty();
        }
    }

    /** The code of a plan that is made of a brief and kept. */
    final String kept(String brief) throws IOException, InterruptedException {
        HttpResponse<String> made = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/api/proposals")))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(brief)).build(), HttpResponse.BodyHandlers.ofString());
        return made.body().replaceAll("(?s).*?\"code\" : \"([a-z0-9-]+)\".*", "$1");
    }

    /** Opens a kept plan as a customer does: by typing its code. */
    final void openByCode(String code) {
        browser.get(address("/code"));
        patience.until(ExpectedConditions.elementToBeClickable(By.id("code"))).sendKeys(code.replace('-', ' '), Keys.ENTER);
        patience.until(ExpectedConditions.urlToBe(address("/plan/" + code)));
    }

    final void heading(String text) {
        patience.until(ExpectedConditions.textToBe(By.tagName("h1"), text));
    }

    final void click(String xpath) {
        // A page that is just being drawn anew may take the element away between finding and clicking it.
        patience.ignoring(StaleElementReferenceException.class).until(b -> {
            WebElement found = ExpectedConditions.elementToBeClickable(By.xpath(xpath)).apply(b);
            if (found != null) {
                found.click();
            }
            return found != null;
        });
    }

    /** The screen as it stands keeps to the accessibility rules that axe-core checks. */
    final void isAccessible(String screen) throws IOException {
        browser.executeScript(axe());
        Object violations = browser.executeAsyncScript("""
                const done = arguments[0];
                axe.run(document).then(
                    found => done(found.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' ')).join('\\n')),
                    fault => done(String(fault)));
                """);
        assertThat(violations).as(screen).isEqualTo("");
    }

    private static String axe() throws IOException {
        try (InputStream script = BrowsedKiosk.class.getResourceAsStream("/axe/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
