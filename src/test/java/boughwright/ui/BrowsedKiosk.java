package boughwright.ui;

import boughwright.KioskServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
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

    @AfterEach
    void quitBrowser() {
        if (browser != null) {
            browser.quit();
        }
    }

    /** The code of a plan that is made of a brief and kept. */
    final String kept(String brief) throws IOException, InterruptedException {
        HttpResponse<String> made = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/api/proposals")))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(brief)).build(), HttpResponse.BodyHandlers.ofString());
        return made.body().replaceAll("(?s).*?\"code\" : \"([a-z0-9-]+)\".*", "$1");
    }
}
