package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.people.Colleague;
import boughwright.people.Person;
import boughwright.people.Role;
import boughwright.people.Tablets;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.Keys;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.logging.LogLevel;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

@ExtendWith(OutputCaptureExtension.class)
class PeopleInBrowserTest extends StaffedKiosk {

    private static final Person TEST = new Person("test", Role.MANAGER);

    @Autowired
    private Tablets tablets;

    /** Other tests of this kiosk have no tablets, and nobody but the manager on the cards. */
    @AfterEach
    void asBefore() {
        tablets.all().forEach(t -> tablets.revoke(t.id(), TEST));
        people.active().stream().filter(c -> c.person().role() != Role.MANAGER).forEach(c -> people.switchOff(c.id(), TEST));
        people.lockAfter(5, TEST);
    }

    private String session() {
        return browser.manage().getCookieNamed("JSESSIONID").getValue();
    }

    private void enrol(String name) {
        patience.until(ExpectedConditions.elementToBeClickable(By.id("tablet-name"))).sendKeys(name);
        click("//button[.='Enrol this tablet']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".tablet-list"), "This one."));
    }

    private void says(String words) {
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".notice"), words));
    }

    /** @return the word that they begin with */
    private String add(String name, String role) {
        patience.until(ExpectedConditions.elementToBeClickable(By.id("people-name"))).sendKeys(name);
        new Select(browser.findElement(By.id("people-role"))).selectByVisibleText(role);
        click("//button[.='Add']");
        says("The word for " + name);
        return browser.findElement(By.cssSelector(".starting-word")).getText();
    }

    private void card(String name) {
        click("//button[contains(@class,'person-card')][.//span[.='" + name + "']]");
    }

    private void pin(String digits) {
        patience.until(ExpectedConditions.elementToBeClickable(By.cssSelector(".pin-pad .pin-key")));
        for (char digit : digits.toCharArray()) {
            click("//button[contains(@class,'pin-key')][.='" + digit + "']");
        }
        click("//button[.='Open']");
    }

    @Test
    void a_manager_adds_somebody_who_switches_in_with_card_and_pin_and_goes_where_they_may(CapturedOutput output) throws Exception {
        LoggingSystem logging = LoggingSystem.get(getClass().getClassLoader());
        logging.setLogLevel("ROOT", LogLevel.INFO);
        try {
            signIn("/people");
            heading("People and tablets");
            isAccessible("people");
            String word = add("Bo", "Associate");
            isAccessible("people with a word");
            enrol("Tablet by the door");
            isAccessible("people with a tablet");
            Cookie mark = browser.manage().getCookieNamed("boughwright-tablet");
            assertThat(mark.isHttpOnly()).isTrue();
            assertThat(mark.getSameSite()).isEqualTo("Strict");
            assertThat(mark.getValue()).as("128 bits").hasSize(22);

            click("//button[.='Lock']");
            heading("Who is there?");
            isAccessible("the cards");
            card("Bo");
            type("staff-password", word);
            browser.findElement(By.id("staff-password")).sendKeys(Keys.ENTER);
            heading("Welcome, Bo");
            isAccessible("choosing a PIN");
            type("staff-new-pin", "1234");
            type("staff-new-pin-again", "1234");
            click("//button[.='Choose it']");
            patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".fault"), "too easy to guess"));
            type("staff-new-pin", "4071");
            type("staff-new-pin-again", "4071");
            click("//button[.='Choose it']");
            heading("This is not for you");
            isAccessible("not for an associate");

            click("//a[.='Start']");
            heading("Hello, Bo");
            isAccessible("the start page");
            assertThat(browser.findElements(By.xpath("//a[contains(@class,'card')][.//span[.='House rules' or .='The shelf' or .='People and tablets']]"))).isEmpty();

            click("//button[.='Lock']");
            heading("Who is there?");
            card("Bo");
            heading("Bo");
            isAccessible("the PIN");
            pin("4071");
            heading("Hello, Bo");
            assertThat(output.getAll()).as("the log").doesNotContain(word, "4071", PASSWORD, mark.getValue(), session());
        } finally {
            logging.setLogLevel("ROOT", LogLevel.WARN);
        }
    }

    @Test
    void five_wrong_pins_make_a_pause_and_the_password_still_opens_for_others() throws Exception {
        signIn("/people");
        String word = add("Cy", "Stock room");
        enrol("Tablet at the back");
        click("//button[.='Lock']");
        card("Cy");
        type("staff-password", word);
        click("//button[.='Sign in']");
        heading("Welcome, Cy");
        type("staff-new-pin", "9056");
        type("staff-new-pin-again", "9056");
        click("//button[.='Choose it']");
        heading("This is not for you");
        click("//button[.='Sign in as somebody else']");
        card("Cy");
        for (int i = 0; i < 5; i++) {
            pin("9057");
            patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".fault"), "This is not the PIN"));
            browser.executeScript("document.querySelector('.fault').textContent = ''");
        }
        pin("9056");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".fault"), "Too many wrong tries. Wait one minute"));
        isAccessible("a pause");
        click("//button[.='That is not me']");
        click("//button[.='Sign in with name and password']");
        type("staff-name", MANAGER);
        type("staff-password", PASSWORD);
        click("//button[.='Sign in']");
        heading("People and tablets");
    }

    /** Session fixation and the end of a session, as in OWASP's Web Security Testing Guide 4.2, WSTG-SESS-03 and WSTG-SESS-06 (from memory). */
    @Test
    void signing_in_changes_the_session_and_signing_out_ends_it_in_every_tab() throws Exception {
        browser.get(address("/staff"));
        patience.until(ExpectedConditions.elementToBeClickable(By.id("staff-name")));
        String before = session();
        signIn("/staff");
        heading("Hello, " + MANAGER);
        String within = session();
        assertThat(within).isNotEqualTo(before);
        Cookie cookie = browser.manage().getCookieNamed("JSESSIONID");
        assertThat(cookie.isHttpOnly()).isTrue();
        assertThat(cookie.getSameSite()).isEqualTo("Lax");

        String first = browser.getWindowHandle();
        browser.switchTo().newWindow(org.openqa.selenium.WindowType.TAB);
        browser.get(address("/house-rules"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".house nav")));
        browser.switchTo().window(first);
        click("//button[.='Sign out']");
        patience.until(ExpectedConditions.elementToBeClickable(By.id("staff-name")));
        assertThat(session()).isNotEqualTo(within);
        for (String handle : browser.getWindowHandles()) {
            if (!handle.equals(first)) {
                browser.switchTo().window(handle);
                browser.navigate().refresh();
                patience.until(ExpectedConditions.elementToBeClickable(By.id("staff-name")));
            }
        }
        HttpResponse<String> old = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address("/?v-r=init&location=staff&query="))).header("Cookie", "JSESSIONID=" + within)
                .build(), HttpResponse.BodyHandlers.ofString());
        assertThat(old.headers().firstValue("Set-Cookie").orElse("")).as("the old id is nobody's").startsWith("JSESSIONID=").doesNotContain(within);
        browser.navigate().back();
        assertThat(browser.findElements(By.cssSelector(".who"))).as("nothing comes back with the back button").isEmpty();
    }

    @Test
    void a_tablet_that_nobody_touches_locks_itself_and_revoked_it_takes_no_pin() throws Exception {
        signIn("/people");
        enrol("Tablet by the till");
        new Select(browser.findElement(By.id("people-lock"))).selectByVisibleText("one minute");
        says("Kept");
        // From the next sign-in on at the latest.
        click("//button[.='Lock']");
        click("//button[.='Sign in with name and password']");
        type("staff-name", MANAGER);
        type("staff-password", PASSWORD);
        click("//button[.='Sign in']");
        heading("People and tablets");
        new org.openqa.selenium.support.ui.WebDriverWait(browser, java.time.Duration.ofSeconds(90)).until(ExpectedConditions.textToBe(By.tagName("h1"), "Who is there?"));
        assertThat(browser.findElements(By.cssSelector(".person-row"))).isEmpty();
        tablets.all().forEach(t -> tablets.revoke(t.id(), TEST));
        browser.navigate().refresh();
        heading("For staff");
    }

    @Test
    void somebody_changes_their_own_password_with_the_present_one() throws Exception {
        signIn("/profile");
        heading(MANAGER);
        isAccessible("one's own page");
        type("profile-present-pin", "not this");
        type("profile-new-pin", "407193");
        type("profile-again-pin", "407193");
        click("//button[.='Change PIN']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".panel .fault"), "not right"));
        type("profile-present-pin", PASSWORD);
        click("//button[.='Change PIN']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".panel .well"), "Your PIN is changed"));
        assertThat(people.all().stream().filter(c -> c.person().name().equals(MANAGER)).allMatch(Colleague::hasPin)).isTrue();
    }
}
