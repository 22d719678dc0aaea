package boughwright.ui;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * Opens Chromium without a window. The programs are those that Debian installs, or the ones that the
 * environment names in {@code CHROMIUM} and {@code CHROMEDRIVER}. Where they are missing the test is skipped,
 * except on a build server ({@code CI=true}), where a missing browser is a fault.
 */
final class Browser {

    private static final Path CHROMIUM = program("CHROMIUM", "/usr/bin/chromium");
    private static final Path DRIVER = program("CHROMEDRIVER", "/usr/bin/chromedriver");

    private Browser() {
    }

    /** A browser of 1280 by 800 pixels with a fresh profile in {@code profile}; the caller quits it. */
    static ChromeDriver open(Path profile) {
        boolean present = Stream.of(CHROMIUM, DRIVER).allMatch(Files::isExecutable);
        assumeTrue(present || "true".equals(System.getenv("CI")), "no Chromium with its driver on this machine");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toFile());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--use-gl=angle", "--use-angle=swiftshader",
                "--enable-unsafe-swiftshader", "--disable-background-networking", "--disable-component-update",
                "--disable-sync", "--no-first-run", "--window-size=1280,800", "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.WARNING);
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        return new ChromeDriver(
                new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).usingAnyFreePort().build(),
                options);
    }

    private static Path program(String variable, String usual) {
        return new File(System.getenv().getOrDefault(variable, usual)).toPath();
    }
}
