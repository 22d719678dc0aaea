package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** A file on its way from the browser to the kiosk. */
class FileDropInBrowserTest extends BrowsedKiosk {

    @TempDir
    private Path folder;

    @BeforeEach
    void openPage() {
        browser.get(address("/test/file-drop"));
        heading("Files");
    }

    private byte[] bytes(int count) {
        byte[] bytes = new byte[count];
        new SplittableRandom(7).nextBytes(bytes);
        return bytes;
    }

    private void choose(String id, String name, byte[] content) throws IOException {
        browser.findElement(By.id(id)).sendKeys(Files.write(folder.resolve(name), content).toAbsolutePath().toString());
    }

    private WebElement drop(String id) {
        return browser.findElement(By.xpath("//div[contains(@class,'file-drop')][.//input[@id='" + id + "']]"));
    }

    private void said(String id, String words) {
        patience.until(ExpectedConditions.textToBePresentInElement(drop(id).findElement(By.cssSelector(".file-drop-said")), words));
    }

    private String told(String id) {
        return browser.findElement(By.id(id + "-told")).getText();
    }

    @Test
    void a_file_arrives_byte_for_byte_under_its_name_and_the_screen_tells_of_it_at_once() throws Exception {
        isAccessible("places for files");
        byte[] content = bytes(2_500_000);
        choose("plain", "Grüße, 100% + more.txt", content);
        said("plain", "Grüße, 100% + more.txt has arrived.");
        patience.until(b -> !told("plain").isEmpty());
        assertThat(told("plain")).isEqualTo("Grüße, 100% + more.txt|text/plain|2500000|2500000|" + Arrays.hashCode(content) + "|");
        isAccessible("a file that has arrived");
        choose("plain", "second.txt", bytes(10));
        said("plain", "second.txt has arrived.");
        patience.until(b -> told("plain").startsWith("second.txt|"));
    }

    @Test
    void a_file_that_is_too_large_or_of_another_kind_is_refused_with_the_reason() throws Exception {
        choose("plain", "large.txt", bytes(FileDropPage.MOST + 1));
        said("plain", "larger than 3 MB");
        choose("plain", "song.mp3", bytes(10));
        said("plain", "song.mp3 is not a kind of file that can be read here");
        assertThat(told("plain")).isEmpty();
        isAccessible("a refused file");
    }

    @Test
    void a_browser_that_does_not_heed_the_limit_is_refused_by_the_kiosk() throws Exception {
        browser.executeScript("arguments[0].dataset.most = 1e9", drop("plain"));
        choose("plain", "large.txt", bytes(FileDropPage.MOST + 1));
        said("plain", "larger than 3 MB");
        assertThat(told("plain")).isEmpty();
    }

    @Test
    void a_file_on_its_way_can_be_stopped() throws Exception {
        choose("slow", "long.txt", bytes(200_000));
        WebElement stop = drop("slow").findElement(By.cssSelector(".file-drop-cancel"));
        patience.until(ExpectedConditions.visibilityOf(stop));
        isAccessible("a file on its way");
        stop.click();
        said("slow", "Stopped: long.txt was not taken.");
        assertThat(told("slow")).isEmpty();
        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("slow");
    }

    @Test
    void a_photo_is_made_smaller_before_it_is_sent() throws Exception {
        Path photo = folder.resolve("photo.jpg");
        ImageIO.write(new BufferedImage(3200, 2400, BufferedImage.TYPE_INT_RGB), "jpg", photo.toFile());
        browser.findElement(By.id("photo")).sendKeys(photo.toAbsolutePath().toString());
        patience.until(b -> told("photo").endsWith("|1600x1200"));
        assertThat(told("photo")).startsWith("photo.jpg|image/jpeg|");
        assertThat(browser.findElement(By.id("photo-camera")).getAttribute("capture")).isEqualTo("environment");
        choose("photo", "broken.jpg", bytes(2000));
        patience.until(b -> told("photo").startsWith("broken.jpg|image/jpeg|2000|"));
    }

    @Test
    void a_file_is_dropped_on_its_place_and_nowhere_else() {
        String script = """
                const files = new DataTransfer();
                for (const name of arguments[1].split(' ')) files.items.add(new File(['some words'], name, { type: 'text/plain' }));
                const event = new DragEvent('drop', { dataTransfer: files, bubbles: true, cancelable: true });
                arguments[0].dispatchEvent(event);
                return event.defaultPrevented;""";
        assertThat(browser.executeScript(script, browser.findElement(By.tagName("h1")), "lost.txt")).isEqualTo(true);
        browser.executeScript(script, drop("plain"), "one.txt two.txt");
        said("plain", "One file at a time, please.");
        browser.executeScript(script, drop("plain"), "one.txt");
        said("plain", "one.txt has arrived.");
        patience.until(b -> told("plain").startsWith("one.txt|text/plain|10|"));
    }
}
