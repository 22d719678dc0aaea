package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.Boughwright;
import boughwright.KioskFixture;
import boughwright.consultation.Consultation;
import boughwright.consultation.Consultations;
import boughwright.consultation.Interviews;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.publishing.ShopDoor;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.ElementClickInterceptedException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Two tablets at one kiosk, each at a cable that can be pulled: idle customers leave nothing, nobody loses an answer, and a code opens on both. The
 * kiosk waits for an idle customer for a few seconds here only.
 */
class TabletsInBrowserTest {

    private static final int IDLE = 8;
    private static final int WARNING = 6;
    /** All figures of time are of a machine that has more to do than this. */
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Duration RESUMED = Duration.ofSeconds(10);
    private static final String PLAN = "{\"tree\":{\"height\":\"7 ft 6 in\"}}";

    @TempDir
    private static Path data;
    private static ConfigurableApplicationContext kiosk;
    private static int port;

    @TempDir
    private Path profiles;
    private Tablet one;
    private Tablet other;

    @BeforeAll
    static void openKiosk() {
        kiosk = start(0);
        kiosk.getBean(ShopDoor.class).designer();
        port = ((ServletWebServerApplicationContext) kiosk).getWebServer().getPort();
    }

    private static ConfigurableApplicationContext start(int at) {
        return SpringApplication.run(Boughwright.class, "--server.port=" + at, "--boughwright.data=" + data, "--boughwright.idle=" + IDLE,
                "--boughwright.idle-warning=" + WARNING, "--logging.level.root=WARN");
    }

    @AfterAll
    static void closeKiosk() {
        kiosk.close();
    }

    @BeforeEach
    void takeTablets() {
        one = new Tablet(profiles.resolve("one"));
        other = new Tablet(profiles.resolve("other"));
    }

    @AfterEach
    void putTabletsAway() {
        for (Tablet tablet : new Tablet[] {one, other}) {
            if (tablet != null) {
                tablet.close();
            }
        }
    }

    /** A browser at its own cable. */
    private static final class Tablet implements AutoCloseable {

        final Cable cable = new Cable(port);
        final ChromeDriver browser;
        final WebDriverWait patience;

        Tablet(Path profile) {
            browser = Browser.open(profile);
            patience = new WebDriverWait(browser, PATIENCE, Duration.ofMillis(50));
            patience.ignoring(StaleElementReferenceException.class);
        }

        String address(String path) {
            return "http://localhost:" + cable.port() + path;
        }

        void go(String path) {
            browser.get(address(path));
        }

        void heading(String text) {
            patience.until(ExpectedConditions.textToBe(By.tagName("h1"), text));
        }

        void press(String xpath) {
            patience.until(b -> {
                try {
                    b.findElement(By.xpath(xpath)).click();
                    return true;
                } catch (org.openqa.selenium.NoSuchElementException | StaleElementReferenceException | ElementClickInterceptedException notYet) {
                    return false;
                }
            });
        }

        void card(String title) {
            press(card(title, ""));
            chosen(title);
        }

        static String card(String title, String more) {
            return "//button[contains(@class,'card')][.//span[text()='" + title + "']]" + more;
        }

        /** However long it takes, the customer is still there. */
        void chosen(String title) {
            patience.until(b -> {
                touch();
                return !b.findElements(By.xpath(card(title, "[@aria-pressed='true']"))).isEmpty();
            });
        }

        void next(String heading) {
            press("//footer//button[contains(@class,'strong')]");
            heading(heading);
        }

        void begin() {
            go("/");
            press("//button[.='Begin']");
            heading("How tall is your tree?");
        }

        void type(String code) {
            go("/code");
            patience.until(ExpectedConditions.elementToBeClickable(By.id("code"))).sendKeys(code.replace('-', ' '), Keys.ENTER);
        }

        boolean box(String name) {
            return Boolean.TRUE.equals(browser.executeScript("return !!document.querySelector('dialog." + name + ":modal')"));
        }

        /** A finger on a place where nothing is. */
        void touch() {
            browser.executeScript("document.body.dispatchEvent(new PointerEvent('pointerdown', {bubbles: true}))");
        }

        String code() {
            return patience.until(b -> {
                String said = b.findElement(By.cssSelector(".bar .code")).getText();
                return said.isEmpty() ? null : said.replace("Consultation ", "").replace(' ', '-').toLowerCase(java.util.Locale.ROOT);
            });
        }

