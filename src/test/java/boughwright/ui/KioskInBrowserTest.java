package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.colour.Srgb;
import boughwright.photo.Drawn;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.Rectangle;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** From the first question to the printed plan in a real browser, every screen on the way checked by axe-core. */
class KioskInBrowserTest extends BrowsedKiosk {

    @TempDir
    private Path folder;

    @BeforeEach
    void askTheFirstQuestion() {
        browser.get(address("/interview"));
        heading("How tall is your tree?");
    }

    private void card(String title) {
        click("//button[contains(@class,'card')][.//span[text()='" + title + "']]");
        patience.until(ExpectedConditions.attributeToBe(
                By.xpath("//button[contains(@class,'card')][.//span[text()='" + title + "']]"), "aria-pressed", "true"));
    }

    private void next(String heading) {
        click("//footer//button[contains(@class,'strong')]");
        heading(heading);
    }

    @Test
    void a_customer_goes_from_the_interview_to_the_printed_plan() throws Exception {
        isAccessible("the first question");
        card("9 ft");
        next("Where will it be seen from?");
        isAccessible("seen from");
        card("Against a wall");
        next("How high is the ceiling?");
        card("10 ft");
        isAccessible("the room");
        next("Who lives with the tree?");
        isAccessible("the household");
        next("Which of these feels like home?");
        card("Woodland");
        isAccessible("the looks");
        next("Which colours?");
        isAccessible("the palettes");
        next("How richly shall it be dressed?");
        isAccessible("the abundance");
        next("What may it cost?");
        card("$650.00");
        isAccessible("the budget");
        next("Is anything here already yours?");
        browser.findElement(By.id("search")).sendKeys("copper ball", Keys.ENTER);
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".found .card")));
        isAccessible("what is owned");

        click("//footer//button[contains(@class,'strong')]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        isAccessible("the ways to dress it");
        click("//button[.='Take this one']");
        heading("A Woodland tree of 9 ft");
        isAccessible("the kit");
        assertThat(browser.findElements(By.cssSelector(".picture g[data-piece]"))).hasSizeGreaterThan(100);
        click("(//div[contains(@class,'kit-list')]//button[starts-with(., 'Why')])[1]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".reason")));
        click("(//div[contains(@class,'kit-list')]//button[.='Swap'])[1]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".swaps .card")));
        isAccessible("reasons and swaps");
        for (String side : new String[] {"Colours", "Steps", "Take care", "Change"}) {
            click("//div[contains(@class,'sides')]//button[.='" + side + "']");
            patience.until(ExpectedConditions.attributeToBe(By.xpath("//div[contains(@class,'sides')]//button[.='" + side + "']"), "aria-pressed", "true"));
            isAccessible(side);
        }

        String before = browser.findElement(By.cssSelector(".total")).getText();
        click("//div[contains(@class,'change')]//button[.='Restrained']");
        patience.until(ExpectedConditions.not(ExpectedConditions.textToBe(By.cssSelector(".total"), before)));

        String plan = browser.findElement(By.xpath("//a[.='Print the plan']")).getAttribute("href");
        HttpResponse<byte[]> pdf = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(plan)).build(), HttpResponse.BodyHandlers.ofByteArray());
        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
        assertThat(browser.getCurrentUrl()).matches(".*/plan/[a-z]+-[2-9]-[a-z]+");
    }

    @Test
    void a_photo_of_the_room_becomes_four_colours_on_the_tree_that_can_be_changed_and_matched() throws Exception {
        card("9 ft");
        for (String heading : new String[] {"Where will it be seen from?", "How high is the ceiling?", "Who lives with the tree?",
            "Which of these feels like home?", "Which colours?"}) {
            next(heading);
        }
        browser.findElement(By.id("room-photo")).sendKeys(write("letter.jpg", "not a picture".getBytes(StandardCharsets.US_ASCII)));
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".photo .fault[role=alert]"), "This is not a picture."));
        browser.findElement(By.id("room-photo")).sendKeys(write("room.jpg", Drawn.jpeg(Drawn.room(2400, 1800), 0.85, false)));
        patience.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector(".found-colours li"), 5));
        assertThat(browser.findElements(By.cssSelector(".photo .fault[role=alert]"))).isEmpty();
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".file-drop-said"), "room.jpg has arrived."));
        isAccessible("a palette from a photo");
        String spark = browser.findElement(By.id("colour-spark")).getAttribute("value");
        patience.until(b -> b.findElement(By.cssSelector(".room")).getAttribute("innerHTML").contains(spark));

        click("//button[starts-with(@aria-label,'Use the photo’s colour 4 of 5 as main')]");
        patience.until(ExpectedConditions.attributeToBe(By.xpath("//button[starts-with(@aria-label,'Use the photo’s colour 4 of 5 as main')]"), "aria-pressed", "true"));
        click("//button[@aria-label='Use the shop’s nearest: main']");
        patience.until(ExpectedConditions.attributeToBe(By.xpath("//button[starts-with(@aria-label,'Use the photo’s colour 4 of 5 as main')]"), "aria-pressed", "false"));
        String main = browser.findElement(By.id("colour-main")).getAttribute("value");
        next("How richly shall it be dressed?");
        next("What may it cost?");
        next("Is anything here already yours?");
        click("//footer//button[contains(@class,'strong')]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        String code = browser.getCurrentUrl().replaceAll(".*/", "");
        String kept = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/api/proposals/" + code))).build(),
                HttpResponse.BodyHandlers.ofString()).body();
        assertThat(kept).contains(main, spark);
    }

    private String write(String name, byte[] content) throws IOException {
        return Files.write(folder.resolve(name), content).toAbsolutePath().toString();
    }

    /** A kept plan of nine feet, opened on its screen. */
    private String openPlan() throws Exception {
        String code = kept("{\"tree\":{\"height\":\"9 ft\",\"seenFrom\":\"wall\"},\"abundance\":\"generous\"}");
        openByCode(code);
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".picture svg")));
        return code;
    }

    /** What the browser shows is what {@link boughwright.colour.Sight} reckons, on the paper behind the tree; the picture is filtered by the same rule. */
    @Test
    void a_preview_shows_paper_tree_and_turning_tree_as_the_model_reckons() throws Exception {
        openPlan();
        click("//div[contains(@class,'sides')]//button[.='Colours']");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".colours-side .previews")));
        Srgb paper = paper();
        for (Preview preview : Preview.values()) {
            click("//div[contains(@class,'previews')]//button[contains(@class,'preview-" + preview.word() + "')]");
            patience.until(ExpectedConditions.attributeToBe(By.cssSelector(".preview-" + preview.word()), "aria-pressed", "true"));
            Srgb wanted = preview.sight().map(s -> s.seen(paper)).orElse(paper);
            patience.until(b -> Math.abs(paper().red() - wanted.red()) <= 2 && Math.abs(paper().green() - wanted.green()) <= 2 && Math.abs(paper().blue() - wanted.blue()) <= 2);
            String filter = preview.sight().isPresent() ? "url(\"#" + preview.className() + "\")" : "none";
            assertThat(browser.findElement(By.cssSelector(".stage-box .picture > svg")).getCssValue("filter")).isEqualTo(filter);
        }
        isAccessible("a preview");
        stage("Turn it");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".picture canvas")));
        assertThat(browser.findElement(By.cssSelector(".stage-box .picture > canvas")).getCssValue("filter")).isEqualTo("url(\"#seen-candle\")");
        assertThat(browser.findElement(By.cssSelector(".badge")).getText()).contains("2200 K");
        click("//div[contains(@class,'badge')]//button");
        patience.until(ExpectedConditions.attributeToBe(By.cssSelector(".preview-as-it-is"), "aria-pressed", "true"));
        assertThat(browser.findElement(By.cssSelector(".stage-box .picture > canvas")).getCssValue("filter")).isEqualTo("none");
    }

    /** The paper at the right edge of the stage, half-way down, where nothing stands. */
    private Srgb paper() {
        Rectangle stage = browser.findElement(By.cssSelector(".stage-box")).getRect();
        try {
            BufferedImage shown = ImageIO.read(new ByteArrayInputStream(browser.getScreenshotAs(OutputType.BYTES)));
            int rgb = shown.getRGB(stage.x + stage.width - 6, stage.y + stage.height / 2);
            return new Srgb(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void stage(String button) {
        click("//div[contains(@class,'stage-box')]//button[.='" + button + "']");
    }

    @Test
    void the_tree_turns_in_three_dimensions_with_few_draw_calls_and_says_what_is_picked_by_keyboard() throws Exception {
        openPlan();
        stage("Turn it");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".picture canvas")));
        Object calls = patience.until(b -> browser.executeScript(
                "const s = window.boughwright.stats(document.querySelector('.stage-box .picture')); return s && s.frames > 0 ? s.drawCalls : null;"));
        assertThat(((Number) calls).intValue()).isBetween(3, 150);
        isAccessible("the turning tree");
        browser.findElement(By.cssSelector(".picture canvas, .picture [tabindex]")).sendKeys("n");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".piece-card h2")));
        String said = browser.findElement(By.cssSelector(".piece-card")).getText();
        assertThat(said).contains("up,");
        stage("Front");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".picture svg")));
        patience.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector(".picture canvas"), 0));
        stage("Above");
        patience.until(ExpectedConditions.attributeToBe(By.xpath("//button[.='Above']"), "aria-pressed", "true"));
        isAccessible("the tree from above");
    }

    @Test
    void a_cluster_is_dragged_and_nudged_and_the_plan_follows() throws Exception {
        String code = openPlan();
        stage("Move things");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".picture[data-movable] [data-unit='cluster-3']")));
        isAccessible("moving things");
        new Actions(browser)
                .clickAndHold(browser.findElement(By.cssSelector("[data-unit='cluster-3'] use"))).moveByOffset(15, 10).moveByOffset(15, 15).release().perform();
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".piece-card"), "moved by hand"));
        String dragged = browser.findElement(By.cssSelector(".piece-card p")).getText();
        click("//button[@data-way='down']");
        patience.until(ExpectedConditions.not(ExpectedConditions.textToBe(By.cssSelector(".piece-card p"), dragged)));
        assertThat(moves(code)).contains("cluster-3");
        // The keyboard stays on the nudge while the card is drawn anew.
        String nudged = browser.findElement(By.cssSelector(".piece-card p")).getText();
        patience.until(b -> "nudge".equals(browser.switchTo().activeElement().getAttribute("class")));
        browser.switchTo().activeElement().sendKeys(Keys.ARROW_DOWN);
        patience.until(ExpectedConditions.not(ExpectedConditions.textToBe(By.cssSelector(".piece-card p"), nudged)));
        click("//div[contains(@class,'piece-card')]//button[.='Put it back']");
        patience.until(ExpectedConditions.not(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".piece-card"), "moved by hand")));
        assertThat(moves(code)).doesNotContain("cluster-3");
    }

    private String moves(String code) throws Exception {
        String kept = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/api/proposals/" + code))).build(),
                HttpResponse.BodyHandlers.ofString()).body();
        return kept.contains("\"moved\"") ? kept.substring(kept.indexOf("\"moved\""), kept.indexOf("\"needs\"")) : "";
    }

    @Test
    void the_page_for_home_goes_step_by_step_remembers_and_works_without_a_connection() throws Exception {
        String code = openPlan();
        browser.get(address("/api/proposals/" + code + "/at-home"));
        patience.until(ExpectedConditions.elementToBeClickable(By.cssSelector("footer .strong")));
        isAccessible("the start at home");
        click("//footer//button[contains(@class,'strong')]");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".count"), "Step 1 of"));
        while (browser.findElements(By.cssSelector(".where .show")).isEmpty()) {
            click("//footer//button[contains(@class,'strong')]");
        }
        isAccessible("a step at home");
        // Out from under the bar at the foot, where a thumb would scroll it.
        browser.executeScript("document.querySelector('.where input').scrollIntoView({block: 'center'})");
        click("(//ol[@class='where']//input)[1]");
        click("(//button[@class='show'])[1]");
        assertThat(browser.findElements(By.cssSelector(".picture .alone"))).isNotEmpty();
        String at = browser.findElement(By.cssSelector(".count")).getText();
        // The worker keeps the page once it runs; loopback counts as a secure place.
        patience.until(b -> Boolean.TRUE.equals(browser.executeAsyncScript(
                "const done = arguments[0]; caches.match(location.href).then(kept => done(!!kept));")));
        browser.executeCdpCommand("Network.enable", Map.of());
        browser.executeCdpCommand("Network.emulateNetworkConditions",
                Map.of("offline", true, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
        browser.navigate().refresh();
        patience.until(ExpectedConditions.textToBe(By.cssSelector(".count"), at));
        assertThat(browser.findElement(By.cssSelector(".where input")).isSelected()).isTrue();
        // The phone's own key goes back a step and not off the plan.
        browser.navigate().back();
        patience.until(ExpectedConditions.not(ExpectedConditions.textToBe(By.cssSelector(".count"), at)));
        assertThat(browser.getCurrentUrl()).contains("/at-home/").doesNotContain(code);
        browser.executeCdpCommand("Network.emulateNetworkConditions",
                Map.of("offline", false, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
        browser.get(address("/at-home/" + code));
        heading("No plan here");
    }

    @Test
    void a_budget_that_is_too_small_shows_the_ways_out_and_a_code_opens_the_plan_again() throws Exception {
        card("12 ft");
        for (String heading : new String[] {"Where will it be seen from?", "How high is the ceiling?", "Who lives with the tree?",
            "Which of these feels like home?", "Which colours?", "How richly shall it be dressed?", "What may it cost?"}) {
            next(heading);
        }
        card("$250.00");
        next("Is anything here already yours?");
        next("No kit fits all of this at once");
        isAccessible("the conflict");
        String code = browser.getCurrentUrl().replaceAll(".*/plan/", "");
        click("//button[contains(@class,'card')][.//span[text()='Raise the budget']]");
        heading("A Woodland tree of 12 ft");

        openByCode(code);
        heading("A Woodland tree of 12 ft");
    }

    @Test
    void the_pages_are_set_in_their_own_fonts_and_ask_nobody_else_for_anything() {
        Object loaded = browser.executeAsyncScript("""
                const done = arguments[0];
                document.fonts.ready.then(fonts => done([...fonts].filter(f => f.status === 'loaded')
                    .map(f => f.family.replaceAll('"', '')).sort().join()));
                """);
        Object strangers = browser.executeScript("""
                return performance.getEntriesByType('resource').map(entry => entry.name)
                    .filter(name => !name.startsWith(location.origin)).join();
                """);

        assertThat(loaded).isEqualTo("Figtree,Fraunces");
        assertThat(strangers).isEqualTo("");
    }
}
