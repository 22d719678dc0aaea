package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.support.ui.ExpectedConditions;

/**
 * Screens as they were approved, against screens as they are: both reduced to a quarter, so that the edges of letters do not count,
 * and compared with a tolerance. Run with {@code mvn -Papproved test}; {@code -Dapprove} approves what is there now. What
 * differs is left in {@code target/approved} to be looked at.
 */
@Tag("approved")
class ApprovedScreensTest extends BrowsedKiosk {

    private static final Path APPROVED = Path.of("src/test/resources/approved");
    private static final Path ACTUAL = Path.of("target/approved");
    private static final int REDUCED = 4;
    /** Of 255 in each of red, green and blue; more counts as different. */
    private static final int TOLERANCE = 26;
    private static final double MOST_DIFFERENT = 0.01;

    private void size(int width, int height) {
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        browser.manage().window().setSize(new Dimension(width, height));
    }

    private void press(String button) {
        patience.until(ExpectedConditions.elementToBeClickable(By.xpath("//div[contains(@class,'stage-box')]//button[.='" + button + "']"))).click();
        patience.until(ExpectedConditions.attributeToBe(By.xpath("//div[contains(@class,'stage-box')]//button[.='" + button + "']"), "aria-pressed", "true"));
    }

    @Test
    void the_dressed_tree_and_the_page_for_home_look_as_they_were_approved() throws Exception {
        String code = kept("{\"tree\":{\"height\":\"9 ft\",\"seenFrom\":\"wall\",\"lit\":true},\"look\":\"woodland\",\"palette\":\"copper-and-cream\"}");
        size(1280, 800);
        openByCode(code);
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".picture svg")));
        // The code differs from run to run.
        browser.executeScript("document.querySelector('.code').textContent = ''");
        looksAsApproved("plan-front");
        press("Above");
        looksAsApproved("plan-above");
        press("Front");
        press("Evening");
        looksAsApproved("plan-evening");
        size(390, 844);
        browser.get(address("/api/proposals/" + code + "/at-home"));
        patience.until(ExpectedConditions.elementToBeClickable(By.cssSelector("footer .strong")));
        browser.executeScript("document.querySelector('.code').textContent = ''");
        looksAsApproved("home-start");
        for (int i = 0; i < 4; i++) {
            browser.findElement(By.cssSelector("footer .strong")).click();
        }
        looksAsApproved("home-step");
    }

    private void looksAsApproved(String name) throws Exception {
        browser.executeAsyncScript("const done = arguments[0]; document.fonts.ready.then(() => requestAnimationFrame(() => setTimeout(done, 400)));");
        BufferedImage now = reduced(ImageIO.read(new ByteArrayInputStream(browser.getScreenshotAs(OutputType.BYTES))));
        Path approved = APPROVED.resolve(name + ".png");
        if (System.getProperty("approve") != null) {
            Files.createDirectories(APPROVED);
            ImageIO.write(now, "png", approved.toFile());
            return;
        }
        assertThat(approved).as("an approved picture of %s", name).exists();
        double different = different(now, ImageIO.read(approved.toFile()));
        if (different > MOST_DIFFERENT) {
            Files.createDirectories(ACTUAL);
            ImageIO.write(now, "png", ACTUAL.resolve(name + ".png").toFile());
        }
        assertThat(different).as("share of %s that differs; see %s", name, ACTUAL).isLessThanOrEqualTo(MOST_DIFFERENT);
    }

    /** Each cell is the mean of its pixels. */
    private static BufferedImage reduced(BufferedImage full) {
        BufferedImage small = new BufferedImage(full.getWidth() / REDUCED, full.getHeight() / REDUCED, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < small.getHeight(); y++) {
            for (int x = 0; x < small.getWidth(); x++) {
                int[] sum = new int[3];
                for (int i = 0; i < REDUCED * REDUCED; i++) {
                    int rgb = full.getRGB(x * REDUCED + i % REDUCED, y * REDUCED + i / REDUCED);
                    sum[0] += rgb >> 16 & 255;
                    sum[1] += rgb >> 8 & 255;
                    sum[2] += rgb & 255;
                }
                int cells = REDUCED * REDUCED;
                small.setRGB(x, y, sum[0] / cells << 16 | sum[1] / cells << 8 | sum[2] / cells);
            }
        }
        return small;
    }

    private static double different(BufferedImage a, BufferedImage b) {
        if (a.getWidth() != b.getWidth() || a.getHeight() != b.getHeight()) {
            return 1;
        }
        int different = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                boolean far = Math.abs((p >> 16 & 255) - (q >> 16 & 255)) > TOLERANCE || Math.abs((p >> 8 & 255) - (q >> 8 & 255)) > TOLERANCE
                        || Math.abs((p & 255) - (q & 255)) > TOLERANCE;
                different += far ? 1 : 0;
            }
        }
        return different / (double) (a.getWidth() * a.getHeight());
    }
}