        void invites() {
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".inviting")));
        }

        @Override
        public void close() {
            browser.quit();
            cable.close();
        }
    }

    private static Consultation kept(String code) {
        return kiosk.getBean(Interviews.class).open(code).orElseThrow();
    }

    private static String plan() {
        return kiosk.getBean(Consultations.class).begin(PLAN, KioskFixture.designer().propose(PLAN, Adjustments.NONE, Designer.SEED)).code();
    }

    private static void pause(long millis) {
        LockSupport.parkNanos(millis * 1_000_000);
    }

    /** Nothing of a customer can be had again from this tablet, by its keys for back and forward or by an address. */
    private static void hasForgotten(Tablet tablet, String code) {
        String spoken = code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT);
        assertThat(tablet.browser.getCurrentUrl()).isEqualTo(tablet.address("/"));
        assertThat(tablet.browser.getPageSource()).doesNotContain(code, spoken, "Go on with");
        assertThat(tablet.browser.manage().getCookieNamed(OpenCodes.COOKIE)).isNull();
        assertThat(tablet.browser.manage().getCookieNamed(KioskPage.WIPED)).isNull();
        assertThat(tablet.browser.executeScript("return localStorage.length + sessionStorage.length")).isEqualTo(0L);
        for (int i = 0; i < 4; i++) {
            tablet.browser.navigate().back();
            pause(300);
            assertThat(tablet.browser.getCurrentUrl()).doesNotContain(code).doesNotContain("/interview");
            assertThat(tablet.browser.getPageSource()).doesNotContain(code, spoken);
        }
        for (int i = 0; i < 4; i++) {
            tablet.browser.navigate().forward();
            pause(300);
            assertThat(tablet.browser.getPageSource()).doesNotContain(code, spoken);
        }
        tablet.go("/plan/" + code);
        tablet.heading("Your code");
        tablet.go("/interview");
        tablet.heading("How tall is your tree?");
        assertThat(tablet.browser.findElement(By.cssSelector(".bar .code")).getText()).isEmpty();
    }

    @Test
    void an_idle_tablet_warns_and_forgets_its_customer_while_the_other_goes_on() {
        one.begin();
        one.card("7 ft 6 in");
        String code = one.code();
        one.next("Where will it be seen from?");
        other.begin();
        other.card("9 ft");
        String others = other.code();

        long left = System.nanoTime();
        while (!one.browser.findElements(By.cssSelector(".inviting")).isEmpty() || !one.box("kiosk-idle")) {
            other.touch();
            assertThat(System.nanoTime() - left).isLessThan(PATIENCE.toNanos());
            pause(200);
        }
        assertThat(one.browser.findElement(By.cssSelector(".kiosk-idle")).getText()).contains("Are you still here?", code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT));
        while (one.browser.findElements(By.cssSelector(".inviting")).isEmpty()) {
            other.touch();
            assertThat(Duration.ofNanos(System.nanoTime() - left)).isLessThan(Duration.ofSeconds(IDLE + WARNING + 8));
            pause(200);
        }

        // First, since nobody touches it while the other is looked at.
        other.chosen("9 ft");
        assertThat(other.code()).isEqualTo(others);
        hasForgotten(one, code);
        assertThat(kept(code).answers()).as("the shop keeps it under its code").contains("7 ft 6 in");
    }

    @Test
    void a_plan_is_wiped_with_the_window_that_was_opened_to_print_it() {
        String code = plan();
        one.type(code);
        one.press("//a[.='Print the plan']");
        one.patience.until(b -> b.getWindowHandles().size() == 2);

        one.patience.until(b -> b.getWindowHandles().size() == 1);
        one.browser.switchTo().window(one.browser.getWindowHandles().iterator().next());
        one.invites();
        hasForgotten(one, code);
    }

    @Test
    void a_touch_keeps_an_idle_customer_and_finish_and_clear_lets_one_go() {
        one.begin();
        one.card("9 ft");
        String code = one.code();
        one.patience.until(b -> one.box("kiosk-idle"));
        one.press("//button[.='I am still here']");
        assertThat(one.box("kiosk-idle")).isFalse();
        one.chosen("9 ft");
        one.press("//button[@data-finish]");
        one.press("//dialog//button[.='Finish and clear']");
        one.invites();
        hasForgotten(one, code);
    }

    @Test
    void a_tablet_that_cannot_reach_the_kiosk_wipes_itself_all_the_same() {
        String code = plan();
        one.type(code);
        one.patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".picture svg")));
        one.cable.pull();
        one.heading("One moment");
        assertThat(one.browser.getPageSource()).doesNotContain(code, code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT));
        assertThat(one.browser.getCurrentUrl()).isEqualTo(one.address("/"));
        one.cable.putIn();
        one.invites();
        hasForgotten(one, code);
    }

    @Test
    void touches_that_are_quicker_than_the_kiosk_are_all_answered() {
        one.begin();
        one.card("9 ft");
        one.next("Where will it be seen from?");
        one.next("How high is the ceiling?");
        one.next("Who lives with the tree?");
        String both = "for (const words of ['Small children', 'Pets']) [...document.querySelectorAll('.card')].find(c => c.textContent.startsWith(words)).click()";
        one.browser.executeScript(both);
        one.chosen("Small children");
        one.chosen("Pets");
        // What stands there still does as it says.
        one.browser.executeScript(both);
        one.chosen("Neither");
        // A finger that is put down twice goes on once.
        new Actions(one.browser).doubleClick(one.browser.findElement(By.cssSelector("footer .strong"))).perform();
        one.heading("Which of these feels like home?");
        pause(700);
        one.heading("Which of these feels like home?");
    }

    @Test
    void one_code_opens_on_two_tablets_at_the_same_question_with_the_same_answers() {
        one.begin();
        one.card("9 ft");
        String code = one.code();
        one.next("Where will it be seen from?");
        one.card("All round");
        one.touch();

        other.type(code);
        other.heading("Where will it be seen from?");
        other.chosen("All round");
        other.card("From a corner");
        other.next("How high is the ceiling?");

        one.touch();
        one.browser.navigate().refresh();
        one.heading("How high is the ceiling?");
        assertThat(kept(code).answers()).contains("corner");
    }

    /** How many times the cable is pulled; a hundred by {@code -Dboughwright.cables=100}. */
    private static final int PULLS = Integer.getInteger("boughwright.cables", 10);

    @Test
    void no_answer_is_lost_when_the_cable_is_pulled_and_the_page_goes_on_by_itself() {
        List<String> cards = List.of("From a corner", "Against a wall", "In a bay", "All round");
        List<String> words = List.of("corner", "wall", "bay", "round");
        SplittableRandom random = new SplittableRandom(7);
        one.begin();
        one.card("9 ft");
        String code = one.code();
        one.next("Where will it be seen from?");
        List<Long> resumed = new ArrayList<>();
        int last = 1;
        for (int i = 0; i < PULLS; i++) {
            int answer = (last + 1 + random.nextInt(3)) % 4;
            boolean first = random.nextBoolean();
            one.browser.executeScript("window.presses = 0; window.counting ??= document.addEventListener('click', () => window.presses++, true) ?? true;");
            if (first) {
                one.cable.pull();
                try {
                    one.browser.findElement(By.xpath(Tablet.card(cards.get(answer), ""))).click();
                } catch (ElementClickInterceptedException noticed) {
                    // The page has said already that the line is down: nothing can be touched, and what was answered before stays.
                    answer = last;
                }
            } else {
                one.press(Tablet.card(cards.get(answer), ""));
                pause(random.nextInt(40));
                one.cable.pull();
            }
            one.patience.until(b -> one.box("kiosk-lost"));
            if (Long.valueOf(0).equals(one.browser.executeScript("return window.presses"))) {
                // The page said so between finger down and finger up: that is no touch of the card either.
                answer = last;
            }
            assertThat(one.browser.findElement(By.cssSelector(".kiosk-lost")).getText()).contains("Nothing is lost");
            pause(random.nextInt(2000));
            long back = System.nanoTime();
            one.cable.putIn();
            one.patience.until(b -> !one.box("kiosk-lost"));
            one.chosen(cards.get(answer));
            resumed.add((System.nanoTime() - back) / 1_000_000);
            assertThat(kept(code).answers()).as("pull %d", i).contains("\"seenFrom\":\"" + words.get(answer) + "\"");
            last = answer;
            one.touch();
        }
        resumed.sort(null);
        System.out.printf("%d cable pulls: resumed after %d ms in the middle, %d ms at the latest%n", PULLS, resumed.get(PULLS / 2), resumed.get(PULLS - 1));
        assertThat(Duration.ofMillis(resumed.get(PULLS - 1))).isLessThan(RESUMED);
        assertThat(one.code()).isEqualTo(code);
        one.next("How high is the ceiling?");
    }

    @Test
    void an_interview_goes_on_where_it_was_when_the_kiosk_was_started_anew() {
        one.go("/");
        one.press("//button[.='Deutsch']");
        one.patience.until(ExpectedConditions.presenceOfElementLocated(By.xpath("//button[.='Deutsch'][@aria-pressed='true']")));
        one.press("//div[contains(@class,'invite-ways')]/button[1]");
        one.press("//button[contains(@class,'card')][1]");
        String spoken = one.patience.until(b -> {
            String said = b.findElement(By.cssSelector(".bar .code")).getText();
            return said.isEmpty() ? null : said;
        });
        one.press("//footer//button[contains(@class,'strong')]");
        String at = one.patience.until(b -> {
            String words = b.findElement(By.cssSelector(".where .soft")).getText();
            return words.startsWith("2 ") ? b.findElement(By.tagName("h1")).getText() : null;
        });

        kiosk.close();
        one.patience.until(b -> {
            one.touch();
            return one.box("kiosk-lost");
        });
        CompletableFuture<ConfigurableApplicationContext> starting = CompletableFuture.supplyAsync(() -> {
            ConfigurableApplicationContext started = start(port);
            started.getBean(ShopDoor.class).designer();
            return started;
        });
        while (!starting.isDone()) {
            one.touch();
            pause(200);
        }
        kiosk = starting.join();
        long back = System.nanoTime();
        one.patience.until(b -> {
            one.touch();
            return !one.box("kiosk-lost") && at.equals(b.findElement(By.tagName("h1")).getText());
        });

        assertThat(one.browser.findElement(By.cssSelector(".bar .code")).getText()).isEqualTo(spoken);
        assertThat(Duration.ofNanos(System.nanoTime() - back)).isLessThan(RESUMED);
    }

    @Test
    void as_it_ships_everything_of_a_customer_is_gone_within_ninety_seconds_of_the_last_touch() {
        Idle usual = Idle.here();
        assertThat(usual.seconds() + usual.warning()).isLessThanOrEqualTo(85);
    }
}
